using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Nesting;

/// <summary>The verifier's own trigonometry of inclined faces, in nanometers.</summary>
internal static class FaceTrigonometry
{
    public static double Cosine(double millidegrees) => Math.Cos(Radians(millidegrees));

    /// <summary>
    /// How far a face lies along the bar at a point of the section: the plane through the axis whose traces rise by the angles.
    /// </summary>
    public static double OffsetAt(EndCut face, double x, double y) =>
        x * Slope(face.WidthAngle.Millidegrees) + y * Slope(face.HeightAngle.Millidegrees);

    /// <summary>How far a face lies along the bar at each corner of a section's bounding box, from its center.</summary>
    public static double[] OffsetsAtCorners(EndCut face, Section section)
    {
        var (x, y) = (section.Width.Nanometers / 2d, section.Height.Nanometers / 2d);
        return [OffsetAt(face, -x, -y), OffsetAt(face, -x, y), OffsetAt(face, x, -y), OffsetAt(face, x, y)];
    }

    /// <summary>Kerf along the bar: the kerf over the cosine between the bar's axis and the normal of the face.</summary>
    public static double AlongBar(EndCut face, Length kerf)
    {
        var (cosW, cosH) = (Cosine(face.WidthAngle.Millidegrees), Cosine(face.HeightAngle.Millidegrees));
        var acrossWidth = Math.Sin(Radians(face.WidthAngle.Millidegrees)) * cosH;
        var acrossHeight = Math.Sin(Radians(face.HeightAngle.Millidegrees)) * cosW;
        var along = cosW * cosH;
        return face.IsSquare ? kerf.Nanometers : kerf.Nanometers * Math.Sqrt(acrossWidth * acrossWidth + acrossHeight * acrossHeight + along * along) / along;
    }

    /// <summary>How far a saw tilts that has swiveled by the one angle, for a trace that rises by the other, in thousandths of a degree.</summary>
    public static double Tilt(int swivel, int trace) => Math.Atan(Slope(trace) * Cosine(swivel)) / Math.PI * 180_000d;

    private static double Slope(int millidegrees) => Math.Sin(Radians(millidegrees)) / Cosine(millidegrees);

    private static double Radians(double millidegrees) => millidegrees / 1000d / 180d * Math.PI;
}
