namespace SawEngine.Core.Scheduling;

/// <summary>When and how far a saw may run by itself. In each window it ends at the first of: bars loaded, cuts that outfeed and chip bin hold, time, blade life, a manual step.</summary>
/// <param name="Windows">Spans without attendance: ascending, disjoint, none overlaps an attended one; they may touch.</param>
/// <param name="Bars">Most bars or bundles that the magazine loads by itself in one window.</param>
/// <param name="Cuts">Most cuts in one window.</param>
/// <param name="LongestSeconds">From the start of a window, after which nothing goes on by itself.</param>
public sealed record UnattendedRuns(IReadOnlyList<TimeWindow> Windows, int Bars, int Cuts, long LongestSeconds = long.MaxValue);
