using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Nesting;

/// <summary>A face of a piece with what it takes and how far it slopes along a bar, so that many pairs of faces can be compared quickly.</summary>
public readonly record struct FaceOnBar
{
    private readonly double _acrossWidth;
    private readonly double _acrossHeight;

    private FaceOnBar(EndCut cut, Length kerf, double acrossWidth, double acrossHeight) =>
        (Cut, Kerf, _acrossWidth, _acrossHeight) = (cut, kerf, acrossWidth, acrossHeight);

    /// <summary>The inclination of the face.</summary>
    public EndCut Cut { get; }

    /// <summary>The kerf along the bar (see <see cref="EndCut.KerfAlongBar"/>).</summary>
    public Length Kerf { get; }

    /// <summary>A face through a section; without one it is not taken to slope along the bar.</summary>
    public static FaceOnBar Of(EndCut cut, Section? section, CutRules rules) => section is null
        ? new(cut, cut.KerfAlongBar(rules.Kerf), 0, 0)
        : new(cut, cut.KerfAlongBar(rules.Kerf), section.Width.ApproximateMillimeters * cut.WidthAngle.Tangent, section.Height.ApproximateMillimeters * cut.HeightAngle.Tangent);

    /// <summary>
    /// How far this face and the next piece's face overlap along the bar where they meet in one point of the bounding box: in each plane in which both incline to
    /// the same hand the extent of the less inclined; rounded down to the computed grid. It is the extent itself where they are parallel (plane geometry).
    /// </summary>
    internal Length OverlapAlongBar(FaceOnBar next) =>
        -Length.RoundUpToGrid(-Shared(_acrossWidth, next._acrossWidth) - Shared(_acrossHeight, next._acrossHeight));

    private static double Shared(double slope, double next) =>
        Math.Sign(slope) == Math.Sign(next) ? Math.Min(Math.Abs(slope), Math.Abs(next)) : 0;
}
