using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Estimates;

/// <summary>Time and cost of an order line, in the order as a whole.</summary>
public sealed record EstimatedLineJson
{
    /// <summary>Id of the line.</summary>
    public required string LineId { get; init; }

    /// <summary>Pieces ordered.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>Pieces that can be cut; time and cost are of these.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int Planned { get; init; }

    /// <summary>Saws that cut it, by id.</summary>
    public required IReadOnlyList<string> SawIds { get; init; }

    /// <summary>Saw time in seconds, with its share of set-ups, loading and remainders, to a tenth; the lines add up to the jobs.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Seconds { get; init; }

    /// <summary>Cost of the pieces that can be cut.</summary>
    public required LineCostJson Cost { get; init; }

    /// <summary>Cost over pieces, to cents; absent where none can be cut.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? CostPerPiece { get; init; }

    /// <summary>What the line would take and cost on its own, by quantity; those that the time limit did not allow are missing.</summary>
    public required IReadOnlyList<PriceBreakJson> PriceBreaks { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
