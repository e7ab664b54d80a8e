using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// Corner radii of a square or rectangle tube. Where they are not given the corner is bent to twice the wall outside and once the wall inside:
/// common practice, and the rule by which the published areas of EN 10219-2 (to 6 mm) and ASTM A500 are reproduced.
/// </summary>
internal readonly record struct TubeRadii(Length Outer, Length Inner)
{
    public static TubeRadii Of(SectionDimensions d)
    {
        var wall = d.Wall!.Value;
        var halfSide = Length.FromNanometers(Length.Min(d.Height ?? d.Width!.Value, d.Width!.Value).Nanometers / 2);
        var outer = d.OuterRadius ?? (d.InnerRadius is { } given ? given + wall : Length.Min(2 * wall, halfSide));
        return new(outer, d.InnerRadius ?? Length.Max(outer - wall, Length.Zero));
    }

    public static bool AreAssumed(SectionDimensions d) =>
        d.Shape is SectionShape.SquareTube or SectionShape.RectangleTube && (d.OuterRadius is null || d.InnerRadius is null);
}
