using SawEngine.Benchmarks.Quality;

namespace SawEngine.Benchmarks.Peers;

/// <summary>A way to solve a problem of lengths alone.</summary>
/// <param name="Name">Its name in the table and on the command line of its process.</param>
/// <param name="IsEngine">Whether it is the engine itself, whose bounds are proved.</param>
/// <param name="Solve">Solves within about a number of seconds; null where nothing is found. Throws <see cref="NotSupportedException"/> with a reason where it does not try.</param>
internal sealed record Peer(string Name, bool IsEngine, Func<BarProblem, double, PeerNest?> Solve);
