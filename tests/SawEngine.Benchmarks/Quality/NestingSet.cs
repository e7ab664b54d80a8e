namespace SawEngine.Benchmarks.Quality;

/// <summary>Instances that are reported as one line.</summary>
/// <param name="Name">The set's name.</param>
/// <param name="Instances">Its instances, made when they are asked for.</param>
/// <param name="BesideGreedy">Whether cost and bars are reported beside those of the greedy nester.</param>
/// <param name="Growth">Where the set is a point of a growth curve: the curve and the size.</param>
internal sealed record NestingSet(string Name, IEnumerable<NestingInstance> Instances, bool BesideGreedy = false, (string Curve, int Size)? Growth = null);
