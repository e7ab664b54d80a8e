using SawEngine.Core.Scheduling;

namespace SawEngine.Benchmarks.Quality;

/// <summary>A published scheduling problem, as it is stated and as the engine gets it.</summary>
/// <param name="Name">Its id.</param>
/// <param name="Stated">The numbers of the source.</param>
/// <param name="Problem">The same for the engine: a unit of time is a second, a unit of cost a millionth of the currency.</param>
/// <param name="Best">Least value known; null where none is.</param>
/// <param name="IsProved">Whether no schedule is better than <paramref name="Best"/>.</param>
internal sealed record SchedulingInstance(string Name, MachineProblem Stated, ScheduleProblem Problem, long? Best, bool IsProved);
