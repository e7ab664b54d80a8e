using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Afterwards;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Nests by column generation: the linear program over all layouts gives a bound that is a proof, and its layouts are rounded to whole bars and improved.
/// Greedy rules come first, so that a canceled search has an assembly.
/// </summary>
public sealed class ColumnNester : INester
{
    /// <summary>Whether layouts are merged and remnants gathered after the search, at no cost; else the nest is what was found.</summary>
    public bool TakesFreeGains { get; init; } = true;

    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var meter = new SearchMeter(cancellation);
        var cost = LayoutCost.Of(problem);
        var greedy = GreedyNester.Best(problem, cancellation);
        var placed = LineAssignment.Placed(greedy.Model, greedy.Bars);
        var model = greedy.Model.For(placed);
        var assembly = new NestAssembly(problem, model, placed, AfterwardsEffort.Of(effort), cancellation);
        try
        {
            var (found, bound) = Search(model, greedy, cost, SearchEffort.Of(effort), meter);
            bound = model.IsRestricted ? Bound(problem, placed, SearchEffort.Of(effort), meter) : bound + cost.CostPerCutMicros * model.Pieces;
            var bars = found.IsBetterThan(greedy) ? found.Bars : greedy.Bars;
            return TakesFreeGains ? assembly.OfBest(bars, bound) : assembly.Of(bars, bound);
        }
        catch (OverflowException)
        {
            // Lengths and costs at the limits of what can be asked are beyond the numbers of the search: the greedy nest stands.
            return assembly.Of(greedy.Bars, NestBound.Micros(problem, placed));
        }
    }

    private static (FilledBars Bars, long Bound) Search(NestModel model, FilledBars greedy, LayoutCost cost, SearchEffort effort, SearchMeter meter)
    {
        var (bars, bound) = (new List<OpenBar>(), 0L);
        foreach (var part in SearchPart.Of(model, cost))
        {
            var search = PartSearch.Run(part, [.. part.ColumnsOf(greedy.Bars)], NestBound.Micros(model, part.Types, part.Stock, cost), effort, meter);
            bars.AddRange(part.OpenBarsOf(search.Bars));
            bound += search.Bound;
        }
        return (FilledBars.Of(model, bars)!, bound);
    }

    /// <inheritdoc/>
    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var all = problem.Lines.ToDictionary(line => line.Ref, line => line.Quantity);
        try
        {
            return Bound(problem, all, SearchEffort.Of(effort), new(cancellation));
        }
        catch (OverflowException)
        {
            return NestBound.Micros(problem, all);
        }
    }

    /// <summary>The bound where heats are not chosen yet and every plant serves.</summary>
    private static long Bound(NestProblem problem, Dictionary<PieceRef, int> placed, SearchEffort effort, SearchMeter meter)
    {
        var cost = LayoutCost.Of(problem);
        var model = NestModel.Of(problem, line => placed.GetValueOrDefault(line.Ref), new Dictionary<PieceRef, string>());
        var bound = cost.CostPerCutMicros * model.Pieces;
        foreach (var part in SearchPart.Of(model, cost))
            bound += PartSearch.BoundOf(part, NestBound.Micros(model, part.Types, part.Stock, cost), effort, meter);
        return bound;
    }
}
