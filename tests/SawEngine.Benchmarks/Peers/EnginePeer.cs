using SawEngine.Benchmarks.Quality;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Benchmarks.Peers;

/// <summary>A nester of the engine as a peer; its effort is its only limit.</summary>
internal static class EnginePeer
{
    public static PeerNest? Solve(INester nester, Effort effort, BarProblem problem)
    {
        var nest = nester.Solve(problem.ToNestProblem(), effort, CancellationToken.None);
        if (nest.Unplaced.Count > 0)
            return null;
        var bars = Enumerable.Range(0, problem.Bars.Count).ToDictionary(BarProblem.StockIdOf, StringComparer.Ordinal);
        var pieces = Enumerable.Range(0, problem.Pieces.Count).ToDictionary(BarProblem.RefOf);
        var patterns = nest.Layouts.Select(layout => new CutPattern(bars[layout.Stock.StockId], layout.Repeat, [.. layout.Cuts.Select(cut => pieces[cut.Piece])]));
        return new([.. patterns], nest.BoundMicros);
    }
}
