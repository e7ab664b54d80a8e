using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Nests;

/// <summary>One bar with its ordered cuts, or several equal bars cut alike: trim, pieces, kerf and remainder make up the bar exactly, each piece by its length on the centerline.</summary>
public sealed record NestLayoutJson
{
    /// <summary>Id: the stock id and a number.</summary>
    public required string LayoutId { get; init; }

    /// <summary>Place in the order of cutting, from 1: few order lines are open at once in it.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Sequence { get; init; }

    /// <summary>Stock item that the bar is of.</summary>
    public required string StockId { get; init; }

    /// <summary>Section, where stated.</summary>
    public string? Section { get; init; }

    /// <summary>Grade, where stated.</summary>
    public string? Grade { get; init; }

    /// <summary>How many bars are cut alike.</summary>
    [Range(1, Limits.StockQuantity)]
    public required int Repeat { get; init; }

    /// <summary>The melt, where known.</summary>
    public string? Heat { get; init; }

    /// <summary>The customer who owns the bar and what is left of it; absent where it is the shop's own.</summary>
    public string? Owner { get; init; }

    /// <summary>The plant where the bar lies, where stated.</summary>
    public string? Plant { get; init; }

    /// <summary>What is cut off the raw start, kerf included.</summary>
    [LengthRange]
    public required decimal TrimLength { get; init; }

    /// <summary>All that is lost on the bar's centerline: kerfs, and beside miters slices and wedges.</summary>
    [LengthRange]
    public required decimal KerfLength { get; init; }

    /// <summary>Passes of the blade for each bar, a trim cut included.</summary>
    [Range(0, int.MaxValue)]
    public required int CutCount { get; init; }

    /// <summary>The pieces in the order in which they are cut.</summary>
    public required IReadOnlyList<NestCutJson> Cuts { get; init; }

    /// <summary>What is left of each bar.</summary>
    public required NestRemainderJson Remainder { get; init; }
}
