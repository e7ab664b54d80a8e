namespace SawEngine.Core.Scheduling;

/// <summary>Why a job is not in the schedule: stable snake_case codes.</summary>
public static class UnscheduledReason
{
    /// <summary>No saw can take the job.</summary>
    public const string NoSaw = "no_saw_for_job";

    /// <summary>The saws that can take it have no shift after its release.</summary>
    public const string NoShift = "no_shift_left";

    /// <summary>A step of it is longer than every shift of the saws that can take it.</summary>
    public const string StepLongerThanShift = "step_longer_than_shift";

    /// <summary>A single cut wears out more than a new blade.</summary>
    public const string CutExceedsBladeLife = "cut_exceeds_blade_life";

    /// <summary>A job that it must follow is not scheduled.</summary>
    public const string PredecessorUnscheduled = "predecessor_unscheduled";

    /// <summary>The saw that it is frozen on cannot take it.</summary>
    public const string FrozenSawCannotTakeIt = "frozen_saw_cannot_take_job";

    /// <summary>No operator or crane is free for long enough within the shifts of the saws that can take it.</summary>
    public const string NoOneToSetUp = "no_operator_or_crane_left";

    /// <summary>The verifier refused the schedule; it is withheld.</summary>
    public const string NotVerified = "not_verified";
}
