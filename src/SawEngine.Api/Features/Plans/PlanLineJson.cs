using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Plans;

/// <summary>An order line in the plan.</summary>
public sealed record PlanLineJson
{
    /// <summary>Id of the line.</summary>
    public required string LineId { get; init; }

    /// <summary>Pieces ordered.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>Pieces that are placed and scheduled.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int Planned { get; init; }

    /// <summary>When the last planned piece is cut; absent where none is.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Jobs that cut it, by id.</summary>
    public required IReadOnlyList<string> JobIds { get; init; }

    /// <summary>Cost of the planned pieces; absent where none is.</summary>
    public LineCostJson? Cost { get; init; }

    /// <summary>Total over planned pieces, rounded half to even; absent where none is planned.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? CostPerPiece { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
