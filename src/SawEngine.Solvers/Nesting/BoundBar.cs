using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>A stock item as bounds see it: what it can give at most, and what it costs at least for what is taken of it.</summary>
internal sealed class BoundBar
{
    private readonly StockItem _item;
    private readonly LayoutCost _cost;
    private readonly long _shared;
    private readonly bool _savesPass;

    private BoundBar(StockItem item, LayoutCost cost, long shared, long costMicros, bool savesPass)
    {
        CostMicros = costMicros;
        _item = item;
        _cost = cost;
        _shared = shared;
        _savesPass = savesPass;
        IsCredited = cost.RemainderOf(item, item.Length).ValueMicros > 0;
    }

    public required long Available { get; init; }

    /// <summary>No pieces of a larger total size lie on one bar.</summary>
    public required long Usable { get; init; }

    /// <summary>The smallest size: a bar that is used gives at least one piece.</summary>
    public required long LeastUse { get; init; }

    /// <summary>The bar, pulling it, and the least that passes at its ends add to one pass for each piece.</summary>
    public long CostMicros { get; }

    /// <summary>Whether every bar of the stock costs this, whatever is cut from it.</summary>
    public bool IsFixed => !IsCredited && !_savesPass;

    /// <summary>What pieces and remainder share: the remainder is no longer than this less the total size taken.</summary>
    public long Shared => _shared;

    /// <summary>Whether any remainder has a value.</summary>
    public bool IsCredited { get; }

    public static BoundBar Of(NestModel model, BarStock stock, long available, PieceGroup pieces, LayoutCost cost)
    {
        var costMicros = stock.Item.CostMicros + stock.Item.PullCostMicros + model.LeastEndCutsCost(stock.Item);
        return new(stock.Item, cost, NestModel.LongestRemainder(stock, pieces), costMicros, cost.CostPerCutMicros > 0 && model.MayEndWithBar(stock.Item))
        {
            Available = available,
            Usable = NestModel.Usable(stock, pieces),
            LeastUse = pieces.LeastSize,
        };
    }

    /// <summary>The least cost of a bar from which a total size is taken.</summary>
    public long LeastCost(long use) => CostMicros - ValueOf(use);

    /// <summary>The least cost per measure of what is taken, over all that may be taken; null where no use has a measure.</summary>
    public decimal? LeastRate(SizeFunction function)
    {
        if (!IsCredited && CostMicros >= 0)
            return function.Of(Usable) is var most and > 0 ? (decimal)CostMicros / most : null;
        decimal? least = null;
        foreach (var (from, to) in Stretches())
        {
            foreach (var use in function.Candidates(from, to))
            {
                if (function.Of(use) is not (var measure and > 0))
                    continue;
                // On a stretch that grows the value is taken unrounded: less than a millionth above the rounded one.
                var value = ValueOf(use);
                var rounding = value > 0 && !function.IsFlatAt(use) ? 1 : 0;
                var rate = ((decimal)CostMicros - value - rounding) / measure;
                if (least is null || rate < least)
                    least = rate;
            }
        }
        return least;
    }

    private long ValueOf(long use) => _cost.RemainderOf(_item, Length.FromNanometers(Math.Max(0, _shared - use))).ValueMicros;

    /// <summary>
    /// Stretches of use on which the remainder's unrounded value is convex, so that the rate is least at an end: each class of remnants, scrap, and nothing left.
    /// </summary>
    private IEnumerable<(long From, long To)> Stretches()
    {
        var from = LeastUse;
        foreach (var last in ClassesFromTheLongest().Append(_shared).Append(Usable))
        {
            var to = Math.Min(last, Usable);
            if (to < from)
                continue;
            yield return (from, to);
            from = to + 1;
        }
    }

    /// <summary>The most use that leaves a remnant of each class.</summary>
    private IEnumerable<long> ClassesFromTheLongest() => _cost.Remnants is { } rules
        ? rules.Classes.Reverse().Select(one => one.From).Append(rules.KeepFrom).Select(from => _shared - from.Nanometers)
        : [];
}
