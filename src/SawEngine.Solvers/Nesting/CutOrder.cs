namespace SawEngine.Solvers.Nesting;

/// <summary>
/// The order of the cuts within a bar: equal pieces follow each other, so that stop and angles are set once for each, the longest first. Where faces are mitered, also each type next to one
/// with which it loses least, and pieces in turns or all as ordered; the order that costs least is taken.
/// </summary>
internal static class CutOrder
{
    /// <summary>A pass that two faces do not share takes time even where it costs nothing: it decides between equal costs.</summary>
    private const decimal LeastPassCost = 1e-6m;

    /// <summary>Bars with so many pieces of each type; null where the pieces fit in no order that was tried.</summary>
    public static OpenBar? Lay(NestModel model, int stock, int bars, IReadOnlyList<int> counts)
    {
        var runs = new List<(int Type, int Count)>();
        for (var type = 0; type < counts.Count; type++)
        {
            if (counts[type] > 0)
                runs.Add((type, counts[type]));
        }
        return Lay(model, stock, bars, runs);
    }

    /// <summary>Bars with runs of pieces, in their order or in one that costs less; null where the pieces fit in no order that was tried.</summary>
    public static OpenBar? Lay(NestModel model, int stock, int bars, IReadOnlyList<(int Type, int Count)> runs)
    {
        var laid = InOrder(model, OpenBar.Empty(stock, bars), runs);
        if (!runs.Any(run => model.Types[run.Type].IsMitered))
            return laid;
        var chain = Chained(model, runs);
        foreach (var other in new[] { InOrder(model, OpenBar.Empty(stock, bars), chain), InOrder(model, OpenBar.Empty(stock, bars, asOrdered: true), runs) })
        {
            if (other is not null && (laid is null || Cost(model, other) < Cost(model, laid)))
                laid = other;
        }
        return laid;
    }

    /// <summary>The bars in this order where that takes no more, else as they are.</summary>
    public static OpenBar OrAsItIs(NestModel model, OpenBar bar) =>
        Lay(model, bar.Stock, bar.Bars, CountsOf(model, bar)) is { } laid
        && laid.NetCost(model) <= bar.NetCost(model) && UnsharedPasses(model, laid) <= UnsharedPasses(model, bar) ? laid : bar;

    /// <summary>What each bar costs, passes included that its faces do not share; 0 without pieces.</summary>
    public static decimal Cost(NestModel model, OpenBar bar) =>
        bar.Last is null ? 0m : bar.NetCost(model) + UnsharedPasses(model, bar) * Math.Max(LeastPassCost, model.CostPerCutMicros);

    /// <summary>The pieces of each type on each of the bars.</summary>
    public static int[] CountsOf(NestModel model, OpenBar bar)
    {
        var counts = new int[model.Types.Length];
        for (var run = bar.Last; run is not null; run = run.Before)
            counts[run.Type] += run.Count;
        return counts;
    }

    private static OpenBar? InOrder(NestModel model, OpenBar bar, IReadOnlyList<(int Type, int Count)> runs)
    {
        foreach (var (type, count) in runs)
        {
            if (bar.WithIfFitting(model, type, count, bar.Bars) is not { } longer)
                return null;
            bar = longer;
        }
        return bar;
    }

    /// <summary>Each type behind the one whose last face it loses least with, as if all its pieces lay one way.</summary>
    private static List<(int Type, int Count)> Chained(NestModel model, IReadOnlyList<(int Type, int Count)> runs)
    {
        var (left, chain) = (runs.ToList(), new List<(int Type, int Count)>());
        for (var face = 0; left.Count > 0;)
        {
            var (next, way) = left.SelectMany(run => model.Types[run.Type].Ways.Select(way => (Run: run, Way: way))).MinBy(one => model.Gap(face, one.Way.FirstFace));
            chain.Add(next);
            left.Remove(next);
            face = way.SecondFace;
        }
        return chain;
    }

    private static long UnsharedPasses(NestModel model, OpenBar bar)
    {
        var (passes, next) = (0L, -1);
        for (var run = bar.Last; run is not null; run = run.Before)
        {
            var ways = model.Types[run.Type].Ways;
            var (way, other) = (ways[run.Way], ways[run.OtherWay]);
            passes += way.SecondFace == other.FirstFace ? 0 : run.Count / 2;
            passes += other.SecondFace == way.FirstFace ? 0 : (run.Count - 1) / 2;
            passes += next < 0 || ways[run.WayOf(run.Count - 1)].SecondFace == next ? 0 : 1;
            next = way.FirstFace;
        }
        return passes;
    }
}
