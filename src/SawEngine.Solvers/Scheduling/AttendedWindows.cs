using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>When a saw is attended: its shifts, the overtime that is worked, and of both only what somebody of its team is on shift for.</summary>
internal static class AttendedWindows
{
    public static TimeWindow[] Of(ScheduleSaw saw, IReadOnlyList<bool> overtimeWorked, IReadOnlyList<TimeWindow>? present)
    {
        var windows = Joined(saw.Windows.Concat(saw.Overtime.Where((_, i) => overtimeWorked[i]).Select(overtime => overtime.Window)));
        return [.. present is null ? windows : Common(windows, present)];
    }

    private static List<TimeWindow> Joined(IEnumerable<TimeWindow> windows)
    {
        var joined = new List<TimeWindow>();
        foreach (var window in windows.Where(window => window.End > window.Start).OrderBy(window => window.Start))
        {
            if (joined.Count > 0 && joined[^1].End >= window.Start)
                joined[^1] = joined[^1] with { End = Math.Max(joined[^1].End, window.End) };
            else
                joined.Add(window);
        }
        return joined;
    }

    private static IEnumerable<TimeWindow> Common(List<TimeWindow> windows, IReadOnlyList<TimeWindow> others)
    {
        var next = 0;
        foreach (var window in windows)
        {
            while (next < others.Count && others[next].End <= window.Start)
                next++;
            for (var i = next; i < others.Count && others[i].Start < window.End; i++)
                yield return new(Math.Max(window.Start, others[i].Start), Math.Min(window.End, others[i].End));
        }
    }
}
