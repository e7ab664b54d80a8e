using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>Contact widths of a section over its travel, straight between the depths that are stated. Where the runs lie is unknown: they are spread evenly over the width.</summary>
internal sealed class ContactProfile
{
    private readonly IReadOnlyList<ContactWidth> _widths;
    private readonly double _boundingWidth;

    public ContactProfile(IReadOnlyList<ContactWidth> widths, Length boundingWidth)
    {
        (_widths, _boundingWidth) = (widths, boundingWidth.ApproximateMillimeters);
        Breakpoints = [.. widths.Select(pair => pair.Depth).Distinct().Select(depth => depth.ApproximateMillimeters)];
    }

    public IReadOnlyList<double> Breakpoints { get; }

    /// <summary>The integral of the widths over the depth in mm2, exact.</summary>
    public static decimal AreaOf(IReadOnlyList<ContactWidth> widths) => widths.Zip(widths.Skip(1), (upper, lower) =>
        (lower.Depth - upper.Depth).Millimeters * (upper.Width + lower.Width).Millimeters / 2).Sum();

    public IReadOnlyList<(double Start, double End)> RunsAt(double depth)
    {
        if (!(depth >= 0 && depth <= Breakpoints[^1]))
            return [];
        var (width, runs) = Enumerable.Range(1, _widths.Count - 1).Where(i => Spans(i, depth)).Select(i => At(i, depth)).MaxBy(found => found.Width);
        var gap = runs > 1 ? (_boundingWidth - width) / (runs - 1) : 0;
        if (width <= Outline.Tolerance)
            return [];
        if (gap <= Outline.Tolerance)
            return [((_boundingWidth - width) / 2, (_boundingWidth + width) / 2)];
        var run = width / runs;
        return [.. Enumerable.Range(0, runs).Select(i => (i * (run + gap), i == runs - 1 ? _boundingWidth : i * (run + gap) + run))];
    }

    private bool Spans(int lower, double depth) =>
        _widths[lower - 1].Depth.ApproximateMillimeters <= depth && depth <= _widths[lower].Depth.ApproximateMillimeters;

    private (double Width, int Runs) At(int lower, double depth)
    {
        var (above, below) = (_widths[lower - 1], _widths[lower]);
        var (top, bottom) = (above.Depth.ApproximateMillimeters, below.Depth.ApproximateMillimeters);
        var share = bottom > top ? (depth - top) / (bottom - top) : 0;
        return (double.Lerp(above.Width.ApproximateMillimeters, below.Width.ApproximateMillimeters, share), above.Runs);
    }
}
