using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Estimates;

/// <summary>What a quantity of a line would take and cost, were it ordered on its own.</summary>
public sealed record PriceBreakJson
{
    /// <summary>Pieces.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>Pieces that can be cut; time and cost are of these.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int Planned { get; init; }

    /// <summary>Saw time in seconds, set-ups included, to a tenth.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Seconds { get; init; }

    /// <summary>Cost of the pieces that can be cut.</summary>
    public required LineCostJson Cost { get; init; }

    /// <summary>Cost over pieces, to cents; absent where none can be cut.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? CostPerPiece { get; init; }
}
