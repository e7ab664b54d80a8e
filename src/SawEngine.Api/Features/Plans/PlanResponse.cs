using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.Plans;

/// <summary>A plan: nests, cutting jobs, cutting data, schedule, costs, claims, cautions, and what could not be planned and why. Lists are sorted by id.</summary>
public sealed record PlanResponse : OperationResponse
{
    /// <summary>Currency of every amount.</summary>
    public string? Currency { get; init; }

    /// <summary>Zone of calendars and times.</summary>
    public string? TimeZone { get; init; }

    /// <summary>All pieces planned but for accepted under quantities, some, or none.</summary>
    [KnownValues(typeof(PlanStatus))]
    public required string Status { get; init; }

    /// <summary>The plan in figures.</summary>
    public required PlanTotalsJson Totals { get; init; }

    /// <summary>Orders, by id.</summary>
    public required IReadOnlyList<PlanOrderJson> Orders { get; init; }

    /// <summary>Cutting jobs, by id.</summary>
    public required IReadOnlyList<CuttingJobJson> Jobs { get; init; }

    /// <summary>Bar layouts, by id.</summary>
    public required IReadOnlyList<LayoutJson> Layouts { get; init; }

    /// <summary>Nests, by section and grade.</summary>
    public required IReadOnlyList<PlanNestJson> Nests { get; init; }

    /// <summary>What is on no bar, by line.</summary>
    public required IReadOnlyList<UnplacedLineJson> Unplaced { get; init; }

    /// <summary>What runs on no saw, by job.</summary>
    public required IReadOnlyList<UnscheduledJson> Unscheduled { get; init; }

    /// <summary>Cautions, by id.</summary>
    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    /// <summary>Stock that the plan counts on, by id.</summary>
    public required IReadOnlyList<ClaimJson> Claims { get; init; }

    /// <summary>What the engine filled in, by saw and name.</summary>
    public required IReadOnlyList<DefaultJson> Defaults { get; init; }

    /// <summary>What ended the search: the clock where it ended any part, else the weakest of the nests.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
