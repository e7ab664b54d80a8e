using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Nests by several greedy rules and keeps the best: the most pieces of each priority, the first before the others, then the least cost. Every effort fills the same bars. The first rule always runs,
/// so that a canceled search still has an answer.
/// </summary>
public sealed class GreedyNester : INester
{
    /// <summary>Cost per length, over that of the cheapest mill length, up to which a filled bar is good enough at first; the usual best ones come first.</summary>
    private static readonly decimal[] FillLimits = [1.001m, 1.01m, 1.0001m, 1.03m, 1.003m, 1.1m];

    /// <summary>Steps of <see cref="BarFill"/> after which no further limit is tried.</summary>
    private const long FillWork = 300_000;

    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var best = Best(problem, cancellation);
        var placed = LineAssignment.Placed(best.Model, best.Bars);
        return new NestAssembly(problem, best.Model.For(placed), placed, AfterwardsEffort.Of(effort), cancellation).Of(best.Bars, NestBound.Micros(problem, placed));
    }

    /// <inheritdoc/>
    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) =>
        NestBound.Micros(problem, problem.Lines.ToDictionary(line => line.Ref, line => line.Quantity));

    internal static FilledBars Best(NestProblem problem, CancellationToken cancellation)
    {
        FilledBars? best = null;
        foreach (var filled in Candidates(problem, cancellation))
        {
            if (filled is not null && filled.IsBetterThan(best))
                best = filled;
            if (cancellation.IsCancellationRequested)
                break;
        }
        return best!;
    }

    private static IEnumerable<FilledBars?> Candidates(NestProblem problem, CancellationToken cancellation)
    {
        var work = 0L;
        var model = ModelOf(problem, roomiest: false);
        var longestFirst = Enumerable.Range(0, model.Types.Length).ToList();
        var cheapest = StockOrder.CheapestFirst(model);
        yield return FilledBars.Of(model, BestFit.Fill(model, longestFirst, StockOrder.ShortestRemnantFirst(model), CancellationToken.None));
        yield return FilledBars.Of(model, BestFit.Fill(model, longestFirst, cheapest, cancellation));
        yield return FilledBars.Of(model, BestFit.Fill(model, longestFirst, StockOrder.ShortestRemnantThenCheapest(model), cancellation));
        yield return FilledBars.Of(model, BestFit.Fill(model, ScarcestFirst(model), cheapest, cancellation));
        // Where bars run out, short pieces first places more of them.
        yield return FilledBars.Of(model, BestFit.Fill(model, Enumerable.Reverse(longestFirst), StockOrder.ShortestRemnantFirst(model), cancellation));
        if (problem.Lines.Any(line => line.HeatRule == HeatRule.Single))
        {
            var roomy = ModelOf(problem, roomiest: true);
            yield return FilledBars.Of(roomy, BestFit.Fill(roomy, ScarcestFirst(roomy), StockOrder.CheapestFirst(roomy), cancellation));
            yield return FilledBars.Of(roomy, BarFill.Fill(roomy, StockOrder.CheapestFirst(roomy), StockOrder.LeastMillCostPerLength(roomy), ref work, cancellation));
        }
        if (problem.Lines.Select(line => line.Priority).Distinct().Skip(1).Any() || problem.Due.Values.Distinct().Skip(1).Any())
        {
            var ranked = ModelOf(problem, roomiest: false, byPriority: true);
            var mostUrgentFirst = Enumerable.Range(0, ranked.Types.Length).OrderBy(type => ranked.UrgencyOf(ranked.Types[type])).ToList();
            yield return FilledBars.Of(ranked, BestFit.Fill(ranked, mostUrgentFirst, StockOrder.CheapestFirst(ranked), cancellation));
            yield return FilledBars.Of(ranked, BestFit.Fill(ranked, mostUrgentFirst, StockOrder.ShortestRemnantFirst(ranked), cancellation));
        }
        if (problem.Stock.Any(item => item.ForeignPlantCostMicros is not null))
        {
            var local = ModelOf(problem, roomiest: false, fromOwnPlant: true);
            yield return FilledBars.Of(local, BestFit.Fill(local, Enumerable.Range(0, local.Types.Length), StockOrder.CheapestFirst(local), cancellation));
            yield return FilledBars.Of(local, BarFill.Fill(local, StockOrder.CheapestFirst(local), FillLimits[1] * StockOrder.LeastMillCostPerLength(local), ref work, cancellation));
        }
        foreach (var limit in FillLimits)
        {
            foreach (var order in new[] { cheapest, StockOrder.RemnantsLast(model) })
            {
                if (work > FillWork)
                    yield break;
                yield return FilledBars.Of(model, BarFill.Fill(model, order, limit * StockOrder.LeastMillCostPerLength(model), ref work, cancellation));
            }
        }
    }

    private static NestModel ModelOf(NestProblem problem, bool roomiest, bool fromOwnPlant = false, bool byPriority = false)
    {
        var heats = new HeatChoice(problem).Choose(roomiest);
        return NestModel.Of(problem, line => line.HeatRule == HeatRule.Single && !heats.ContainsKey(line.Ref) ? 0 : line.Quantity, heats, fromOwnPlant, byPriority);
    }

    /// <summary>Types that little stock serves come first, the longest of them before the others.</summary>
    private static IEnumerable<int> ScarcestFirst(NestModel model)
    {
        var choices = model.Types.Select(type => type.Need).Distinct()
            .ToDictionary(need => need, need => Enumerable.Range(0, model.Stock.Length).Count(stock => model.NeedServed(need, stock)));
        return Enumerable.Range(0, model.Types.Length).OrderBy(type => choices[model.Types[type].Need]);
    }
}
