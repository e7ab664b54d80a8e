using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Shop;

/// <summary>Sets of windows.</summary>
internal static class TimeSpans
{
    /// <summary>Windows that overlap or touch become one; empty ones go.</summary>
    public static List<TimeWindow> Union(IEnumerable<TimeWindow> windows)
    {
        var merged = new List<TimeWindow>();
        foreach (var window in windows.Where(window => window.End > window.Start).OrderBy(window => window.Start).ThenBy(window => window.End))
        {
            if (merged.Count > 0 && window.Start <= merged[^1].End)
                merged[^1] = merged[^1] with { End = Math.Max(merged[^1].End, window.End) };
            else
                merged.Add(window);
        }
        return merged;
    }

    /// <summary>What holes leave of windows; both are ascending and disjoint.</summary>
    public static List<TimeWindow> Without(IReadOnlyList<TimeWindow> windows, IReadOnlyList<TimeWindow> holes)
    {
        var left = new List<TimeWindow>();
        var next = 0;
        foreach (var window in windows)
        {
            while (next < holes.Count && holes[next].End <= window.Start)
                next++;
            var from = window.Start;
            for (var i = next; i < holes.Count && holes[i].Start < window.End; i++)
            {
                if (holes[i].Start > from)
                    left.Add(new(from, holes[i].Start));
                from = Math.Max(from, holes[i].End);
            }
            if (from < window.End)
                left.Add(new(from, window.End));
        }
        return left;
    }
}
