using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>Dimensions that are each in range and still make no section together. Radii that do not fit are found by <see cref="Contour"/>.</summary>
internal static class Proportions
{
    public static IReadOnlyList<SectionFault> Faults(SectionDimensions d) => d.Shape switch
    {
        SectionShape.RoundTube or SectionShape.Pipe => TooLarge("wall", 2 * d.Wall!.Value >= d.Diameter, "The wall is half the diameter or more."),
        SectionShape.SquareTube or SectionShape.RectangleTube => TubeFaults(d),
        SectionShape.Angle => TooLarge("thickness", d.Thickness >= Length.Min(d.Height!.Value, d.Width!.Value), "The thickness is no less than a leg."),
        SectionShape.Channel => ChannelFaults(d),
        SectionShape.IBeam =>
        [
            .. TooLarge("web", d.Web >= d.Width, "The web is no less than the width."),
            .. TooLarge("flange", 2 * d.Flange!.Value >= d.Height, "The flanges are half the height or more."),
        ],
        SectionShape.Tee =>
        [
            .. TooLarge("web", d.Web >= d.Width, "The web is no less than the width."),
            .. TooLarge("flange", d.Flange >= d.Height, "The flange is no less than the height."),
        ],
        SectionShape.Custom => Polygon.Faults(d.Outline!),
        _ => [],
    };

    private static SectionFault[] TubeFaults(SectionDimensions d)
    {
        if (2 * d.Wall!.Value >= Length.Min(d.Height ?? d.Width!.Value, d.Width!.Value))
            return TooLarge("wall", true, "The wall is half the smaller side or more.");
        var radii = TubeRadii.Of(d);
        // On the diagonal of a corner the outer arc comes in by (1 - 1/sqrt 2) of its radius, the inner one by as much of its own.
        var cornerWall = d.Wall.Value.ApproximateMillimeters
            - (radii.Outer - radii.Inner).ApproximateMillimeters * (1 - Math.Sqrt(0.5));
        return cornerWall > Outline.Tolerance
            ? []
            : TooLarge("outerRadius", true, "The outer radius is so much larger than the inner one that no wall is left in the corner.");
    }

    private static List<SectionFault> ChannelFaults(SectionDimensions d)
    {
        List<SectionFault> faults = [.. TooLarge("web", d.Web >= d.Width, "The web is no less than the width.")];
        faults.AddRange(TooLarge("flange", 2 * d.Flange!.Value >= d.Height, "The flanges are half the height or more."));
        if (d.FlangeAt is not null && d.FlangeSlope is null)
            faults.Add(new("flangeAt", "not_used_by_shape", "flangeAt has a meaning only with flangeSlope."));
        faults.AddRange(TooLarge("flangeAt", d.FlangeAt > d.Width, "flangeAt is more than the width."));
        if (faults.Count > 0 || d.FlangeSlope is null)
            return faults;
        var flange = FlangeTaper.Of(d);
        return
        [
            .. TooLarge("flangeSlope", flange.AtToe <= Outline.Tolerance, "With this slope nothing is left of the flange at its toe."),
            .. TooLarge("flangeSlope", 2 * flange.AtWeb >= d.Height!.Value.ApproximateMillimeters - Outline.Tolerance, "With this slope the flanges meet at the web."),
        ];
    }

    private static SectionFault[] TooLarge(string member, bool isTooLarge, string detail) =>
        isTooLarge ? [new(member, "too_large", detail)] : [];
}
