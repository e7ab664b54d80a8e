namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// The order of the cuts within a bar: equal pieces follow each other, so that stop and angles are set once for each, the longest first. Where faces are mitered, also each type next to one
/// with which it loses least; the order that costs less is taken.
/// </summary>
internal static class CutOrder
{
    /// <summary>A pass that two faces do not share takes time even where it costs nothing: it decides between equal costs.</summary>
    private const decimal LeastPassCost = 1e-6m;

    /// <summary>Bars with so many pieces of each type; null where the pieces fit in neither order.</summary>
    public static OpenBar? Lay(NestModel model, int stock, int bars, IReadOnlyList<int> counts)
    {
        var (types, areMitered) = TypesOf(model, counts);
        var laid = InOrder(model, stock, bars, counts, types);
        if (!areMitered)
            return laid;
        var chained = InOrder(model, stock, bars, counts, Chained(model, types));
        return laid is null || (chained is not null && Cost(model, chained) < Cost(model, laid)) ? chained : laid;
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

    private static (List<int> Types, bool AreMitered) TypesOf(NestModel model, IReadOnlyList<int> counts)
    {
        var types = new List<int>();
        var areMitered = false;
        for (var type = 0; type < counts.Count; type++)
        {
            if (counts[type] == 0)
                continue;
            types.Add(type);
            areMitered |= model.Types[type].FirstFace != 0 || model.Types[type].SecondFace != 0;
        }
        return (types, areMitered);
    }

    private static OpenBar? InOrder(NestModel model, int stock, int bars, IReadOnlyList<int> counts, List<int> types)
    {
        var bar = OpenBar.Empty(stock, bars);
        foreach (var type in types)
        {
            if (bar.Fitting(model, model.Types[type]) < counts[type])
                return null;
            bar = bar.With(model, type, counts[type], bars);
        }
        return bar;
    }

    private static List<int> Chained(NestModel model, List<int> types)
    {
        var (left, chain) = (types.ToList(), new List<int>());
        for (var face = 0; left.Count > 0; face = model.Types[chain[^1]].SecondFace)
        {
            chain.Add(left.MinBy(type => model.Gap(face, model.Types[type].FirstFace)));
            left.Remove(chain[^1]);
        }
        return chain;
    }

    private static long UnsharedPasses(NestModel model, OpenBar bar)
    {
        var passes = 0L;
        for (var run = bar.Last; run is not null; run = run.Before)
        {
            var type = model.Types[run.Type];
            passes += type.SecondFace == type.FirstFace ? 0 : run.Count - 1;
            passes += run.Before is null || model.Types[run.Before.Type].SecondFace == type.FirstFace ? 0 : 1;
        }
        return passes;
    }
}
