using SawEngine.Core.Sections;

namespace SawEngine.Core.Nesting;

/// <summary>The verifier's own look at a section's symmetry: whether its material lies as before once it is mirrored, by the runs the blade would be in.</summary>
internal static class SectionMirror
{
    private const double ToleranceMillimeters = 1e-6;

    public static bool LeavesAsBefore(Section section, bool leftToRight, bool topToBottom)
    {
        if (!section.HasOutline)
            return false;
        var (height, width) = (section.Height.Nanometers / 1e6, section.Width.Nanometers / 1e6);
        return Depths(section, height).All(depth =>
        {
            var runs = section.RunsAt(depth);
            var mirrored = section.RunsAt(topToBottom ? height - depth : depth).ToArray();
            if (leftToRight)
                mirrored = [.. mirrored.Reverse().Select(run => (width - run.End, width - run.Start))];
            return runs.Count == mirrored.Length
                && runs.Zip(mirrored, (a, b) => Math.Abs(a.Start - b.Start) + Math.Abs(a.End - b.End)).All(apart => apart <= 2 * ToleranceMillimeters);
        });
    }

    /// <summary>Depths between all breakpoints from above and from below, three in each stretch, which tell arcs from lines.</summary>
    private static IEnumerable<double> Depths(Section section, double height)
    {
        var breaks = section.Breakpoints.Concat(section.Breakpoints.Select(depth => height - depth)).Order().ToArray();
        for (var i = 1; i < breaks.Length; i++)
        {
            var stretch = breaks[i] - breaks[i - 1];
            if (stretch <= ToleranceMillimeters)
                continue;
            yield return breaks[i - 1] + stretch / 4;
            yield return breaks[i - 1] + stretch / 2;
            yield return breaks[i - 1] + stretch * 3 / 4;
        }
    }
}
