using Google.OrTools.Sat;
using SawEngine.Benchmarks.Quality;
using SawEngine.Core;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Benchmarks.Peers;

/// <summary>
/// The plain model, given to CP-SAT with one worker: how many of each piece are cut from each single bar. Equal bars are used in order.
/// There are as many bars of an unlimited length as the cost of a greedy nest would buy, so that no better nest is lost.
/// </summary>
internal static class AssignmentModel
{
    public static PeerNest? Solve(BarProblem problem, double seconds)
    {
        var model = new CpModel();
        var slots = Slots(problem).ToList();
        var used = slots.Select((_, slot) => model.NewBoolVar($"used {slot}")).ToList();
        var counts = slots.Select(bar => problem.Pieces.Select(piece => model.NewIntVar(0, MostOf(problem, bar, piece), "")).ToArray()).ToList();
        for (var slot = 0; slot < slots.Count; slot++)
        {
            var room = problem.Bars[slots[slot]].Length - problem.Tail;
            model.Add(LinearExpr.WeightedSum(counts[slot], problem.Pieces.Select(piece => piece.Length + problem.Kerf)) <= room * used[slot]);
            if (slot > 0 && slots[slot - 1] == slots[slot])
                model.AddImplication(used[slot], used[slot - 1]);
        }
        for (var piece = 0; piece < problem.Pieces.Count; piece++)
            model.Add(LinearExpr.Sum(counts.Select(bar => bar[piece])) == problem.Pieces[piece].Demand);
        model.Minimize(LinearExpr.WeightedSum(used, slots.Select(bar => problem.Bars[bar].CostMicros)));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1 max_time_in_seconds:{seconds}") };
        if (solver.Solve(model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return null;
        var patterns = Enumerable.Range(0, slots.Count)
            .Select(slot => new CutPattern(slots[slot], 1, [.. counts[slot].SelectMany((count, piece) => Enumerable.Repeat(piece, (int)solver.Value(count)))]))
            .Where(pattern => pattern.Pieces.Count > 0);
        return new([.. patterns], null);
    }

    /// <summary>The place of the bar that each slot is.</summary>
    private static IEnumerable<int> Slots(BarProblem problem)
    {
        var greedy = new GreedyNester().Solve(problem.ToNestProblem(), Effort.Quick, CancellationToken.None).ValueMicros;
        return problem.Bars.SelectMany((bar, place) => Enumerable.Repeat(place, bar.Available ?? (int)(greedy / bar.CostMicros)));
    }

    private static long MostOf(BarProblem problem, int bar, WantedPiece piece) =>
        Math.Min(piece.Demand, Math.Max(0, (problem.Bars[bar].Length - problem.Tail) / (piece.Length + problem.Kerf)));
}
