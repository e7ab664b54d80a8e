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
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var meter = new SearchMeter(cancellation);
        var cost = LayoutCost.Of(problem);
        var greedy = GreedyNester.Best(problem, cancellation, out _);
        var (layouts, placed) = LineAssignment.Of(problem, greedy.Model, greedy.Bars);
        var model = greedy.Model.For(placed);
        var (bars, bound) = (new List<OpenBar>(), 0L);
        foreach (var part in SearchPart.Of(model, cost))
        {
            var search = PartSearch.Run(part, [.. part.ColumnsOf(greedy.Bars)], NestBound.Micros(model, part.Types, part.Stock, cost), SearchEffort.Of(effort), meter);
            bars.AddRange(part.OpenBarsOf(search.Bars));
            bound += search.Bound;
        }
        var searched = FilledBars.Of(model, bars)!;
        if (searched.IsBetterThan(greedy))
            (layouts, _) = LineAssignment.Of(problem, model, searched.Bars);
        if (model.IsRestricted)
            return GreedyNester.Answer(problem, layouts, placed, Bound(problem, placed, SearchEffort.Of(effort), meter), meter.IsCanceled);
        return GreedyNester.Answer(problem, layouts, placed, bound + cost.CostPerCutMicros * model.Pieces, meter.IsCanceled);
    }

    /// <inheritdoc/>
    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) =>
        Bound(problem, problem.Lines.ToDictionary(line => line.Ref, line => line.Quantity), SearchEffort.Of(effort), new(cancellation));

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
