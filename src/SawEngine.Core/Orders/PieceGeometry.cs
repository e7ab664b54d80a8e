using SawEngine.Core.Quantities;

namespace SawEngine.Core.Orders;

/// <summary>
/// Lengths of a piece at the points where they matter. With centerline length C, width W, height H and face slopes w1, h1, w2, h2 the edge at (±W/2, ±H/2)
/// is C ± W/2 (tan w2 − tan w1) ± H/2 (tan h2 − tan h1), and overall is C + W/2 (|tan w1| + |tan w2|) + H/2 (|tan h1| + |tan h2|) (plane geometry).
/// Computed lengths are rounded to the safe side on <see cref="Length.ComputedGrid"/>: overall up, short side and centerline down. The length aimed at itself is exact.
/// </summary>
/// <param name="Overall">Distance between the two farthest points along the bar: what the piece takes of it.</param>
/// <param name="ShortSide">Length of the shortest edge of the bounding box: what the saw can hold; negative where the faces cross.</param>
/// <param name="Centerline">Length on the center of the bounding box: what the piece takes of the bar where its neighbors share its cuts.</param>
public readonly record struct PieceGeometry(Length Overall, Length ShortSide, Length Centerline)
{
    /// <summary>The geometry of a line's pieces; a line without a section has no miters.</summary>
    public static PieceGeometry Of(OrderLine line)
    {
        var length = line.AimedLength;
        if (line.FirstEnd.IsSquare && line.SecondEnd.IsSquare)
            return new(length, length, length);
        var section = line.Section ?? throw new ArgumentException("A mitered piece needs a section.", nameof(line));
        var halfWidth = section.Width.ApproximateMillimeters / 2;
        var halfHeight = section.Height.ApproximateMillimeters / 2;
        var (w1, h1) = (line.FirstEnd.WidthAngle.Tangent, line.FirstEnd.HeightAngle.Tangent);
        var (w2, h2) = (line.SecondEnd.WidthAngle.Tangent, line.SecondEnd.HeightAngle.Tangent);
        var overallExcess = halfWidth * (Math.Abs(w1) + Math.Abs(w2)) + halfHeight * (Math.Abs(h1) + Math.Abs(h2));
        var sideExcess = halfWidth * Math.Abs(w2 - w1) + halfHeight * Math.Abs(h2 - h1);
        var fromOrdered = line.LengthAt switch
        {
            LengthAt.Overall => -overallExcess,
            LengthAt.LongSide => -sideExcess,
            LengthAt.ShortSide => sideExcess,
            _ => 0d,
        };
        return new(
            line.LengthAt == LengthAt.Overall ? length : length + Length.RoundUpToGrid(fromOrdered + overallExcess),
            line.LengthAt == LengthAt.ShortSide ? length : length - Length.RoundUpToGrid(sideExcess - fromOrdered),
            line.LengthAt == LengthAt.Centerline ? length : length - Length.RoundUpToGrid(-fromOrdered));
    }
}
