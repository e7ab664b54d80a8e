using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Where greedy rules leave pieces out for want of stock: linear programs for all of them, in which each that is missing has its price, are rounded, and what places
/// more by rank is taken.
/// </summary>
internal static class MorePieces
{
    public static FilledBars Place(FilledBars known, LayoutCost cost, SearchEffort effort, SearchMeter meter)
    {
        if (meter.IsStopped || known.Placed.Sum() >= known.Model.Pieces)
            return known;
        var model = known.Model.For(Placeable(known.Model));
        if (known.Placed.Sum() >= model.Pieces)
            return known;
        foreach (var (types, stock) in model.Parts())
        {
            if (meter.IsStopped || types.TrueForAll(type => known.Placed[type] >= model.Types[type].Demand))
                continue;
            var part = new SearchPart(model, types, stock, cost, meter);
            var members = types.ToHashSet();
            var others = known.Bars.Where(bar => !members.Contains(bar.Last!.Type)).ToList();
            foreach (var columns in PartSearch.Placing(part, [.. part.ColumnsOf(known.Bars)], effort, meter))
            {
                var filled = FilledBars.Of(model, [.. others, .. part.OpenBarsOf(columns)], meter)!;
                if (filled.IsBetterThan(known))
                    known = filled;
            }
        }
        return known;
    }

    /// <summary>The pieces that some bar is long enough for, by line.</summary>
    private static Dictionary<PieceRef, int> Placeable(NestModel model)
    {
        var empty = Enumerable.Range(0, model.Stock.Length).Select(stock => OpenBar.Empty(stock, 1)).ToList();
        return model.Types.Where(type => empty.Exists(bar => bar.Fitting(model, type) > 0))
            .SelectMany(type => type.Lines).ToDictionary(line => line.Line.Ref, line => line.Quantity);
    }
}
