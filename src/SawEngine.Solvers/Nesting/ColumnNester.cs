using SawEngine.Core;
using SawEngine.Core.Nesting;
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
        var greedy = GreedyNester.Best(problem, cancellation, out _);
        var (layouts, placed) = LineAssignment.Of(problem, greedy.Model, greedy.Bars);
        var model = greedy.Model.For(placed);
        var bars = new List<OpenBar>();
        var bound = 0L;
        foreach (var part in SearchPart.Of(model, LayoutCost.Of(problem)))
        {
            var search = PartSearch.Run(part, [.. part.ColumnsOf(greedy.Bars)], NestBound.Micros(model, part.Types, part.Stock, LayoutCost.Of(problem)), SearchEffort.Of(effort), meter);
            bars.AddRange(part.OpenBarsOf(search.Bars));
            bound += search.Bound;
        }
        if (FilledBars.Of(model, bars)!.IsBetterThan(greedy))
            (layouts, placed) = LineAssignment.Of(problem, model, FilledBars.Of(model, bars)!.Bars);
        if (problem.Lines.Any(line => line.HeatRule == Core.Orders.HeatRule.Single))
            bound = NestBound.Micros(problem, placed);
        return GreedyNester.Answer(problem, layouts, placed, bound, meter.IsCanceled);
    }
}
