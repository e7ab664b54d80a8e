namespace SawEngine.Core.Scheduling;

/// <summary>The rules that <see cref="ScheduleVerifier"/> checks: stable snake_case codes.</summary>
public static class ScheduleRule
{
    /// <summary>A job of the schedule is not in the problem.</summary>
    public const string UnknownJob = "unknown_job";

    /// <summary>A job of the problem is neither scheduled nor left out with a reason.</summary>
    public const string JobMissing = "job_missing";

    /// <summary>A job is listed more than once that stays whole, or both scheduled and left out.</summary>
    public const string JobListedTwice = "job_listed_twice";

    /// <summary>Jobs are not listed by saw id and sequence, those left out not by id, or the work of one not by start.</summary>
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

    /// <summary>Set-up parts that follow one another are not in the order in which they are done, or not all before the work.</summary>
    public const string SetUpOrder = "set_up_order";

    /// <summary>A set-up part takes more or less than its time on that saw.</summary>
    public const string SetUpDuration = "set_up_duration";

    /// <summary>A set-up part does not lie in one stretch of its saw's attended time, overtime included.</summary>
    public const string SetUpOutsideShift = "set_up_outside_shift";

    /// <summary>Work starts before the job is released.</summary>
    public const string WorkBeforeRelease = "work_before_release";

    /// <summary>A span of work does not lie in one stretch of its saw's attended time, nor in what may follow it unattended.</summary>
    public const string WorkOutsideShift = "work_outside_shift";

    /// <summary>A span is shorter or longer than its steps, rounded up to whole seconds.</summary>
    public const string WorkDuration = "work_duration";

    /// <summary>The spans do not hold all steps of the job, or one holds none.</summary>
    public const string WorkSteps = "work_steps";

    /// <summary>Work stops and goes on in the same stretch of attended time though no blade is changed, no crane loads and nobody is waited for.</summary>
    public const string WorkSplit = "work_split";

    /// <summary>A job that must run through pauses over a break, the saw's or that of all its operators.</summary>
    public const string WorkPaused = "work_paused";

    /// <summary>A cut is begun that the mounted blade cannot finish.</summary>
    public const string BladeWornOut = "blade_worn_out";

    /// <summary>The stated cost is not that of the schedule.</summary>
    public const string CostWrong = "cost_wrong";

    /// <summary>The stated bound is above the cost.</summary>
    public const string BoundAboveCost = "bound_above_cost";

    /// <summary>A job is left out for a reason that is not on the published list.</summary>
    public const string UnknownReason = "unknown_reason";

    /// <summary>A job is left out for a reason that does not hold.</summary>
    public const string ReasonWrong = "reason_wrong";

    /// <summary>A job is split into more parts than it may be.</summary>
    public const string TooManyParts = "too_many_parts";

    /// <summary>The parts of a job that was split do not do each of its steps once.</summary>
    public const string PartSteps = "part_steps";

    /// <summary>A job is scheduled that follows one that is not.</summary>
    public const string PredecessorLeftOut = "predecessor_left_out";

    /// <summary>Work starts before that of a job is done that it follows.</summary>
    public const string WorkBeforePredecessor = "work_before_predecessor";

    /// <summary>A frozen job is on another saw.</summary>
    public const string FrozenSaw = "frozen_saw";

    /// <summary>The frozen jobs of a saw are not its first, or not in the order of their starts.</summary>
    public const string FrozenOrder = "frozen_order";

    /// <summary>A frozen job starts before its time, or later than its saw lets it.</summary>
    public const string FrozenStart = "frozen_start";

    /// <summary>A blade is mounted that does not lie ready for the saw with the stated life.</summary>
    public const string BladeNotReady = "blade_not_ready";

    /// <summary>A job runs unattended that may not.</summary>
    public const string UnattendedNotAllowed = "unattended_not_allowed";

    /// <summary>Work starts where the saw is not attended.</summary>
    public const string UnattendedStart = "unattended_start";

    /// <summary>A step that needs hands reaches into an unattended window.</summary>
    public const string UnattendedManualStep = "unattended_manual_step";

    /// <summary>More bars are loaded in an unattended window than the magazine holds.</summary>
    public const string UnattendedBars = "unattended_bars";

    /// <summary>More cuts are made in an unattended window than outfeed and chip bin hold.</summary>
    public const string UnattendedCuts = "unattended_cuts";

    /// <summary>Work goes on for longer in an unattended window than it may.</summary>
    public const string UnattendedTooLong = "unattended_too_long";

    /// <summary>A set-up part, blade change or crane load has no operator of its saw's team.</summary>
    public const string OperatorMissing = "operator_missing";

    /// <summary>An operator is named where none is needed.</summary>
    public const string OperatorUnneeded = "operator_unneeded";

    /// <summary>What an operator does does not lie in one shift.</summary>
    public const string OperatorOffShift = "operator_off_shift";

    /// <summary>An operator has two things to do at a time, or no time to walk between two saws.</summary>
    public const string OperatorBusy = "operator_busy";

    /// <summary>More saws of a team are at work than its operators on shift attend.</summary>
    public const string AttendanceExceeded = "attendance_exceeded";

    /// <summary>A crane load has no crane that reaches its saw.</summary>
    public const string CraneMissing = "crane_missing";

    /// <summary>A crane is named where none is needed.</summary>
    public const string CraneUnneeded = "crane_unneeded";

    /// <summary>A crane has two loads at a time.</summary>
    public const string CraneBusy = "crane_busy";

    /// <summary>A crane load shares its span with other steps.</summary>
    public const string CraneLoadNotAlone = "crane_load_not_alone";
}
