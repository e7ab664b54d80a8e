using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Plans;

/// <summary>One bar with its ordered cuts, or several equal bars cut alike: trim, pieces, kerf and remainder make up the bar exactly, each piece by its length on the centerline.</summary>
public sealed record LayoutJson
{
    /// <summary>Id of the layout; it stays when its job moves.</summary>
    public required string LayoutId { get; init; }

    /// <summary>Job that cuts it, scheduled or unscheduled.</summary>
    public required string JobId { get; init; }

    /// <summary>Place in its job, from 1.</summary>
    [Range(1, int.MaxValue)]
    public required int Sequence { get; init; }

    /// <summary>Stock item that the bar is of.</summary>
    public required string StockId { get; init; }

    /// <summary>Designation of the bar's grade.</summary>
    public required string Grade { get; init; }

    /// <summary>Saws for which it is verified, by id.</summary>
    public required IReadOnlyList<string> SawIds { get; init; }

    /// <summary>How many bars are cut alike.</summary>
    [Range(1, Limits.StockQuantity)]
    public required int Repeat { get; init; }

    /// <summary>How many of them are cut together; the last cycle takes what is left. Absent where they are cut singly.</summary>
    public CutBundleJson? Bundle { get; init; }

    /// <summary>How many times the cuts are made: `repeat` over the bars of a bundle, rounded up. Absent where bars are cut singly.</summary>
    [Range(1, Limits.StockQuantity)]
    public int? Cycles { get; init; }

    /// <summary>The melt, where known.</summary>
    public string? Heat { get; init; }

    /// <summary>Inspection document of the bar; absent where there is none.</summary>
    [KnownValues(typeof(CertificateJson))]
    public string? Certificate { get; init; }

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

    /// <summary>Pieces in the order in which they are cut.</summary>
    public required IReadOnlyList<LayoutCutJson> Cuts { get; init; }

    /// <summary>What is left of each bar.</summary>
    public required LayoutRemainderJson Remainder { get; init; }
}
