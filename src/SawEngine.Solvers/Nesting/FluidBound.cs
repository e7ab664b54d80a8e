namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Lower bounds on the cost of bars that hold pieces of given sizes. For a superadditive function of size, the pieces' measure is poured over the bars, those of least
/// cost per measure first; with size itself this is the volume bound (L1), with <see cref="SizeFunction.LargeOrSmall"/> and
/// <see cref="SizeFunction.WholeUnits"/> it knows that large pieces do not share a bar (L2). The same functions count bars, which cost at least as much as the cheapest.
/// </summary>
internal sealed class FluidBound(IReadOnlyList<(long Size, long Count)> sizes, IReadOnlyList<BoundBar> bars)
{
    private const int FunctionsTimesBars = 4_000;
    private const int MostFunctionsOfAKind = 64;
    // A unit is no smaller a part of the longest bar than this, so that no bound looks at more than a few hundred sizes of a bar.
    private const int MostUnitsPerBar = 64;

    /// <summary>No set of bars that holds the pieces costs less; fewer functions are tried where canceled.</summary>
    public long Micros(SearchMeter? meter)
    {
        var bound = Poured(new SizeFunction.Identity());
        if (bars.All(bar => bar.LeastCost(bar.LeastUse) >= 0))
        {
            var barsNeeded = 0m;
            foreach (var function in Functions())
            {
                if (meter is { IsCanceled: true })
                    break;
                bound = Math.Max(bound, Poured(function));
                barsNeeded = Math.Max(barsNeeded, BarsNeeded(function));
            }
            bound = Math.Max(bound, CheapestBars(barsNeeded));
        }
        return new CostGrid(bars.Select(bar => (bar.CostMicros, bar.IsFixed))).RoundUp((double)bound);
    }

    private IEnumerable<SizeFunction> Functions()
    {
        var longest = bars.Max(bar => bar.Usable);
        var most = Math.Clamp(FunctionsTimesBars / bars.Count, 4, MostFunctionsOfAKind);
        foreach (var (size, _) in Sample([.. sizes.Where(piece => piece.Size <= longest / 2)], most))
            yield return new SizeFunction.LargeOrSmall(longest, size);
        foreach (var (size, _) in Sample([.. sizes.Where(piece => piece.Size >= longest / MostUnitsPerBar)], most))
            yield return new SizeFunction.WholeUnits(size, 1, 0);
        foreach (var usable in Sample([.. bars.Select(bar => bar.Usable).Where(usable => usable >= longest / MostUnitsPerBar).Distinct().OrderDescending()], most / 4))
        {
            for (var inBar = 1; inBar <= 4; inBar++)
                yield return new SizeFunction.WholeUnits(usable, inBar + 1, 1);
        }
    }

    private static IEnumerable<T> Sample<T>(IReadOnlyList<T> values, int most) =>
        Enumerable.Range(0, Math.Min(values.Count, most)).Select(i => values[(int)((long)i * values.Count / Math.Min(values.Count, most))]);

    /// <summary>The cost of pouring the pieces' measure over the bars.</summary>
    private decimal Poured(SizeFunction function)
    {
        var left = Measure(function);
        var cost = 0m;
        foreach (var (rate, room) in bars.Select(bar => (Rate: bar.LeastRate(function), Room: Room(bar, function)))
            .Where(bar => bar.Rate is not null && bar.Room > 0).OrderBy(bar => bar.Rate))
        {
            var poured = Math.Min(left, room);
            cost += poured * rate!.Value;
            left -= poured;
            if (left == 0)
                break;
        }
        return cost;
    }

    private decimal BarsNeeded(SizeFunction function)
    {
        var left = Measure(function);
        var needed = 0m;
        foreach (var bar in bars.Where(bar => function.Of(bar.Usable) > 0).OrderByDescending(bar => bar.Usable))
        {
            var used = Math.Min(bar.Available, decimal.Ceiling(left / function.Of(bar.Usable)));
            needed += used;
            left -= used * function.Of(bar.Usable);
            if (left <= 0)
                break;
        }
        return needed;
    }

    private decimal CheapestBars(decimal count)
    {
        var cost = 0m;
        foreach (var (least, available) in bars.Select(bar => (Least: bar.LeastCost(bar.LeastUse), bar.Available)).OrderBy(bar => bar.Least))
        {
            var used = Math.Min(count, available);
            cost += used * least;
            count -= used;
        }
        return cost;
    }

    private decimal Measure(SizeFunction function) => sizes.Sum(piece => (decimal)function.Of(piece.Size) * piece.Count);

    private static decimal Room(BoundBar bar, SizeFunction function) => (decimal)bar.Available * function.Of(bar.Usable);
}
