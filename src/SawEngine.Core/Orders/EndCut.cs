using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Orders;

/// <summary>
/// One end of a piece: the inclination of its face against the plane square to the bar.
/// An angle is positive where the face lies farther along the bar, toward the second end, at the top (<paramref name="HeightAngle"/>)
/// or on the right-hand side looking along the bar from first to second end (<paramref name="WidthAngle"/>).
/// Two facing ends with equal angles are therefore parallel. How a turn of the piece changes its angles: see <see cref="PieceFaces"/>.
/// </summary>
/// <param name="HeightAngle">Angle in the plane of the section's height.</param>
/// <param name="WidthAngle">Angle in the plane of the section's width.</param>
public readonly record struct EndCut(Angle HeightAngle, Angle WidthAngle)
{
    /// <summary>A square end; the default value.</summary>
    public static readonly EndCut Square;

    /// <summary>Whether the face is square to the bar.</summary>
    public bool IsSquare => HeightAngle.Millidegrees == 0 && WidthAngle.Millidegrees == 0;

    /// <summary>Whether the face is inclined in both planes.</summary>
    public bool IsCompound => HeightAngle.Millidegrees != 0 && WidthAngle.Millidegrees != 0;

    /// <summary>How much longer a cut is along the bar than square to itself: sqrt(1 + tan² a + tan² b).</summary>
    internal double AlongBar => Math.Sqrt(1 + HeightAngle.Tangent * HeightAngle.Tangent + WidthAngle.Tangent * WidthAngle.Tangent);

    /// <summary>By how much a blade that is swiveled to the face meets more material than square: 1/cos a of the swivel a, the angle in the plane of the width.</summary>
    internal double SwivelFactor => Math.Sqrt(1 + WidthAngle.Tangent * WidthAngle.Tangent);

    /// <summary>
    /// By how much the travel is longer than square on a saw that swivels and then tilts to the face: 1/cos b, with tan b = tan h cos a of the angle h in the
    /// plane of the height, so that A/(cos a cos b) is the area of the face, A sqrt(1 + tan² a + tan² h).
    /// </summary>
    internal double TiltFactor => AlongBar / SwivelFactor;

    /// <summary>Tangent of the tilt b of a saw that swivels first, tan h cos a.</summary>
    internal double TiltTangent => HeightAngle.Tangent / SwivelFactor;

    /// <summary>Length that a kerf takes along the bar: kerf × sqrt(1 + tan² a + tan² b), rounded up to the computed grid; the kerf itself where square.</summary>
    public Length KerfAlongBar(Length kerf) =>
        IsSquare ? kerf : Length.RoundUpToGrid(kerf.ApproximateMillimeters * AlongBar);

    /// <summary>How much farther along the bar the last point of the face lies than its first: W |tan w| + H |tan h|, rounded down to the computed grid.</summary>
    internal Length ExtentAlongBar(Section section) => -Length.RoundUpToGrid(
        -section.Width.ApproximateMillimeters * WidthAngle.Size.Tangent - section.Height.ApproximateMillimeters * HeightAngle.Size.Tangent);
}
