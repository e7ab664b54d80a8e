using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Plans;

/// <summary>The plan in figures.</summary>
public sealed record PlanTotalsJson
{
    /// <summary>Pieces ordered.</summary>
    public required int PiecesOrdered { get; init; }

    /// <summary>Pieces that are placed and scheduled.</summary>
    public required int PiecesPlanned { get; init; }

    /// <summary>Bars and remnants used.</summary>
    public required int BarsUsed { get; init; }

    /// <summary>Mass of pieces and remnants over mass of bars.</summary>
    [Range(0, 1)]
    public required decimal MaterialYield { get; init; }

    /// <summary>Orders that finish after they are due.</summary>
    public required int LateOrders { get; init; }

    /// <summary>When the last job is done; absent where nothing is scheduled.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Sum of the order lines' costs; absent where stock has no costs.</summary>
    public decimal? Cost { get; init; }
}
