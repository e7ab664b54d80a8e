namespace SawEngine.Benchmarks.Quality;

/// <summary>Scheduling problems that are reported in one line.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Instances">Its problems of a saw shop.</param>
/// <param name="Left">How many others the file has.</param>
internal sealed record SchedulingSet(string Name, IReadOnlyList<SchedulingInstance> Instances, int Left);
