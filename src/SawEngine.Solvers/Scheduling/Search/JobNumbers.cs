namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>What the search knows of a job on a saw, side by side in memory.</summary>
internal readonly record struct JobNumbers(long Seconds, long Release, long Due, long Weight, long WorkCost, long SetUpRate);
