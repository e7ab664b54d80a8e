using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting.Alternatives;

namespace SawEngine.Api.Features.Nests;

/// <summary>A small change with which a nest of fewer bars was found, or one that leaves fewer pieces out. Others may save as much.</summary>
public sealed record NearMissJson
{
    /// <summary>What would change: the length of pieces, their quantity, or the stock.</summary>
    [KnownValues(typeof(NearMissChange))]
    public required string Change { get; init; }

    /// <summary>The pieces; absent where stock would change.</summary>
    [MaxLength(Limits.IdLength)]
    public string? PieceId { get; init; }

    /// <summary>The stock item; absent where pieces would change.</summary>
    [MaxLength(Limits.IdLength)]
    public string? StockId { get; init; }

    /// <summary>By how much each of the pieces would be shorter, the least of the eighths of the greatest change that was found to do, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? ShorterBy { get; init; }

    /// <summary>How many pieces fewer, the least that was found.</summary>
    [Range(1, Limits.FewerPieces)]
    public int? FewerBy { get; init; }

    /// <summary>Bars fewer than the nest answered takes, which is the cheapest and not always the one of fewest bars; negative where more pieces are placed and take more.</summary>
    [Range(-Limits.TotalQuantity, Limits.TotalQuantity)]
    public required long BarsSaved { get; init; }

    /// <summary>Value of the nest less that of the one found, in the unit of the objective; negative where more pieces are placed and cost more.</summary>
    [Range(-(double)Limits.Cost * Limits.TotalQuantity, (double)Limits.Cost * Limits.TotalQuantity)]
    public required decimal ValueSaved { get; init; }

    /// <summary>Pieces placed that the nest leaves out.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required long MorePlaced { get; init; }
}
