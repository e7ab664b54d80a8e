using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.Estimates;

/// <summary>Time and cost of an order on its own. Lists are sorted by id.</summary>
public sealed record EstimateResponse : OperationResponse
{
    /// <summary>Currency of every amount.</summary>
    public string? Currency { get; init; }

    /// <summary>All pieces can be cut, some, or none.</summary>
    [KnownValues(typeof(PlanStatus))]
    public required string Status { get; init; }

    /// <summary>Id of the order.</summary>
    public required string OrderId { get; init; }

    /// <summary>The order in figures.</summary>
    public required EstimateTotalsJson Totals { get; init; }

    /// <summary>Its lines, by id.</summary>
    public required IReadOnlyList<EstimatedLineJson> Lines { get; init; }

    /// <summary>What cannot be cut, by line and reason.</summary>
    public required IReadOnlyList<UnplacedLineJson> Unplaced { get; init; }

    /// <summary>Stock that it takes, by id.</summary>
    public required IReadOnlyList<StockUseJson> StockUsed { get; init; }

    /// <summary>Cautions, by id.</summary>
    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    /// <summary>What the engine filled in, by saw and name.</summary>
    public required IReadOnlyList<DefaultJson> Defaults { get; init; }

    /// <summary>What ended the search of the nests: the weakest.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
