using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A rule of the trade that the edited schedule breaks.</summary>
public sealed record ScheduleViolationJson
{
    /// <summary>Where it is in the body sent, as a JSON Pointer fragment.</summary>
    public required string Pointer { get; init; }

    /// <summary>The rule, for a program.</summary>
    [KnownValues(
        ScheduleRule.UnknownJob, ScheduleRule.JobMissing, ScheduleRule.JobListedTwice, ScheduleRule.UnknownSaw, ScheduleRule.SawNotEligible, ScheduleRule.SequenceBroken,
        ScheduleRule.StartsBeforePlan, ScheduleRule.Overlap, ScheduleRule.SetUpMissing, ScheduleRule.SetUpUnneeded, ScheduleRule.SetUpOrder, ScheduleRule.SetUpDuration,
        ScheduleRule.SetUpOutsideShift, ScheduleRule.WorkBeforeRelease, ScheduleRule.WorkOutsideShift, ScheduleRule.WorkDuration, ScheduleRule.WorkSteps, ScheduleRule.WorkSplit,
        ScheduleRule.WorkPaused, ScheduleRule.BladeWornOut, ScheduleRule.UnknownReason, EditedScheduleRule.StatementDiffers)]
    public required string Code { get; init; }

    /// <summary>What breaks it, for a person.</summary>
    public required string Detail { get; init; }
}
