using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Which bars of a layout may be cut together. They are equal bars of one stock item, so that section, grade and usable length are one. Side by side, a swiveled blade
/// meets each bar later than the one before: such bars are staggered, which suits them only where all faces are alike, and the end behind must be longer by the stagger.
/// On top of one another every cut falls alike.
/// </summary>
public static class LayoutBundles
{
    /// <summary>All bundles of more than one bar in which a layout may be cut as it lies, rows full, by height and then width.</summary>
    public static IEnumerable<CutBundle> Of(BarLayout layout, CutRules rules, Lay lay)
    {
        if (rules.Bundle is not { } clamped || MixesHeats(layout))
            yield break;
        var faces = layout.Cuts.SelectMany(cut => new[] { cut.StartCut, cut.EndCut }).Distinct().ToList();
        for (var high = 1; high <= Math.Min(clamped.MostHigh, layout.Repeat); high++)
        {
            for (var wide = 1; wide <= Math.Min(clamped.MostWide, layout.Repeat / high); wide++)
            {
                if (wide * high > 1 && Suits(layout, faces, rules, lay, CutBundle.Full(wide, high)))
                    yield return CutBundle.Full(wide, high);
            }
        }
    }

    /// <summary>The bundle with which the bars of a layout take fewest cycles, of such the one of fewest bars, then the lower; a single bar where none may be cut together.</summary>
    public static CutBundle FewestCycles(BarLayout layout, CutRules rules) =>
        Lay.AllOf(layout.Stock.Section).SelectMany(lay => Of(layout, rules, lay)).Append(CutBundle.Single)
            .MinBy(bundle => ((layout.Repeat + bundle.Bars - 1) / bundle.Bars, bundle.Bars, bundle.High));

    private static bool MixesHeats(BarLayout layout) => layout.Stock is { Heat: null, Certificate: not Certificate.None };

    private static bool Suits(BarLayout layout, List<EndCut> faces, CutRules rules, Lay lay, CutBundle bundle)
    {
        var section = layout.Stock.Section is { } known ? lay.Of(known) : null;
        return CarriesAll(layout, rules, bundle)
            && faces.TrueForAll(face => lay.Of(face).HeightAngle == Angle.Zero && BundleFit.Obstacle(rules.Bundle, rules.Capacity, section, lay.Of(face), bundle) is null)
            && (bundle.Wide == 1 || faces.TrueForAll(face => face.IsSquare) || (faces.Count == 1 && HoldsStagger(layout, faces[0], rules, bundle)));
    }

    private static bool CarriesAll(BarLayout layout, CutRules rules, CutBundle bundle) =>
        rules.LoadLimit is not { } limit || layout.Stock is not { Section: { } section, Grade: { } grade }
        || grade.Density.Value.MassOf(section.Area, layout.Stock.Length).Kilograms * bundle.Bars <= limit.Kilograms;

    /// <summary>The last bar ends before the first by the stagger, and has to be held, too.</summary>
    private static bool HoldsStagger(BarLayout layout, EndCut face, CutRules rules, CutBundle bundle) =>
        layout.Stock.Section is { } section
        && (rules.Tail <= Length.Zero || layout.Remainder.Length >= rules.Tail + (bundle.Wide - 1) * face.ExtentAlongBar(section));
}
