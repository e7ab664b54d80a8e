using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>One bar with its ordered cuts, or several equal bars cut alike, as the answer of a nest writes it. What is stated beside the cuts is checked against them.</summary>
public sealed record EditedLayoutJson
{
    /// <summary>Id, unique in the request.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string LayoutId { get; init; }

    /// <summary>Place in the order of cutting. Layouts without one come last; equal ones come by id.</summary>
    [Range(1, Limits.TotalQuantity)]
    public int? Sequence { get; init; }

    /// <summary>Stock item that the bar is of.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string StockId { get; init; }

    /// <summary>Section of the stock.</summary>
    [MinLength(1)]
    public string? Section { get; init; }

    /// <summary>Grade of the stock.</summary>
    [MinLength(1)]
    public string? Grade { get; init; }

    /// <summary>How many bars are cut alike.</summary>
    [Range(1, Limits.StockQuantity)]
    public int Repeat { get; init; } = 1;

    /// <summary>The melt of the stock.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Heat { get; init; }

    /// <summary>The customer who owns the bar.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Owner { get; init; }

    /// <summary>The plant where the bar lies.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Plant { get; init; }

    /// <summary>What is cut off the raw start, kerf included.</summary>
    [LengthRange]
    public decimal? TrimLength { get; init; }

    /// <summary>All that is lost on the bar's centerline: kerfs, and beside miters slices and wedges.</summary>
    [LengthRange]
    public decimal? KerfLength { get; init; }

    /// <summary>Passes of the blade for each bar. It follows from the positions and counts for nothing.</summary>
    [Range(0, int.MaxValue)]
    public int? CutCount { get; init; }

    /// <summary>The pieces in the order in which they are cut.</summary>
    [MaxLength(Limits.TotalQuantity)]
    public required IReadOnlyList<EditedCutJson> Cuts { get; init; }

    /// <summary>What is left of each bar.</summary>
    public EditedRemainderJson? Remainder { get; init; }
}
