using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Nests;

/// <summary>All layouts in figures; stock is the sum of pieces, kerf, trim, remnants and scrap, exactly.</summary>
public sealed record NestTotalsJson
{
    /// <summary>Number of bars.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int BarsUsed { get; init; }

    /// <summary>Passes of the blade.</summary>
    [Range(0, int.MaxValue)]
    public required int CutCount { get; init; }

    /// <summary>The greatest number of order lines, here entries of `pieces`, begun and not finished at once when layouts are cut by `sequence` (open stacks).</summary>
    [Range(0, Limits.Lines)]
    public required int MostOpenLines { get; init; }

    /// <summary>Length of the bars.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal StockLength { get; init; }

    /// <summary>Length of the pieces, on their centerlines.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal PieceLength { get; init; }

    /// <summary>Length lost to kerf, and beside miters to slices and wedges.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal KerfLength { get; init; }

    /// <summary>Length cut off raw ends.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal TrimLength { get; init; }

    /// <summary>Length of the remnants.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal RemnantLength { get; init; }

    /// <summary>Length of the scrap.</summary>
    [LengthRange((double)Limits.Length * Limits.TotalQuantity)]
    public required decimal ScrapLength { get; init; }

    /// <summary>
    /// Share of the stock that becomes pieces or remnants, to 4 decimals: by mass where the catalog knows all sections and grades, else by length.
    /// Absent where no bar is used.
    /// </summary>
    [Range(0, 1)]
    public decimal? MaterialYield { get; init; }
}
