using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>The verifier's own shape of a piece: the corners of its two faces, measured at the ordered point. Nanometers.</summary>
/// <param name="OverallIsExact">Whether overall is the length aimed at itself.</param>
/// <param name="CenterlineIsExact">Whether the centerline is the length aimed at itself.</param>
/// <param name="OverallBeyondOrder">Overall less length aimed at.</param>
/// <param name="ShortSideBeyondOrder">Shortest edge less length aimed at.</param>
/// <param name="CenterlineBeyondOrder">Centerline less length aimed at.</param>
internal readonly record struct PieceShape(
    bool OverallIsExact, bool CenterlineIsExact, double OverallBeyondOrder, double ShortSideBeyondOrder, double CenterlineBeyondOrder)
{
    public static PieceShape Of(OrderLine line)
    {
        if (line.Section is not { } section || (line.FirstEnd.IsSquare && line.SecondEnd.IsSquare))
            return new(true, true, 0, 0, 0);
        var first = FaceTrigonometry.OffsetsAtCorners(line.FirstEnd, section);
        var second = FaceTrigonometry.OffsetsAtCorners(line.SecondEnd, section);
        // All relative to the centerline, which is not known yet.
        var edges = first.Zip(second, (start, end) => end - start).ToArray();
        var overall = second.Max() - first.Min();
        var measured = line.LengthAt switch
        {
            LengthAt.Overall => overall,
            LengthAt.LongSide => edges.Max(),
            LengthAt.ShortSide => edges.Min(),
            _ => 0d,
        };
        return new(line.LengthAt == LengthAt.Overall, line.LengthAt == LengthAt.Centerline, overall - measured, edges.Min() - measured, -measured);
    }
}
