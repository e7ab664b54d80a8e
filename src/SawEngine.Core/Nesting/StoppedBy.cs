namespace SawEngine.Core.Nesting;

/// <summary>What ended a search.</summary>
public enum StoppedBy
{
    /// <summary>The answer is proved optimal.</summary>
    Proof,

    /// <summary>The work allowed for the effort is done.</summary>
    Effort,

    /// <summary>The caller's time limit, or a caller that went away.</summary>
    TimeLimit,
}
