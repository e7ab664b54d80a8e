using SawEngine.Benchmarks.Quality;
using SawEngine.Core;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Benchmarks.Peers;

/// <summary>The peers, in the order in which they are reported.</summary>
internal static class NestingPeers
{
    /// <summary>The one that the others are compared with.</summary>
    public static readonly Peer Reference = new("engine-standard", true, (problem, _) => EnginePeer.Solve(EngineNester.Create(), Effort.Standard, problem));

    public static readonly IReadOnlyList<Peer> All =
    [
        new("greedy", true, (problem, _) => EnginePeer.Solve(new GreedyNester(), Effort.Quick, problem)),
        new("cp-sat-assignment", false, AssignmentModel.Solve),
        new("arc-flow-scip", false, (problem, seconds) => ArcFlow.Solve(problem, "scip", seconds)),
        new("arc-flow-highs", false, (problem, seconds) => ArcFlow.Solve(problem, "highs", seconds)),
        new("engine-quick", true, (problem, _) => EnginePeer.Solve(EngineNester.Create(), Effort.Quick, problem)),
        Reference,
    ];
}
