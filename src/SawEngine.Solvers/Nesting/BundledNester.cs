using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Cuts equal layouts of a nest in bundles. A pass through a bundle costs as much as one through a bar, so that the search counts each pass of a bar with its share
/// of the largest bundle, rounded down: what it proves then holds for every bundling. The nest found for single bars stands where it comes out cheaper in bundles.
/// </summary>
/// <param name="nester">Nests single bars.</param>
public sealed class BundledNester(INester nester) : INester
{
    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        if (MostBars(problem) == 1)
            return nester.Solve(problem, effort, cancellation);
        var shared = nester.Solve(Shared(problem), effort, cancellation);
        var nest = Bundled(problem, shared, shared.BoundMicros, cancellation);
        if (problem.CostPerCutMicros == 0 || cancellation.IsCancellationRequested)
            return nest;
        var single = nester.Solve(problem, Below(effort), cancellation);
        var other = Bundled(problem, single, shared.BoundMicros, cancellation);
        return other.ValueMicros < nest.ValueMicros && Counts(single).SetEquals(Counts(shared)) ? other : nest;
    }

    /// <inheritdoc/>
    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) => nester.Bound(Shared(problem), effort, cancellation);

    /// <summary>The nest for single bars is seldom the better one, and by little: it gets less effort.</summary>
    private static Effort Below(Effort effort) => effort == Effort.Thorough ? Effort.Standard : Effort.Quick;

    private static NestProblem Shared(NestProblem problem) => problem with { CostPerCutMicros = problem.CostPerCutMicros / MostBars(problem) };

    /// <summary>No bundle of the problem has more bars.</summary>
    private static int MostBars(NestProblem problem) => problem.Rules.Bundle is not { } clamped || problem.Stock.Count == 0 ? 1
        : Math.Max(1, Math.Min(clamped.MostBars, problem.Stock.Max(item => item.Kind == StockKind.Remnant ? 1 : item.Quantity ?? int.MaxValue)));

    private static Nest Bundled(NestProblem problem, Nest nest, long bound, CancellationToken cancellation)
    {
        var layouts = nest.Layouts.Select(layout => layout with { Bundle = LayoutBundles.FewestCycles(layout, problem.Rules) }).ToList();
        var value = layouts.Sum(LayoutCost.Of(problem).Micros);
        return nest with
        {
            Layouts = layouts,
            ValueMicros = value,
            BoundMicros = Math.Min(bound, value),
            StoppedBy = nest.StoppedBy == StoppedBy.Proof && bound < value ? (cancellation.IsCancellationRequested ? StoppedBy.TimeLimit : StoppedBy.Effort) : nest.StoppedBy,
        };
    }

    private static HashSet<(PieceRef, int)> Counts(Nest nest) =>
        nest.Layouts.SelectMany(layout => layout.Cuts.Select(cut => (cut.Piece, layout.Repeat))).GroupBy(cut => cut.Piece)
            .Select(cuts => (cuts.Key, cuts.Sum(cut => cut.Repeat))).ToHashSet();
}
