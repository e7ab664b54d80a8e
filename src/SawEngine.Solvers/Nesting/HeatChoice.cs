using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>Chooses the heat of each single-heat line before anything is nested; long lines choose first and reserve whole bars.</summary>
internal static class HeatChoice
{
    /// <summary>A heat for each single-heat line that has stock: the cheapest that suffices, or the one with the most room where so asked or where none suffices.</summary>
    public static Dictionary<PieceRef, string> Of(NestProblem problem, bool roomiest)
    {
        var left = problem.Stock.ToDictionary(item => item.StockId, item => item.Quantity ?? int.MaxValue, StringComparer.Ordinal);
        var chosen = new Dictionary<PieceRef, string>();
        var lines = problem.Lines.Where(line => line.HeatRule == HeatRule.Single && CutFit.ReasonAgainst(line, problem.Rules) is null)
            .OrderByDescending(line => (decimal)line.Length.Nanometers * line.Quantity).ThenBy(line => line.Ref);
        foreach (var line in lines)
        {
            var heats = Offers(problem, line).GroupBy(offer => offer.Stock.Heat!, StringComparer.Ordinal)
                .Select(offers => Take([.. offers], line.Quantity, left)).ToList();
            var sufficient = heats.Where(heat => heat.Pieces >= line.Quantity).ToList();
            var best = sufficient.Count > 0 && !roomiest
                ? sufficient.OrderBy(heat => heat.Cost).ThenBy(heat => heat.Heat, StringComparer.Ordinal).First()
                : heats.OrderByDescending(heat => heat.Room).ThenBy(heat => heat.Heat, StringComparer.Ordinal).FirstOrDefault();
            if (best is null)
                continue;
            chosen.Add(line.Ref, best.Heat);
            foreach (var (stockId, bars) in best.Bars)
                left[stockId] -= bars;
        }
        return chosen;
    }

    /// <summary>Whether some heat, were it all for the line, has enough stock for all its pieces.</summary>
    public static bool SomeSuffices(NestProblem problem, OrderLine line) =>
        Offers(problem, line).GroupBy(offer => offer.Stock.Heat!, StringComparer.Ordinal)
            .Any(offers => offers.Sum(offer => (decimal)offer.PerBar * (offer.Stock.Quantity ?? line.Quantity)) >= line.Quantity);

    /// <summary>How many pieces of a line a bar gives.</summary>
    public static long PiecesPerBar(StockItem stock, OrderLine line, CutRules rules)
    {
        var overall = PieceGeometry.Of(line).Overall;
        var room = LayoutPositions.LastEnd(stock, line.SecondEnd, rules) - LayoutPositions.Lead(stock, line.FirstEnd, rules) - overall;
        return room < Length.Zero ? 0 : 1 + room.Nanometers / (overall + LayoutPositions.Between(line.SecondEnd, line.FirstEnd, rules)).Nanometers;
    }

    private static IEnumerable<(StockItem Stock, long PerBar)> Offers(NestProblem problem, OrderLine line) =>
        problem.Stock.Where(item => StockMatch.Serves(line, item) && CutFit.Carries(item, problem.Rules))
            .Select(item => (item, PiecesPerBar(item, line, problem.Rules)))
            .Where(offer => offer.Item2 > 0);

    private static HeatTake Take(List<(StockItem Stock, long PerBar)> offers, int quantity, Dictionary<string, int> left)
    {
        var (pieces, cost, bars) = (0L, 0m, new List<(string, int)>());
        foreach (var (stock, perBar) in offers.OrderBy(offer => (decimal)offer.Stock.CostMicros / offer.PerBar).ThenBy(offer => offer.Stock.StockId, StringComparer.Ordinal))
        {
            var used = (int)Math.Min(left[stock.StockId], (Math.Max(quantity - pieces, 0) + perBar - 1) / perBar);
            pieces += used * perBar;
            cost += (decimal)stock.CostMicros * used;
            bars.Add((stock.StockId, used));
        }
        var room = offers.Sum(offer => (decimal)offer.PerBar * left[offer.Stock.StockId]);
        return new(offers[0].Stock.Heat!, pieces, room, cost, bars);
    }

    private sealed record HeatTake(string Heat, long Pieces, decimal Room, decimal Cost, List<(string StockId, int Bars)> Bars);
}
