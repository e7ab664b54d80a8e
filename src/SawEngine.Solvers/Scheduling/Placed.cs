namespace SawEngine.Solvers.Scheduling;

/// <summary>Where a job would go.</summary>
internal readonly record struct Placed(long Start, long Finish, Int128 Cost);
