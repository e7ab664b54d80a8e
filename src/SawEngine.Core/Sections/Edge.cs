namespace SawEngine.Core.Sections;

/// <summary>
/// A piece of a contour: a straight segment, or an arc within one quadrant of its circle, so that x and y run one way only.
/// </summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Center">Center of the arc.</param>
/// <param name="Radius">Radius of the arc; 0 for a straight segment.</param>
/// <param name="Sweep">Angle from start to end in radians, positive from x to y.</param>
internal sealed record Edge(Point From, Point To, Point Center, double Radius, double Sweep)
{
    public static Edge Line(Point from, Point to) => new(from, to, default, 0, 0);

    /// <summary>An arc, split where it crosses from one quadrant of its circle to the next.</summary>
    public static IEnumerable<Edge> Arc(Point from, Point to, Point center, double radius, double sweep)
    {
        const double quarter = Math.PI / 2, negligible = 1e-12;
        var start = Math.Atan2(from.Y - center.Y, from.X - center.X);
        var direction = Math.Sign(sweep);
        var quadrant = (int)Math.Floor(direction * start / quarter + negligible) + 1;
        var (passed, last) = (0d, from);
        for (; quadrant * quarter - direction * start < Math.Abs(sweep) - negligible; quadrant++)
        {
            var axis = center + radius * Axis(direction * quadrant);
            var angle = quadrant * quarter - direction * start;
            yield return new(last, axis, center, radius, direction * (angle - passed));
            (passed, last) = (angle, axis);
        }
        yield return new(last, to, center, radius, sweep - direction * passed);
    }

    public double Top => Math.Min(From.Y, To.Y);

    public double Bottom => Math.Max(From.Y, To.Y);

    /// <summary>Its share of Green's integral 1/2 (x dy - y dx), exact for both kinds.</summary>
    public double AreaTerm => Radius == 0
        ? From.Cross(To) / 2
        : (Center.Cross(To - From) + Radius * Radius * Sweep) / 2;

    /// <summary>Where it crosses a depth. A depth beyond its ends counts as the nearer end.</summary>
    public double XAt(double y)
    {
        if (y <= Top)
            return From.Y <= To.Y ? From.X : To.X;
        if (y >= Bottom)
            return From.Y <= To.Y ? To.X : From.X;
        if (Radius == 0)
            return From.X + (To.X - From.X) * ((y - From.Y) / (To.Y - From.Y));
        var rise = Math.Abs(y - Center.Y);
        var run = Math.Sqrt(Math.Max(0, (Radius - rise) * (Radius + rise)));
        return From.X + To.X < 2 * Center.X ? Center.X - run : Center.X + run;
    }

    public Edge Map(Func<Point, Point> rotation) => this with { From = rotation(From), To = rotation(To), Center = rotation(Center) };

    private static Point Axis(int quadrant) => (quadrant & 3) switch
    {
        0 => new(1, 0),
        1 => new(0, 1),
        2 => new(-1, 0),
        _ => new(0, -1),
    };
}
