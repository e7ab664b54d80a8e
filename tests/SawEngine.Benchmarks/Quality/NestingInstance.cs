using SawEngine.Core.Nesting;

namespace SawEngine.Benchmarks.Quality;

/// <summary>A problem and what is known of it.</summary>
/// <param name="Name">Its name within the set.</param>
/// <param name="Problem">The problem.</param>
/// <param name="OptimumMicros">The least cost, where it is known.</param>
/// <param name="LowerBoundMicros">A published bound on the least cost, where there is one.</param>
internal sealed record NestingInstance(string Name, NestProblem Problem, long? OptimumMicros = null, long? LowerBoundMicros = null);
