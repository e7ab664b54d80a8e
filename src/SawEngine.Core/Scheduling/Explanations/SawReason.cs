namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Why a job is on its saw.</summary>
public enum SawReason
{
    /// <summary>No other saw can take it.</summary>
    OnlySaw,

    /// <summary>It is frozen there.</summary>
    Frozen,

    /// <summary>It costs no less on any other saw, as the other jobs lie.</summary>
    LeastCost,

    /// <summary>The search left it there; moved alone to another saw, it would cost less.</summary>
    NotImproved,
}
