using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Afterwards;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Nests by column generation: the linear program over all layouts gives a bound that is a proof, and its layouts are rounded to whole bars and improved.
/// Greedy rules come first, so that a canceled search has an answer.
/// </summary>
public sealed class ColumnNester : INester
{
    /// <summary>Whether layouts are merged and remnants gathered after the search, at no cost; else the nest is what was found.</summary>
    public bool TakesFreeGains { get; init; } = true;

    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation) => Solve(problem, effort, new SearchMeter(cancellation));

    internal Nest Solve(NestProblem problem, Effort effort, SearchMeter meter)
    {
        var cost = LayoutCost.Of(problem);
        var search = SearchEffort.Of(effort);
        var known = GreedyNester.Best(problem, meter);
        try
        {
            known = MorePieces.Place(known, cost, search, meter);
            var placed = LineAssignment.Placed(known.Model, known.Bars);
            var model = known.Model.For(placed);
            var assembly = new NestAssembly(problem, model, placed, AfterwardsEffort.Of(effort), meter);
            if (meter.IsStopped)
                return assembly.Of(known.Bars, NestBound.Micros(problem, placed, meter));
            var (found, bound) = Search(model, known, cost, search, meter);
            bound = model.IsRestricted ? Bound(problem, placed, search, meter) : bound + cost.CostPerCutMicros * model.Pieces;
            var bars = found.IsBetterThan(known) ? found.Bars : known.Bars;
            return TakesFreeGains ? assembly.OfBest(bars, bound) : assembly.Of(bars, bound);
        }
        catch (OverflowException)
        {
            // Lengths and costs at the limits of what can be asked are beyond the numbers of the search: what is known stands.
            var placed = LineAssignment.Placed(known.Model, known.Bars);
            return new NestAssembly(problem, known.Model.For(placed), placed, AfterwardsEffort.Of(effort), meter).Of(known.Bars, NestBound.Micros(problem, placed, meter));
        }
    }

    private static (FilledBars Bars, long Bound) Search(NestModel model, FilledBars known, LayoutCost cost, SearchEffort effort, SearchMeter meter)
    {
        var (bars, bound) = (new List<OpenBar>(), 0L);
        foreach (var (types, stock) in model.Parts())
        {
            var knownBound = NestBound.Micros(model, types, stock, cost, meter);
            if (meter.IsStopped)
            {
                var members = types.ToHashSet();
                bars.AddRange(known.Bars.Where(bar => members.Contains(bar.Last!.Type)));
                bound += knownBound;
                continue;
            }
            var part = new SearchPart(model, types, stock, cost, meter);
            var search = PartSearch.Run(part, [.. part.ColumnsOf(known.Bars)], knownBound, effort, meter);
            bars.AddRange(part.OpenBarsOf(search.Bars));
            bound += search.Bound;
        }
        return (FilledBars.Of(model, bars, meter)!, bound);
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
        foreach (var (types, stock) in model.Parts())
        {
            var knownBound = NestBound.Micros(model, types, stock, cost, meter);
            bound += meter.IsStopped ? knownBound : PartSearch.BoundOf(new(model, types, stock, cost, meter), knownBound, effort, meter);
        }
        return bound;
    }
}
