namespace SawEngine.Core.Scheduling;

/// <summary>The rules that <see cref="ScheduleVerifier"/> checks: stable snake_case codes.</summary>
public static class ScheduleRule
{
    /// <summary>A job of the schedule is not in the problem.</summary>
    public const string UnknownJob = "unknown_job";

    /// <summary>A job of the problem is neither scheduled nor left out with a reason.</summary>
    public const string JobMissing = "job_missing";

    /// <summary>A job is listed more than once.</summary>
    public const string JobListedTwice = "job_listed_twice";

    /// <summary>Jobs are not listed by saw id and sequence, or those left out not by id.</summary>
    public const string ListOutOfOrder = "list_out_of_order";

    /// <summary>A saw of the schedule is not in the problem.</summary>
    public const string UnknownSaw = "unknown_saw";

    /// <summary>A job is on a saw that it may not run on.</summary>
    public const string SawNotEligible = "saw_not_eligible";

    /// <summary>Sequence numbers of a saw do not run from 1 without a gap.</summary>
    public const string SequenceBroken = "sequence_broken";

    /// <summary>Something starts before the plan does.</summary>
    public const string StartsBeforePlan = "starts_before_plan";

    /// <summary>Two intervals on one saw overlap, or do not follow in sequence.</summary>
    public const string Overlap = "overlap";

    /// <summary>A set-up part that the sequence needs is missing.</summary>
    public const string SetUpMissing = "set_up_missing";

    /// <summary>A set-up part is listed that nothing calls for.</summary>
    public const string SetUpUnneeded = "set_up_unneeded";

    /// <summary>Set-up parts are not in the order in which they are done.</summary>
    public const string SetUpOrder = "set_up_order";

    /// <summary>A set-up part takes more or less than its time on that saw.</summary>
    public const string SetUpDuration = "set_up_duration";

    /// <summary>A set-up part does not lie in one window of its saw.</summary>
    public const string SetUpOutsideShift = "set_up_outside_shift";

    /// <summary>Work starts before the job is released.</summary>
    public const string WorkBeforeRelease = "work_before_release";

    /// <summary>A span of work does not lie in one window of its saw.</summary>
    public const string WorkOutsideShift = "work_outside_shift";

    /// <summary>A span is shorter or longer than its steps, rounded up to whole seconds.</summary>
    public const string WorkDuration = "work_duration";

    /// <summary>The spans do not hold all steps of the job, or one holds none.</summary>
    public const string WorkSteps = "work_steps";

    /// <summary>Work stops and goes on in the same window though no blade is changed.</summary>
    public const string WorkSplit = "work_split";

    /// <summary>A job that must run through pauses over a break.</summary>
    public const string WorkPaused = "work_paused";

    /// <summary>A cut is begun that the mounted blade cannot finish.</summary>
    public const string BladeWornOut = "blade_worn_out";

    /// <summary>The stated cost is not that of the schedule.</summary>
    public const string CostWrong = "cost_wrong";

    /// <summary>The stated bound is above the cost.</summary>
    public const string BoundAboveCost = "bound_above_cost";

    /// <summary>A job is left out for a reason that is not on the published list.</summary>
    public const string UnknownReason = "unknown_reason";
}
