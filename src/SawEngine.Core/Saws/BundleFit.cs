using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Saws;

/// <summary>
/// Whether a saw clamps a cut bundle safely. Which sections bundle is common practice, no source: with flat sides (squares, flats, square and rectangle tubes)
/// side by side and, under a hold-down, on top of one another; channels and I-beams side by side; what rolls or slips (rounds, round tubes, pipes, hexagons on their flats)
/// side by side under a hold-down. Angles, tees and custom sections are cut singly. A section that is not known is the caller's word.
/// </summary>
public static class BundleFit
{
    /// <summary>The saw clamps no bundle, or not so many bars side by side or on top of one another.</summary>
    public const string TooManyBars = "bundle_exceeds_saw";

    /// <summary>Sections of this shape do not bundle safely, or not on top of one another.</summary>
    public const string SectionNotBundled = "section_not_bundled";

    /// <summary>Bars on top of one another, and those that roll or slip, need a hold-down.</summary>
    public const string NoHoldDown = "bundle_needs_hold_down";

    /// <summary>The bundle is wider or higher than the saw takes at this angle.</summary>
    public const string TooLarge = "bundle_exceeds_capacity";

    /// <summary>The code of what stands in the way of a bundle at one cut; null where nothing does. A swivel takes width by 1/cos a, a tilt height by 1/cos b.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="section">The section as it lies.</param>
    /// <param name="cut">The cut as it lies.</param>
    /// <param name="bundle">The bundle.</param>
    public static string? Obstacle(Saw saw, Section section, EndCut cut, CutBundle bundle) =>
        Obstacle(saw.Bundle, saw.Capacity, section, cut, bundle);

    /// <summary>The same for a saw of some capacities; of a bar by itself nothing is asked. Without a section neither shape nor size is.</summary>
    public static string? Obstacle(BundleCapacity? clamped, SawCapacity? capacity, Section? section, EndCut cut, CutBundle bundle)
    {
        if (bundle.IsSingle)
            return null;
        if (clamped is null || bundle.Wide > clamped.MostWide || bundle.High > clamped.MostHigh)
            return TooManyBars;
        if (section is not null && (bundle.High > MostHigh(section)))
            return SectionNotBundled;
        if (!clamped.HoldDown && (bundle.High > 1 || (section is not null && RollsOrSlips(section))))
            return NoHoldDown;
        return section is null || Holds(clamped, capacity, section, cut, bundle) ? null : TooLarge;
    }

    /// <summary>Most bars of a section that lie on top of one another in a bundle; 0 where it is cut singly.</summary>
    private static int MostHigh(Section section) => section.Shape switch
    {
        SectionShape.Square or SectionShape.Flat or SectionShape.SquareTube or SectionShape.RectangleTube => int.MaxValue,
        SectionShape.Channel or SectionShape.IBeam or SectionShape.Round or SectionShape.RoundTube or SectionShape.Pipe => 1,
        SectionShape.Hexagon => section.Height < section.Width ? 1 : 0,
        _ => 0,
    };

    private static bool RollsOrSlips(Section section) => section.IsRound || section.Shape == SectionShape.Hexagon;

    private static bool Holds(BundleCapacity clamped, SawCapacity? capacity, Section section, EndCut cut, CutBundle bundle)
    {
        var width = section.Width.ApproximateMillimeters * bundle.Wide * cut.SwivelFactor;
        var height = section.Height.ApproximateMillimeters * bundle.High * cut.TiltFactor;
        return width <= Least(clamped.LargestWidth, capacity?.Width) && height <= Least(clamped.LargestHeight, capacity?.Height);
    }

    private static double Least(Length? a, Length? b) => Math.Min(a?.ApproximateMillimeters ?? double.MaxValue, b?.ApproximateMillimeters ?? double.MaxValue) + 1e-6;
}
