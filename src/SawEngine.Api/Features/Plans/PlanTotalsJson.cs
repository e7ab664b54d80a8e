using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Plans;

/// <summary>The plan in figures.</summary>
public sealed record PlanTotalsJson
{
    /// <summary>Pieces ordered.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int PiecesOrdered { get; init; }

    /// <summary>Pieces that are placed and scheduled.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int PiecesPlanned { get; init; }

    /// <summary>Bars and remnants used.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int BarsUsed { get; init; }

    /// <summary>Mass of pieces and remnants over mass of bars, to 4 decimals; absent where no bar is used.</summary>
    [Range(0, 1)]
    public decimal? MaterialYield { get; init; }

    /// <summary>Orders that finish after they are due.</summary>
    [Range(0, PlanLimits.Orders)]
    public required int LateOrders { get; init; }

    /// <summary>When the last job is done; absent where nothing is scheduled.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Sum of the order lines' costs.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Cost { get; init; }
}
