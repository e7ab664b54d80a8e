using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// A lower bound on the cost of every nest that places given pieces. Pieces and the stock that may serve them fall into parts that share nothing;
/// each part is bounded by itself (see <see cref="FluidBound"/>). Rounding is downward only.
/// </summary>
public static class NestBound
{
    /// <summary>The bound in millionths of the objective's unit, for the pieces placed of each line.</summary>
    public static long Micros(NestProblem problem, IReadOnlyDictionary<PieceRef, int> placed)
    {
        var model = NestModel.Of(problem, line => placed.GetValueOrDefault(line.Ref), new Dictionary<PieceRef, string>());
        var cost = LayoutCost.Of(problem);
        var bound = 0L;
        foreach (var (types, stock) in Parts(model))
        {
            var sizes = types.GroupBy(model.SizeOf).OrderBy(alike => alike.Key)
                .Select(alike => (alike.Key, alike.Sum(type => (long)type.Demand))).ToList();
            var bars = stock.Select(item => BoundBar.Of(model, item, types, cost)).Where(bar => bar.Usable >= bar.LeastUse).ToList();
            if (bars.Count > 0)
                bound += new FluidBound(sizes, bars).Micros();
        }
        // One pass of the blade for each piece; what the ends of a bar add to that is in the cost of the bars.
        return bound + cost.CostPerCutMicros * model.Pieces;
    }

    /// <summary>Types and stock that are linked by who may serve whom.</summary>
    private static IEnumerable<(List<PieceType> Types, List<BarStock> Stock)> Parts(NestModel model)
    {
        var needs = model.Types.Select(type => type.Need).Distinct().Order().ToList();
        var partOf = needs.ToDictionary(need => need, need => need);
        for (var stock = 0; stock < model.Stock.Length; stock++)
        {
            var linked = needs.Where(need => model.NeedServed(need, stock)).Select(need => partOf[need]).ToHashSet();
            if (linked.Count < 2)
                continue;
            var part = linked.Min();
            foreach (var need in needs.Where(need => linked.Contains(partOf[need])))
                partOf[need] = part;
        }
        foreach (var part in needs.GroupBy(need => partOf[need]))
        {
            var members = part.ToHashSet();
            yield return (
                [.. model.Types.Where(type => members.Contains(type.Need))],
                [.. model.Stock.Where((_, stock) => part.Any(need => model.NeedServed(need, stock)))]);
        }
    }
}
