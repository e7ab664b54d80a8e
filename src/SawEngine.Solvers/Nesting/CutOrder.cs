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
    public static OpenBar? Lay(NestModel model, int stock, int bars, IReadOnlyList<int> counts) => Lay(model, stock, bars, RunsOf(counts));

    /// <summary>Bars with runs of pieces, in their order or in one that costs less; null where the pieces fit in no order that was tried.</summary>
    public static OpenBar? Lay(NestModel model, int stock, int bars, IReadOnlyList<(int Type, int Count)> runs)
    {
        OpenBar? best = null;
        foreach (var laid in Orders(model, stock, bars, runs))
        {
            if (best is null || Cost(model, laid) < Cost(model, best))
                best = laid;
        }
        return best;
    }

    /// <summary>Whether a bar takes so many pieces of each type in an order that is tried.</summary>
    public static bool Fits(NestModel model, int stock, IReadOnlyList<int> counts) => Orders(model, stock, 1, RunsOf(counts)).Any();

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

    private static List<(int Type, int Count)> RunsOf(IReadOnlyList<int> counts)
    {
        var runs = new List<(int Type, int Count)>();
        for (var type = 0; type < counts.Count; type++)
        {
            if (counts[type] > 0)
                runs.Add((type, counts[type]));
        }
        return runs;
    }

    /// <summary>The orders in which the pieces fit.</summary>
    private static IEnumerable<OpenBar> Orders(NestModel model, int stock, int bars, IReadOnlyList<(int Type, int Count)> runs)
    {
        var (isMitered, canTurn) = (false, false);
        foreach (var (type, _) in runs)
        {
            isMitered |= model.Types[type].IsMitered;
            canTurn |= model.Types[type].Ways.Length > 1;
        }
        if (isMitered && !model.MayFit(stock, runs))
            yield break;
        if (InOrder(model, OpenBar.Empty(stock, bars), runs) is { } asGiven)
            yield return asGiven;
        if (!isMitered)
            yield break;
        if (Chained(model, runs) is var chain && !chain.SequenceEqual(runs) && InOrder(model, OpenBar.Empty(stock, bars), chain) is { } chained)
            yield return chained;
        if (canTurn && InOrder(model, OpenBar.Empty(stock, bars, asOrdered: true), runs) is { } asOrdered)
            yield return asOrdered;
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
        var (left, chain) = (runs.ToList(), new List<(int Type, int Count)>(runs.Count));
        for (var face = 0; left.Count > 0;)
        {
            var (next, nextFace, leastGap) = (0, 0, long.MaxValue);
            for (var run = 0; run < left.Count; run++)
            {
                foreach (var way in model.Types[left[run].Type].Ways)
                {
                    if (model.Gap(face, way.FirstFace) is var gap && gap < leastGap)
                        (next, nextFace, leastGap) = (run, way.SecondFace, gap);
                }
            }
            chain.Add(left[next]);
            left.RemoveAt(next);
            face = nextFace;
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
