namespace SawEngine.Core.Scheduling;

/// <summary>How a bound on the cost of a schedule was found.</summary>
public enum ScheduleBoundRule
{
    /// <summary>Each job as if it had its quickest, and its cheapest, saw to itself.</summary>
    JobsAlone,

    /// <summary>All saws at work until all jobs are done.</summary>
    Load,

    /// <summary>Every assignment and sequence, by dynamic programming over subsets of the jobs.</summary>
    AllSequences,
}
