using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>
/// Which long remainders of an edited nest are kept where no more than some may be: those of which the edit says so; of those of which it says nothing, the ones
/// that gain most over their scrap, as far as there is room. All bars of a layout are kept, or none.
/// </summary>
/// <param name="most">How many may be kept.</param>
/// <param name="cost">What they are worth.</param>
internal sealed class EditedRemnants(int most, LayoutCost cost)
{
    /// <summary>Layouts of one material, each with what the edit says of its remainder, in their order with what becomes of it.</summary>
    public IReadOnlyList<BarLayout> Kept(IReadOnlyList<(BarLayout Layout, RemainderKind? Stated)> layouts)
    {
        var kept = layouts.Select(row => row.Stated == RemainderKind.Scrap ? Scrapped(row.Layout) : row.Layout).ToList();
        var left = most - RemnantLimit.NewRemnants(layouts.Where(row => row.Stated == RemainderKind.Remnant).Select(row => row.Layout));
        foreach (var i in Enumerable.Range(0, layouts.Count).Where(i => layouts[i].Stated is null).OrderByDescending(i => Gain(kept[i])))
        {
            var remnants = RemnantLimit.NewRemnants([kept[i]]);
            if (remnants <= left)
                left -= remnants;
            else
                kept[i] = Scrapped(kept[i]);
        }
        return kept;
    }

    private long Gain(BarLayout layout) => layout.Remainder.ValueMicros - Scrapped(layout).Remainder.ValueMicros;

    /// <summary>What holds a reserved zone is kept whatever the edit says.</summary>
    private BarLayout Scrapped(BarLayout layout) =>
        RemnantLimit.NewRemnants([layout]) > 0 ? layout with { Remainder = cost.ScrapOf(layout.Stock, layout.Remainder.Length) } : layout;
}
