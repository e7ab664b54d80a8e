using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Nests;

/// <summary>All layouts in figures; stock is the sum of pieces, kerf, trim, remnants and scrap, exactly.</summary>
public sealed record NestTotalsJson
{
    /// <summary>Number of bars.</summary>
    [Range(0, int.MaxValue)]
    public required int BarsUsed { get; init; }

    /// <summary>Length of the bars.</summary>
    public required decimal StockLength { get; init; }

    /// <summary>Length of the pieces, overall.</summary>
    public required decimal PieceLength { get; init; }

    /// <summary>Length lost to kerf, with the slices beside miters.</summary>
    public required decimal KerfLength { get; init; }

    /// <summary>Length cut off raw ends.</summary>
    public required decimal TrimLength { get; init; }

    /// <summary>Length of the remnants.</summary>
    public required decimal RemnantLength { get; init; }

    /// <summary>Length of the scrap.</summary>
    public required decimal ScrapLength { get; init; }

    /// <summary>Share of the stock that becomes pieces or remnants, to 4 decimals: by mass where the catalog knows all sections and grades, else by length.
    /// Absent where no bar is used.</summary>
    [Range(0, 1)]
    public decimal? MaterialYield { get; init; }
}
