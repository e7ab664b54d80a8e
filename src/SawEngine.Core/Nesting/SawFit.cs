using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// What a saw can hold and cut. A bar lies as it is, or turned a quarter clockwise seen from first to second end, so that its top comes to the right
/// and a miter in the plane of its height becomes one of equal hand in the plane of the width; it lies one way for all its cuts.
/// A miter of angle a makes the width W / cos a (plane geometry).
/// </summary>
public static class SawFit
{
    /// <summary>The planes in which the ends of a line's pieces are inclined.</summary>
    public static MiterPlane PlaneOf(OrderLine line) => PlaneOf(line.FirstEnd) | PlaneOf(line.SecondEnd);

    /// <summary>Why no saw under the rules can cut a line's pieces: a code of <see cref="UnplacedReason"/>; null where it can.</summary>
    public static string? ReasonAgainst(OrderLine line, CutRules rules)
    {
        if (rules.Capacity is { } capacity && line.Section is { } section)
        {
            if (!Holds(section, capacity))
                return UnplacedReason.NoSawHoldsSection;
            if (!CutsMiters(line, section, capacity, rules.MiterRange))
                return UnplacedReason.NoSawCutsMiter;
        }
        var geometry = PieceGeometry.Of(line);
        if (geometry.ShortSide < Length.Max(rules.ShortestPiece, Length.Zero))
            return UnplacedReason.PieceTooShort;
        return rules.LongestPiece is { } longest && geometry.Overall > longest ? UnplacedReason.PieceTooLong : null;
    }

    /// <summary>Whether a saw holds a section for a square cut.</summary>
    public static bool Holds(Section section, SawCapacity capacity) =>
        section.IsRound
            ? Length.Max(section.Width, section.Height) <= capacity.Round
            : Lies(section.Width, section.Height, capacity) || Lies(section.Height, section.Width, capacity);

    /// <summary>Whether a bar is light enough; a bar of unknown section or grade is not weighed.</summary>
    public static bool Carries(StockItem stock, CutRules rules) =>
        rules.LoadLimit is not { } limit || stock.Section is null || stock.Grade is null
        || stock.Grade.Density.Value.MassOf(stock.Section.Area, stock.Length) <= limit;

    private static bool CutsMiters(OrderLine line, Section section, SawCapacity capacity, MiterRange? range)
    {
        var plane = PlaneOf(line);
        if (plane == MiterPlane.None)
            return true;
        if (plane == MiterPlane.Both || range is null)
            return false;
        var turned = plane == MiterPlane.Height;
        var (first, second) = turned
            ? (line.FirstEnd.HeightAngle, line.SecondEnd.HeightAngle)
            : (line.FirstEnd.WidthAngle, line.SecondEnd.WidthAngle);
        if (!Swivels(first, range) || !Swivels(second, range))
            return false;
        var (width, height) = turned ? (section.Height, section.Width) : (section.Width, section.Height);
        var steepest = Math.Max(first.Size.Millidegrees, second.Size.Millidegrees);
        var mitered = Length.RoundUpToGrid(width.ApproximateMillimeters / Math.Cos(steepest * Math.PI / 180_000));
        return section.IsRound ? mitered <= capacity.Round : Lies(mitered, height, capacity);
    }

    private static bool Swivels(Angle angle, MiterRange range) =>
        angle.Millidegrees >= -range.Left.Millidegrees && angle.Millidegrees <= range.Right.Millidegrees;

    private static bool Lies(Length width, Length height, SawCapacity capacity) => width <= capacity.Width && height <= capacity.Height;

    private static MiterPlane PlaneOf(EndCut end) =>
        (end.WidthAngle.Millidegrees == 0 ? MiterPlane.None : MiterPlane.Width)
        | (end.HeightAngle.Millidegrees == 0 ? MiterPlane.None : MiterPlane.Height);
}
