using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Orders;

/// <summary>
/// The two faces of a piece as it lies on the bar. A turn mirrors two of the three directions: a half turn about the vertical leads the point (x, y, z) to
/// (-x, y, -z), so the face z = x tan w + y tan h to z = x tan w - y tan h, and what was last comes first (plane geometry). A turn end for end thus keeps the
/// angles in the plane in which it is made and reverses those in the other; a turn over reverses both.
/// </summary>
/// <param name="Turn">How the piece is turned.</param>
/// <param name="First">The face that comes first along the bar.</param>
/// <param name="Second">The face that comes last.</param>
public readonly record struct PieceFaces(PieceTurn Turn, EndCut First, EndCut Second)
{
    private static readonly PieceTurn[] AsOrdered = [PieceTurn.None];
    private static readonly PieceTurn[] AllTurns = [PieceTurn.None, PieceTurn.EndForEnd, PieceTurn.Over, PieceTurn.EndForEndOver];

    /// <summary>
    /// The ways in which a line's pieces may lie on a bar that comes as ordered, as ordered first; of turns that lead to the same faces the first.
    /// </summary>
    public static IReadOnlyList<PieceFaces> Of(OrderLine line) =>
        line.FirstEnd.IsSquare && line.SecondEnd.IsSquare
            ? [Of(line, PieceTurn.None)]
            : [.. TurnsOf(line.Section).Select(turn => Of(line, turn)).DistinctBy(faces => (faces.First, faces.Second))];

    /// <summary>The faces of a line's pieces in a turn, whether or not the section allows it.</summary>
    public static PieceFaces Of(OrderLine line, PieceTurn turn) => turn switch
    {
        PieceTurn.None => new(turn, line.FirstEnd, line.SecondEnd),
        PieceTurn.EndForEnd => new(turn, WithHeightReversed(line.SecondEnd), WithHeightReversed(line.FirstEnd)),
        PieceTurn.Over => new(turn, WithBothReversed(line.FirstEnd), WithBothReversed(line.SecondEnd)),
        PieceTurn.EndForEndOver => new(turn, WithWidthReversed(line.SecondEnd), WithWidthReversed(line.FirstEnd)),
        _ => throw new ArgumentOutOfRangeException(nameof(turn)),
    };

    /// <summary>
    /// The turns after which a section lies as before: a channel keeps its open side, a tee its flange on top. An angle with equal legs lies as before only
    /// about its diagonal, which brings each miter into the other plane; it is not turned. Nor is a custom section, whatever its outline.
    /// </summary>
    public static IReadOnlyList<PieceTurn> TurnsOf(Section? section) => section?.Shape switch
    {
        null or SectionShape.Angle or SectionShape.Custom => AsOrdered,
        SectionShape.Channel => [PieceTurn.None, PieceTurn.EndForEndOver],
        SectionShape.Tee => [PieceTurn.None, PieceTurn.EndForEnd],
        _ => AllTurns,
    };

    private static EndCut WithHeightReversed(EndCut end) => new(Reversed(end.HeightAngle), end.WidthAngle);

    private static EndCut WithWidthReversed(EndCut end) => new(end.HeightAngle, Reversed(end.WidthAngle));

    private static EndCut WithBothReversed(EndCut end) => new(Reversed(end.HeightAngle), Reversed(end.WidthAngle));

    private static Angle Reversed(Angle angle) => new(-angle.Millidegrees);
}
