using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Nests by column generation: the linear program over all layouts gives a bound that is a proof, and its layouts are rounded to whole bars and improved.
/// Greedy rules come first, so that a canceled search has an answer.
/// </summary>
public sealed class ColumnNester : INester
{
    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation) =>
        Solve(problem, SearchEffort.Of(effort), new(cancellation));

    internal static Nest Solve(NestProblem problem, SearchEffort effort, SearchMeter meter)
    {
        var cost = LayoutCost.Of(problem);
        var known = GreedyNester.Best(problem, meter);
        try
        {
            known = MorePieces.Place(known, cost, effort, meter);
            var (layouts, placed) = LineAssignment.Of(problem, known.Model, known.Bars);
            if (meter.IsStopped)
                return GreedyNester.Answer(problem, layouts, placed, NestBound.Micros(problem, placed, meter), canceled: true);
            var model = known.Model.For(placed);
            var (bars, bound) = Search(model, known, cost, effort, meter);
            if (bars.IsBetterThan(known))
                (layouts, _) = LineAssignment.Of(problem, model, bars.Bars);
            bound = model.IsRestricted ? Bound(problem, placed, effort, meter) : bound + cost.CostPerCutMicros * model.Pieces;
            return GreedyNester.Answer(problem, layouts, placed, bound, meter.IsCanceled);
        }
        catch (OverflowException)
        {
            // Lengths and costs at the limits of what can be asked are beyond the numbers of the search: what is known stands.
            var (layouts, placed) = LineAssignment.Of(problem, known.Model, known.Bars);
            return GreedyNester.Answer(problem, layouts, placed, NestBound.Micros(problem, placed, meter), meter.IsCanceled);
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
