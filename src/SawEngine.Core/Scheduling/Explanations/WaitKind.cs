namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>What keeps a job from starting earlier on its saw.</summary>
public enum WaitKind
{
    /// <summary>Nothing: it starts with the plan.</summary>
    PlanStart,

    /// <summary>Its release: material, or the order's own.</summary>
    Release,

    /// <summary>The start that it is frozen at.</summary>
    Frozen,

    /// <summary>A job that it must follow.</summary>
    Predecessor,

    /// <summary>The job before it on the saw.</summary>
    SawBusy,

    /// <summary>The saw is not attended before, or not for long enough.</summary>
    NotAttended,

    /// <summary>An operator or crane is busy elsewhere, or attends as many saws as can be.</summary>
    OperatorOrCrane,
}
