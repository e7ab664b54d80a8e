using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>The outline of a custom section, checked in whole nanometers, so that a touch is told from a near miss.</summary>
internal static class Polygon
{
    private const int FewestPoints = 3;
    private const int MostPoints = 500;

    public static IReadOnlyList<SectionFault> Faults(IReadOnlyList<OutlinePoint> points)
    {
        if (points.Count < FewestPoints)
            return [Fault("too_few_points", "An outline has at least 3 corners.")];
        if (points.Count > MostPoints)
            return [Fault("too_many_points", "An outline has at most 500 corners.")];
        if (points.Any(p => IsBeyond(p.X) || IsBeyond(p.Y)))
            return [Fault("too_large", "A corner is more than 10 m from the origin.")];
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i] == points[(i + 1) % points.Count])
                return [Fault("repeated_point", $"Corner {i} is given twice in a row.")];
        }
        if (FirstCrossing(points) is var (a, b))
            return [Fault("crosses_itself", $"The side from corner {a} touches the side from corner {b}.")];
        return IsTooSmall(points) ? [Fault("too_small", "The outline is less than 0.001 mm wide or high, or its area less than 0.000001 mm2.")] : [];
    }

    public static Length Extent(IReadOnlyList<OutlinePoint> points, Func<OutlinePoint, Length> along) =>
        points.Max(along) - points.Min(along);

    /// <summary>Its corners by depth below the top, in the sense of an outer contour.</summary>
    public static IReadOnlyList<Corner> Corners(IReadOnlyList<OutlinePoint> points)
    {
        var (left, top) = (points.Min(p => p.X), points.Max(p => p.Y));
        var corners = points.Select(p => new Corner((p.X - left).ApproximateMillimeters, (top - p.Y).ApproximateMillimeters));
        // Depth runs against y, so what is drawn counter-clockwise must be reversed.
        return TwiceArea(points) > 0 ? [.. corners.Reverse()] : [.. corners];
    }

    private static SectionFault Fault(string code, string detail) => new("outline", code, detail);

    private static bool IsBeyond(Length coordinate) => coordinate > ShapeMembers.Largest || coordinate < -ShapeMembers.Largest;

    private static bool IsTooSmall(IReadOnlyList<OutlinePoint> points) =>
        Extent(points, p => p.X) < ShapeMembers.Smallest || Extent(points, p => p.Y) < ShapeMembers.Smallest
        || Int128.Abs(TwiceArea(points)) < 2_000_000;

    private static Int128 TwiceArea(IReadOnlyList<OutlinePoint> points)
    {
        Int128 sum = 0;
        for (var i = 1; i + 1 < points.Count; i++)
            sum += Cross(points[0], points[i], points[i + 1]);
        return sum;
    }

    private static (int, int)? FirstCrossing(IReadOnlyList<OutlinePoint> points)
    {
        var n = points.Count;
        for (var i = 0; i < n; i++)
        {
            if (TurnsBack(points[i], points[(i + 1) % n], points[(i + 2) % n]))
                return (i, (i + 1) % n);
            for (var j = i + 2; j < n; j++)
            {
                if ((j + 1) % n != i && Touch(points[i], points[i + 1], points[j], points[(j + 1) % n]))
                    return (i, j);
            }
        }
        return null;
    }

    /// <summary>Whether a side runs back over the one before.</summary>
    private static bool TurnsBack(OutlinePoint a, OutlinePoint b, OutlinePoint c) =>
        Cross(a, b, c) == 0
        && (Int128)(b.X - a.X).Nanometers * (c.X - b.X).Nanometers + (Int128)(b.Y - a.Y).Nanometers * (c.Y - b.Y).Nanometers < 0;

    private static bool Touch(OutlinePoint a, OutlinePoint b, OutlinePoint c, OutlinePoint d)
    {
        var (cSide, dSide) = (Int128.Sign(Cross(a, b, c)), Int128.Sign(Cross(a, b, d)));
        var (aSide, bSide) = (Int128.Sign(Cross(c, d, a)), Int128.Sign(Cross(c, d, b)));
        return (cSide * dSide < 0 && aSide * bSide < 0)
            || (cSide == 0 && IsWithin(a, b, c)) || (dSide == 0 && IsWithin(a, b, d))
            || (aSide == 0 && IsWithin(c, d, a)) || (bSide == 0 && IsWithin(c, d, b));
    }

    private static bool IsWithin(OutlinePoint a, OutlinePoint b, OutlinePoint point) =>
        Length.Min(a.X, b.X) <= point.X && point.X <= Length.Max(a.X, b.X)
        && Length.Min(a.Y, b.Y) <= point.Y && point.Y <= Length.Max(a.Y, b.Y);

    private static Int128 Cross(OutlinePoint a, OutlinePoint b, OutlinePoint c) =>
        (Int128)(b.X - a.X).Nanometers * (c.Y - a.Y).Nanometers - (Int128)(b.Y - a.Y).Nanometers * (c.X - a.X).Nanometers;
}
