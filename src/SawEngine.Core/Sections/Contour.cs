namespace SawEngine.Core.Sections;

/// <summary>
/// A closed polygon whose corners may be rounded. Seen with x to the right and depth upward, the outer contour of a section runs
/// counter-clockwise and a hole clockwise, so that areas add up with their sign.
/// </summary>
internal sealed class Contour
{
    private readonly IReadOnlyList<Rounding> _roundings;

    public Contour(IReadOnlyList<Corner> corners)
    {
        _roundings = [.. corners.Select((corner, i) => Round(corners[(i + corners.Count - 1) % corners.Count], corner, corners[(i + 1) % corners.Count]))];
    }

    private Contour(IReadOnlyList<Rounding> roundings) => _roundings = roundings;

    /// <summary>A full circle. A square whose corners are rounded until nothing of its sides is left.</summary>
    public static Contour Circle(Point center, double radius) =>
        Rectangle(center.X - radius, center.Y - radius, 2 * radius, 2 * radius, radius, "");

    public static Contour Rectangle(double x, double y, double width, double height, double radius = 0, string member = "") => new(
    [
        new Corner(x, y, radius, member),
        new Corner(x + width, y, radius, member),
        new Corner(x + width, y + height, radius, member),
        new Corner(x, y + height, radius, member),
    ]);

    /// <summary>The same contour the other way round, as the edge of a hole.</summary>
    public Contour AsHole() => new([.. _roundings.Reverse().Select(r => r.Reversed())]);

    /// <summary>Members whose radius leaves a side too short, each once.</summary>
    public IEnumerable<string> RadiiThatDoNotFit()
    {
        for (var i = 0; i < _roundings.Count; i++)
        {
            var (a, b) = (_roundings[i], _roundings[(i + 1) % _roundings.Count]);
            if (a.Tangent + b.Tangent > (b.Corner.At - a.Corner.At).Norm + Outline.Tolerance)
                yield return a.Tangent >= b.Tangent ? a.Corner.Member : b.Corner.Member;
        }
    }

    public IEnumerable<Edge> Edges()
    {
        for (var i = 0; i < _roundings.Count; i++)
        {
            var (here, next) = (_roundings[i], _roundings[(i + 1) % _roundings.Count]);
            if (here.Corner.Radius > 0)
            {
                foreach (var edge in Edge.Arc(here.From, here.To, here.Center, here.Corner.Radius, here.Sweep))
                    yield return edge;
            }
            yield return Edge.Line(here.To, next.From);
        }
    }

    private static Rounding Round(Corner before, Corner corner, Corner after)
    {
        var incoming = Direction(before.At, corner.At);
        var outgoing = Direction(corner.At, after.At);
        var turn = Math.Atan2(incoming.Cross(outgoing), incoming.Dot(outgoing));
        var tangent = corner.Radius * Math.Tan(Math.Abs(turn) / 2);
        var from = corner.At - tangent * incoming;
        var center = from + Math.Sign(turn) * corner.Radius * incoming.Quarter;
        return new(corner, from, corner.At + tangent * outgoing, center, turn, tangent);
    }

    private static Point Direction(Point from, Point to) => 1 / (to - from).Norm * (to - from);

    /// <summary>A corner with the arc that rounds it; from and to coincide with the corner where it is sharp.</summary>
    private readonly record struct Rounding(Corner Corner, Point From, Point To, Point Center, double Sweep, double Tangent)
    {
        public Rounding Reversed() => this with { From = To, To = From, Sweep = -Sweep };
    }
}
