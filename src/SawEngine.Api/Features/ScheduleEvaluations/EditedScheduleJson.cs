using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>
/// A schedule as the answer of one writes it. Where a job has no work, all jobs are timed by the engine, saw by saw in the sequence given, and no stated times count;
/// otherwise the stated times are held against the rules.
/// </summary>
public sealed record EditedScheduleJson
{
    /// <summary>The jobs; one in parts once for each part.</summary>
    [MaxLength(ScheduleLimits.ScheduledJobs)]
    public required IReadOnlyList<EditedJobJson> Jobs { get; init; }

    /// <summary>Jobs that are left out.</summary>
    [MaxLength(ScheduleLimits.Jobs)]
    public IReadOnlyList<EditedUnscheduledJson> Unscheduled { get; init; } = [];
}
