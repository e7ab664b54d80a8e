using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>The verifier's own shape of a piece: the corners of its two faces, measured at the ordered point. Nanometers.</summary>
/// <param name="IsExact">Whether overall is the length aimed at itself.</param>
/// <param name="OverallBeyondOrder">Overall less the length aimed at.</param>
/// <param name="ShortSideBeyondOrder">Shortest edge less the length aimed at.</param>
internal readonly record struct PieceShape(bool IsExact, double OverallBeyondOrder, double ShortSideBeyondOrder)
{
    public static PieceShape Of(OrderLine line)
    {
        if (line.Section is not { } section || (line.FirstEnd.IsSquare && line.SecondEnd.IsSquare))
            return new(true, 0, 0);
        var (x, y) = (section.Width.Nanometers / 2d, section.Height.Nanometers / 2d);
        (double X, double Y)[] corners = [(-x, -y), (-x, y), (x, -y), (x, y)];
        var first = corners.Select(corner => FaceTrigonometry.OffsetAt(line.FirstEnd, corner.X, corner.Y)).ToArray();
        var second = corners.Select(corner => FaceTrigonometry.OffsetAt(line.SecondEnd, corner.X, corner.Y)).ToArray();
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
        return new(line.LengthAt == LengthAt.Overall, overall - measured, edges.Min() - measured);
    }
}
