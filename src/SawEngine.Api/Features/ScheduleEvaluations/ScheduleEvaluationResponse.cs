using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>What an edited schedule breaks, takes and costs, against the engine's own.</summary>
public sealed record ScheduleEvaluationResponse : OperationResponse
{
    /// <summary>Currency of every amount.</summary>
    public string? Currency { get; init; }

    /// <summary>Zone of calendars and times.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Whether no rule is broken: the schedule can be run as it stands.</summary>
    public required bool IsClean { get; init; }

    /// <summary>The first thousand rules that are broken, in the order of the schedule's jobs; empty where it is clean.</summary>
    [MaxLength(Limits.ViolationsReported)]
    public required IReadOnlyList<ScheduleViolationJson> Violations { get; init; }

    /// <summary>How many rules are broken.</summary>
    [Range(0, 100_000_000)]
    public required int ViolationCount { get; init; }

    /// <summary>Whether the engine gave the times, since some jobs came without.</summary>
    public required bool TimedByEngine { get; init; }

    /// <summary>What the schedule costs as it stands. Jobs that are not asked for, or on saws that cannot take them, count for nothing here and in the totals.</summary>
    public required ScheduleCostJson Cost { get; init; }

    /// <summary>The schedule in figures.</summary>
    public required ScheduleTotalsJson Totals { get; init; }

    /// <summary>The jobs with their times, by id and first step.</summary>
    public required IReadOnlyList<ScheduledJobJson> Jobs { get; init; }

    /// <summary>The saws that run, by id.</summary>
    public required IReadOnlyList<SawLoadJson> Saws { get; init; }

    /// <summary>Jobs for which there is no room in the sequences given, by id; only where the engine gave the times.</summary>
    public required IReadOnlyList<UnscheduledJson> Unscheduled { get; init; }

    /// <summary>What changes against the earlier schedule; absent where the request has none.</summary>
    public ScheduleChangesJson? Changes { get; init; }

    /// <summary>The engine's own schedule; absent where compare is false.</summary>
    public ScheduleComparisonJson? Comparison { get; init; }

    /// <summary>What the engine filled in, by saw and name.</summary>
    public required IReadOnlyList<DefaultJson> Defaults { get; init; }
}
