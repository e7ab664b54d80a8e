
namespace SawEngine.Core.Nesting;

/// <summary>
/// Holds a nest to the most remnants of a grade that it may leave. Those stay remnants that gain most over their scrap; of equal gain, those that come first.
/// A layout of which only some bars keep their remainder becomes two.
/// </summary>
public static class RemnantLimit
{
    /// <summary>Code of the warning that remainders are scrap only because of the limit.</summary>
    public const string Reached = "remnant_limit_reached";

    /// <summary>The layouts in their order, with no more remnants than the rules allow.</summary>
    public static IReadOnlyList<BarLayout> Apply(IReadOnlyList<BarLayout> layouts, LayoutCost cost)
    {
        if (cost.Remnants?.MostNew is not { } most || NewRemnants(layouts) <= most)
            return layouts;
        var kept = new int[layouts.Count];
        foreach (var ofGrade in Enumerable.Range(0, layouts.Count).Where(index => IsNew(layouts[index])).GroupBy(index => layouts[index].Stock.Grade))
        {
            var left = most;
            foreach (var index in ofGrade.OrderByDescending(index => layouts[index].Remainder.ValueMicros - Scrapped(layouts[index], cost).Remainder.ValueMicros))
            {
                kept[index] = Math.Min(left, layouts[index].Repeat);
                left -= kept[index];
            }
        }
        return layouts.SelectMany((layout, index) => Split(layout, kept[index], cost)).ToList();
    }

    /// <summary>How many remnants layouts leave; what holds a reserved zone is kept already, and does not count.</summary>
    public static long NewRemnants(IEnumerable<BarLayout> layouts) =>
        layouts.Where(IsNew).Sum(layout => (long)layout.Repeat);

    /// <summary>How many remainders are scrap only because of the limit.</summary>
    public static long NotKept(IEnumerable<BarLayout> layouts, LayoutCost cost) =>
        layouts.Where(layout => layout.Remainder.Kind == RemainderKind.Scrap && cost.IsKept(layout.Remainder.Length)).Sum(layout => (long)layout.Repeat);

    private static bool IsNew(BarLayout layout) => layout.Remainder.Kind == RemainderKind.Remnant && !layout.Stock.HasReservedZone;

    private static IEnumerable<BarLayout> Split(BarLayout layout, int kept, LayoutCost cost)
    {
        if (!IsNew(layout) || kept == layout.Repeat)
            return [layout];
        var scrapped = Scrapped(layout, cost) with { Repeat = layout.Repeat - kept };
        return kept == 0 ? [scrapped] : [layout with { Repeat = kept }, scrapped];
    }

    private static BarLayout Scrapped(BarLayout layout, LayoutCost cost) =>
        layout with { Remainder = cost.ScrapOf(layout.Stock, layout.Remainder.Length) };
}
