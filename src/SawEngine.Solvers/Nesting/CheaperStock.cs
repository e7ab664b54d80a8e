namespace SawEngine.Solvers.Nesting;

/// <summary>Moves finished layouts to stock that takes them at less cost, or at the same with fewer pieces from a substitute, the dearest bars first; where canceled, the others stay.</summary>
internal static class CheaperStock
{
    public static List<OpenBar> Move(NestModel model, IReadOnlyList<OpenBar> bars, SearchMeter meter)
    {
        var left = model.Stock.Select(stock => stock.Available).ToArray();
        foreach (var bar in bars)
            left[bar.Stock] -= bar.Bars;
        var byCost = model.Stock.Select((stock, index) => (Index: index, Least: model.LeastCost(stock))).OrderBy(stock => stock.Least).ToList();
        var moved = bars.Select(_ => new List<OpenBar>(1)).ToList();
        foreach (var index in Enumerable.Range(0, bars.Count).OrderByDescending(index => bars[index].NetCost(model)).ThenBy(index => index))
        {
            if (meter.IsCanceled)
                moved[index].Add(bars[index]);
            else
                Move(model, bars[index], left, byCost, moved[index]);
        }
        return [.. moved.SelectMany(parts => parts)];
    }

    private static void Move(NestModel model, OpenBar bar, int[] left, List<(int Index, long Least)> byCost, List<OpenBar> moved)
    {
        var runs = PieceRun.InOrder(bar.Last);
        while (bar.Bars > 0)
        {
            var best = (Bar: bar, Cost: bar.NetCost(model), Substituted: Substituted(model, runs, bar.Stock));
            foreach (var (stock, least) in byCost)
            {
                if (least > best.Cost || (least == best.Cost && best.Substituted == 0))
                    break;
                if (left[stock] == 0 || stock == bar.Stock || Relaid(model, bar, runs, stock) is not { } relaid)
                    continue;
                var (cost, substituted) = (relaid.NetCost(model), Substituted(model, runs, stock));
                if (cost < best.Cost || (cost == best.Cost && substituted < best.Substituted))
                    best = (relaid, cost, substituted);
            }
            var count = best.Bar.Stock == bar.Stock ? bar.Bars : Math.Min(bar.Bars, left[best.Bar.Stock]);
            moved.Add(best.Bar with { Bars = count });
            left[best.Bar.Stock] -= best.Bar.Stock == bar.Stock ? 0 : count;
            left[bar.Stock] += best.Bar.Stock == bar.Stock ? 0 : count;
            bar = bar with { Bars = bar.Bars - count };
        }
    }

    private static int Substituted(NestModel model, List<PieceRun> runs, int stock) => runs.Where(run => model.IsSubstitute(stock, model.Types[run.Type])).Sum(run => run.Count);

    private static OpenBar? Relaid(NestModel model, OpenBar bar, List<PieceRun> runs, int stock)
    {
        var (from, to) = (model.Stock[bar.Stock], model.Stock[stock]);
        var firstFace = model.Types[runs[0].Type].Ways[runs[0].Way].FirstFace;
        var position = bar.Position - model.Lead(from.Class, firstFace) + model.Lead(to.Class, firstFace);
        if (position > to.Length - model.EndNeed(to.Class, bar.Face) || runs.Exists(run => !model.Serves(stock, model.Types[run.Type])))
            return null;
        return bar with { Stock = stock, Position = position, Transfer = runs.Max(run => model.TransferCost(stock, model.Types[run.Type])) };
    }
}
