using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Saws;

/// <summary>Whether a saw can hold a section as it lies and reach the angle of a cut.</summary>
public static class SawFit
{
    /// <summary>What floating point may lose.</summary>
    private const double Noise = 1e-12;

    /// <summary>The cut is inclined in both planes, which a saw that only swivels cannot do.</summary>
    public const string CompoundMiter = "compound_miter_not_possible";

    /// <summary>The cut is inclined in the plane of the height as the section lies; it has to be turned a quarter.</summary>
    public const string MiterPlane = "miter_plane_not_cut";

    /// <summary>The saw does not swivel, or tilt, so far to this side.</summary>
    public const string MiterRange = "miter_beyond_saw";

    /// <summary>The section is larger than the saw's capacity at this angle.</summary>
    public const string Capacity = "section_exceeds_capacity";

    /// <summary>
    /// The code of what stands in the way; null where nothing does. A swivel by a takes capacity by 1/cos a of the width, a tilt by b 1/cos b of the height.
    /// </summary>
    public static string? Obstacle(Saw saw, Section section, EndCut cut) => Obstacle(saw.Capacity, saw.MiterRange, section, cut);

    /// <summary>The code of what stands in the way of a saw of some capacity, swivel and tilt; null where nothing does.</summary>
    public static string? Obstacle(SawCapacity capacity, MiterRange? range, Section section, EndCut cut)
    {
        if (cut.HeightAngle != Angle.Zero && range is not { Tilts: true })
            return cut.IsCompound ? CompoundMiter : MiterPlane;
        if (!Swivels(range, cut.WidthAngle) || !Tilts(range, cut))
            return MiterRange;
        return Holds(capacity, section, cut) ? null : Capacity;
    }

    private static bool Swivels(MiterRange? range, Angle angle)
    {
        if (angle == Angle.Zero)
            return true;
        var side = angle.Millidegrees > 0 ? range?.Right : range?.Left;
        return side is { } largest && angle.Size.Millidegrees <= largest.Millidegrees && angle.Size.Millidegrees < 90_000;
    }

    private static bool Tilts(MiterRange? range, EndCut cut)
    {
        if (cut.HeightAngle == Angle.Zero)
            return true;
        var side = cut.HeightAngle.Millidegrees > 0 ? range?.TiltToSecondEnd : range?.TiltToFirstEnd;
        return side is { } largest && Math.Abs(cut.TiltTangent) <= largest.Tangent * (1 + Noise) && cut.HeightAngle.Size.Millidegrees < 90_000;
    }

    private static bool Holds(SawCapacity capacity, Section section, EndCut cut) => section.IsRound
        ? Spans(capacity.Round, section.Width, cut.SwivelFactor) && Spans(capacity.Round, section.Height, cut.TiltFactor)
        : Spans(capacity.Height, section.Height, cut.TiltFactor) && Spans(capacity.Width, section.Width, cut.SwivelFactor);

    private static bool Spans(Length capacity, Length size, double factor) => factor <= 1 + Noise
        ? size <= capacity
        : size.ApproximateMillimeters * factor <= capacity.ApproximateMillimeters + 1e-6;
}
