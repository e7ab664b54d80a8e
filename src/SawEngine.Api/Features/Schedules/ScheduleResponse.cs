using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Which job runs on which saw, in what order and when. Lists are sorted by id.</summary>
public sealed record ScheduleResponse : OperationResponse
{
    /// <summary>Currency of every amount.</summary>
    public string? Currency { get; init; }

    /// <summary>Zone of calendars and times.</summary>
    public string? TimeZone { get; init; }

    /// <summary>All jobs scheduled, some, or none.</summary>
    [KnownValues(typeof(PlanStatus))]
    public required string Status { get; init; }

    /// <summary>What the schedule costs, and what none can undercut.</summary>
    public required ScheduleObjectiveJson Objective { get; init; }

    /// <summary>The schedule in figures.</summary>
    public required ScheduleTotalsJson Totals { get; init; }

    /// <summary>The jobs, by id and first step.</summary>
    public required IReadOnlyList<ScheduledJobJson> Jobs { get; init; }

    /// <summary>The saws that run, by id.</summary>
    public required IReadOnlyList<SawLoadJson> Saws { get; init; }

    /// <summary>Why jobs are where they are, by id and first step.</summary>
    public required IReadOnlyList<JobReasonsJson> Reasons { get; init; }

    /// <summary>Why late jobs are late, and what would cure it, by id.</summary>
    public required IReadOnlyList<LatenessJson> Lateness { get; init; }

    /// <summary>What runs on no saw, by job.</summary>
    public required IReadOnlyList<UnscheduledJson> Unscheduled { get; init; }

    /// <summary>What changes against the earlier schedule; absent where the request has none.</summary>
    public ScheduleChangesJson? Changes { get; init; }

    /// <summary>What the engine filled in, by saw and name.</summary>
    public required IReadOnlyList<DefaultJson> Defaults { get; init; }

    /// <summary>What ended the search.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
