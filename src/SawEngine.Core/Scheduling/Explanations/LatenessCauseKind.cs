namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>What the time until a late job's end is spent on.</summary>
public enum LatenessCauseKind
{
    /// <summary>It is not released: material, or the order's own.</summary>
    Release,

    /// <summary>Jobs that it must follow.</summary>
    Predecessors,

    /// <summary>Other jobs on its saw, and what these wait for.</summary>
    EarlierJobs,

    /// <summary>Its saw has no shift, or none long enough for what comes next.</summary>
    NotAttended,

    /// <summary>Its saw is down, or in maintenance, in its shifts.</summary>
    SawDown,

    /// <summary>Operators or cranes are busy elsewhere.</summary>
    OperatorOrCrane,

    /// <summary>Its own set-up and blade changes.</summary>
    SetUps,

    /// <summary>Its own work.</summary>
    Work,
}
