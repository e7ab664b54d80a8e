namespace SawEngine.Core.Sections;

/// <summary>
/// The boundary of a section: closed contours of straight segments and arcs. Between two neighboring depths at which an edge starts
/// or ends, always the same edges are crossed in the same order, so crossings can be paired to runs without special cases.
/// </summary>
internal sealed class Outline
{
    /// <summary>Distance in mm below which two depths or two ends are the same: far below a nanometer, far above rounding.</summary>
    public const double Tolerance = 1e-9;

    private readonly IReadOnlyList<Edge> _edges;
    private readonly double _height;
    private readonly double _width;
    private readonly double[] _breakpoints;
    private readonly Edge[][] _slabs;

    public Outline(IEnumerable<Contour> contours, double height, double width)
        : this([.. contours.SelectMany(c => c.Edges())], height, width)
    {
    }

    private Outline(IReadOnlyList<Edge> edges, double height, double width)
    {
        (_edges, _height, _width) = (edges, height, width);
        _breakpoints = DepthsOf(edges, height);
        _slabs = SlabsOf(edges, _breakpoints);
    }

    /// <summary>Area in mm2 by Green's theorem.</summary>
    public double Area => _edges.Sum(e => e.AreaTerm);

    public double Height => _height;

    public double Width => _width;

    public IReadOnlyList<double> Breakpoints => _breakpoints;

    /// <summary>The outline turned a quarter.</summary>
    public Outline Turned() => new([.. _edges.Select(e => e.Map(p => new(_height - p.Y, p.X)))], _width, _height);

    /// <summary>
    /// The outline as a blade meets it whose right-hand end is lower by an angle: turned until the blade lies level, and moved into the corner.
    /// </summary>
    public Outline Canted(double radians)
    {
        var (sine, cosine) = Math.SinCos(radians);
        var turned = _edges.SelectMany(edge => Turn(edge, Level)).ToList();
        var corner = new Point(turned.Min(edge => Math.Min(edge.From.X, edge.To.X)), turned.Min(edge => edge.Top));
        List<Edge> moved = [.. turned.Select(edge => edge.Map(p => p - corner))];
        return new(moved, moved.Max(edge => edge.Bottom), moved.Max(edge => Math.Max(edge.From.X, edge.To.X)));

        Point Level(Point p) => new(p.X * cosine + p.Y * sine, p.Y * cosine - p.X * sine);

        // A turned arc leaves its quadrant.
        static IEnumerable<Edge> Turn(Edge edge, Func<Point, Point> turn) => edge.Radius == 0
            ? [edge.Map(turn)]
            : Edge.Arc(turn(edge.From), turn(edge.To), turn(edge.Center), edge.Radius, edge.Sweep);
    }

    /// <summary>
    /// Runs of material at a depth, ascending and apart. At a breakpoint the two sides may differ: then the side with more material
    /// counts, so that the largest contact width is reached and not only approached.
    /// </summary>
    public IReadOnlyList<(double Start, double End)> RunsAt(double depth)
    {
        if (!(depth >= 0 && depth <= _height))
            return [];
        var found = Array.BinarySearch(_breakpoints, depth);
        if (found < 0)
            return RunsIn(_slabs[~found - 1], depth);
        var above = found == 0 ? [] : RunsIn(_slabs[found - 1], depth);
        var below = found == _slabs.Length ? [] : RunsIn(_slabs[found], depth);
        return Total(above) > Total(below) ? above : below;
    }

    private List<(double Start, double End)> RunsIn(Edge[] slab, double depth)
    {
        var runs = new List<(double Start, double End)>(slab.Length / 2);
        for (var i = 0; i + 1 < slab.Length; i += 2)
        {
            var start = Math.Clamp(slab[i].XAt(depth), 0, _width);
            var end = Math.Clamp(slab[i + 1].XAt(depth), 0, _width);
            if (end - start <= Tolerance)
                continue;
            if (runs.Count > 0 && start - runs[^1].End <= Tolerance)
                runs[^1] = (runs[^1].Start, end);
            else
                runs.Add((start, end));
        }
        return runs;
    }

    private static double Total(List<(double Start, double End)> runs) => runs.Sum(r => r.End - r.Start);

    private static double[] DepthsOf(IReadOnlyList<Edge> edges, double height)
    {
        var depths = new List<double> { 0 };
        foreach (var depth in edges.Select(e => e.From.Y).Order())
        {
            if (depth - depths[^1] > Tolerance && height - depth > Tolerance)
                depths.Add(depth);
        }
        depths.Add(height);
        return [.. depths];
    }

    private static Edge[][] SlabsOf(IReadOnlyList<Edge> edges, double[] breakpoints)
    {
        var slabs = new List<Edge>[breakpoints.Length - 1];
        for (var i = 0; i < slabs.Length; i++)
            slabs[i] = [];
        foreach (var edge in edges)
        {
            for (var i = IndexOf(breakpoints, edge.Top); i < IndexOf(breakpoints, edge.Bottom); i++)
                slabs[i].Add(edge);
        }
        return [.. slabs.Select((slab, i) => slab.OrderBy(e => e.XAt((breakpoints[i] + breakpoints[i + 1]) / 2)).ToArray())];
    }

    /// <summary>The breakpoint that stands for a depth: the last one not deeper, or the next where that lies within the tolerance.</summary>
    private static int IndexOf(double[] breakpoints, double depth)
    {
        var found = Array.BinarySearch(breakpoints, depth);
        if (found >= 0)
            return found;
        var next = Math.Min(~found, breakpoints.Length - 1);
        return next == 0 || breakpoints[next] - depth <= Tolerance ? next : next - 1;
    }
}
