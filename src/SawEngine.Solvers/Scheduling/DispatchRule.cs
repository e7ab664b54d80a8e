namespace SawEngine.Solvers.Scheduling;

/// <summary>By what the next job of a saw is chosen. Ties go to the earlier due date, then to the job id.</summary>
public enum DispatchRule
{
    /// <summary>Earliest due date first (Jackson 1955).</summary>
    EarliestDueDate,

    /// <summary>Largest cost of lateness per processing time first (Smith 1956).</summary>
    WeightedShortestProcessingTime,

    /// <summary>Apparent tardiness cost with set-ups (Lee, Bhaskaran and Pinedo 1997), for a small grid of its two parameters.</summary>
    ApparentTardinessCost,

    /// <summary>Longest processing time first (Graham 1969).</summary>
    LongestProcessingTime,

    /// <summary>Shortest set-up first.</summary>
    ShortestSetUp,
}
