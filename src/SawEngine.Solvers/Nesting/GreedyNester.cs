using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Nests by several greedy rules and keeps the best: the most pieces, then the least cost. The first rule always runs, so that a canceled search
/// still has an answer.
/// </summary>
public sealed class GreedyNester : INester
{
    private static readonly decimal[] FillLimits = [1.001m, 1.01m];

    /// <inheritdoc/>
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        Candidate? best = null;
        var canceled = false;
        foreach (var candidate in Candidates(problem, cancellation))
        {
            canceled = cancellation.IsCancellationRequested;
            if (candidate is not null && candidate.IsBetterThan(best))
                best = candidate;
            if (canceled)
                break;
        }
        var (layouts, placed) = LineAssignment.Of(problem, best!.Model, best.Bars);
        return Answer(problem, layouts, placed, canceled);
    }

    private static Nest Answer(NestProblem problem, IReadOnlyList<BarLayout> layouts, IReadOnlyDictionary<PieceRef, int> placed, bool canceled)
    {
        var unplaced = problem.Lines.OrderBy(line => line.Ref)
            .Select(line => (Line: line, Quantity: line.Quantity - placed.GetValueOrDefault(line.Ref)))
            .Where(left => left.Quantity > 0)
            .Select(left => new UnplacedPieces(left.Line.Ref, left.Quantity, UnplacedReasons.Of(problem, left.Line)))
            .ToList();
        var value = layouts.Sum(LayoutCost.Micros);
        var bound = Math.Min(value, NestBound.Micros(problem, placed));
        // With pieces left because bars ran out, more might be placed: a bound on the cost of these pieces proves nothing about that.
        var proved = value == bound && !unplaced.Exists(row => row.Reason is UnplacedReason.StockUsedUp or UnplacedReason.NoSingleHeat);
        return new()
        {
            Layouts = layouts,
            Unplaced = unplaced,
            ValueMicros = value,
            BoundMicros = bound,
            StoppedBy = proved ? StoppedBy.Proof : canceled ? StoppedBy.TimeLimit : StoppedBy.Effort,
        };
    }

    private static IEnumerable<Candidate?> Candidates(NestProblem problem, CancellationToken cancellation)
    {
        var model = Model(problem, roomiest: false);
        yield return Candidate.Of(model, BestFit.Fill(model, LongestFirst(model), ShortestFirst(model), CancellationToken.None));
        yield return Candidate.Of(model, BestFit.Fill(model, LongestFirst(model), CheapestFirst(model), cancellation));
        yield return Candidate.Of(model, BestFit.Fill(model, LongestFirst(model), RemnantsThenCheapest(model), cancellation));
        yield return Candidate.Of(model, BestFit.Fill(model, ScarcestFirst(model), CheapestFirst(model), cancellation));
        yield return Candidate.Of(model, BestFit.Fill(model, ShortestPiecesFirst(model), ShortestFirst(model), cancellation));
        foreach (var limit in FillLimits)
            yield return Candidate.Of(model, BarFill.Fill(model, CheapestFirst(model), limit * CostPerLength(model), cancellation));
        if (!problem.Lines.Any(line => line.HeatRule == HeatRule.Single))
            yield break;
        var roomy = Model(problem, roomiest: true);
        yield return Candidate.Of(roomy, BestFit.Fill(roomy, ScarcestFirst(roomy), CheapestFirst(roomy), cancellation));
        yield return Candidate.Of(roomy, BarFill.Fill(roomy, CheapestFirst(roomy), CostPerLength(roomy), cancellation));
    }

    private static NestModel Model(NestProblem problem, bool roomiest)
    {
        var heats = HeatChoice.Of(problem, roomiest);
        return NestModel.Of(problem, line => line.HeatRule == HeatRule.Single && !heats.ContainsKey(line.Ref) ? 0 : line.Quantity, heats);
    }

    private static IEnumerable<int> LongestFirst(NestModel model) => Enumerable.Range(0, model.Types.Count);

    private static IEnumerable<int> ShortestPiecesFirst(NestModel model) => LongestFirst(model).Reverse();

    /// <summary>Pieces that little stock serves come first.</summary>
    private static IEnumerable<int> ScarcestFirst(NestModel model)
    {
        var choices = model.Types.Select(type => type.Need).Distinct()
            .ToDictionary(need => need, need => Enumerable.Range(0, model.Stock.Count).Count(stock => model.NeedServed(need, stock)));
        return LongestFirst(model).OrderBy(type => choices[model.Types[type].Need]);
    }

    private static IEnumerable<int> AllStock(NestModel model) => Enumerable.Range(0, model.Stock.Count);

    /// <summary>Remnants first, then bars, each from the shortest up.</summary>
    private static IEnumerable<int> ShortestFirst(NestModel model) =>
        AllStock(model).OrderByDescending(stock => model.Stock[stock].Item.Kind == StockKind.Remnant).ThenBy(stock => model.Stock[stock].Usable);

    private static List<int> CheapestFirst(NestModel model) =>
        [.. AllStock(model).Where(stock => model.Stock[stock].Usable > 0).OrderBy(stock => CostPerLength(model.Stock[stock])).ThenByDescending(stock => model.Stock[stock].Usable)];

    private static IEnumerable<int> RemnantsThenCheapest(NestModel model) =>
        CheapestFirst(model).OrderByDescending(stock => model.Stock[stock].Item.Kind == StockKind.Remnant)
            .ThenBy(stock => model.Stock[stock].Item.Kind == StockKind.Remnant ? model.Stock[stock].Usable : 0);

    private static decimal CostPerLength(BarStock stock) => (decimal)stock.Item.CostMicros / stock.Usable;

    /// <summary>Cost per usable length of the cheapest mill length, or of the cheapest stock where there are only remnants.</summary>
    private static decimal CostPerLength(NestModel model)
    {
        var mill = model.Stock.Where(stock => stock.Usable > 0 && stock.Item.Kind != StockKind.Remnant).Select(CostPerLength).ToList();
        return mill.Count > 0 ? mill.Min() : model.Stock.Where(stock => stock.Usable > 0).Select(CostPerLength).DefaultIfEmpty(0m).Min();
    }

    /// <summary>A way to fill bars, with each layout on the cheapest stock that takes it.</summary>
    private sealed record Candidate(NestModel Model, List<OpenBar> Bars, long Pieces, decimal Cost)
    {
        public static Candidate? Of(NestModel model, List<OpenBar>? filled)
        {
            if (filled is null)
                return null;
            var bars = CheaperStock.Move(model, filled);
            var pieces = 0L;
            foreach (var bar in bars)
            {
                for (var run = bar.Last; run is not null; run = run.Before)
                    pieces += (long)run.Count * bar.Bars;
            }
            return new(model, bars, pieces, bars.Sum(bar => (decimal)bar.NetCost(model) * bar.Bars));
        }

        public bool IsBetterThan(Candidate? other) =>
            other is null || Pieces > other.Pieces || (Pieces == other.Pieces && Cost < other.Cost);
    }
}
