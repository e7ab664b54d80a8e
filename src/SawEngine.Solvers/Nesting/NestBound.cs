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
    public static long Micros(NestProblem problem, IReadOnlyDictionary<PieceRef, int> placed) => Micros(problem, placed, null);

    internal static long Micros(NestProblem problem, IReadOnlyDictionary<PieceRef, int> placed, SearchMeter? meter)
    {
        var model = NestModel.Of(problem, line => placed.GetValueOrDefault(line.Ref), new Dictionary<PieceRef, string>());
        var cost = LayoutCost.Of(problem);
        // One pass of the blade for each piece; what the ends of a bar add to that is in the cost of the bars.
        return model.Parts().Sum(part => Micros(model, part.Types, part.Stock, cost, meter)) + cost.CostPerCutMicros * model.Pieces;
    }

    /// <summary>The bound of one part; where canceled, a lower one.</summary>
    internal static long Micros(NestModel model, IEnumerable<int> partTypes, IEnumerable<int> partStock, LayoutCost cost, SearchMeter? meter = null)
    {
        var pieces = new PieceGroup(model, partTypes.Select(type => model.Types[type]));
        var sizes = pieces.Types.GroupBy(model.SizeOf).OrderBy(alike => alike.Key)
            .Select(alike => (alike.Key, alike.Sum(type => (long)type.Demand))).ToList();
        var bars = partStock.Select(item => model.Stock[item]).GroupBy(stock => stock.Kind)
            .Select(alike => BoundBar.Of(model, alike.First(), alike.Sum(stock => (long)stock.Available), pieces, cost))
            .Where(bar => bar.Usable >= bar.LeastUse).ToList();
        return bars.Count > 0 ? new FluidBound(sizes, bars).Micros(meter) : 0;
    }
}
