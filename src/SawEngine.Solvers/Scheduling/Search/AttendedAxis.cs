using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The attended seconds of a saw in a row, without the breaks between; before the first and after the last window time runs as usual.</summary>
internal sealed class AttendedAxis(IReadOnlyList<TimeWindow> windows)
{
    /// <summary>No saw is attended less than a hundredth of the time, as far as costs go.</summary>
    public const int LargestStretch = 100;

    public bool IsEmpty => windows.Count == 0;

    public bool IsOneWindow => windows.Count <= 1;

    public long Start => IsEmpty ? 0 : windows[0].Start;

    /// <summary>The attended seconds before a time.</summary>
    public long Of(long time)
    {
        if (IsEmpty || time <= Start)
            return time;
        var breaks = 0L;
        for (var i = 1; i < windows.Count && windows[i - 1].End < time; i++)
            breaks += Math.Min(time, windows[i].Start) - windows[i - 1].End;
        return time - breaks;
    }

    /// <summary>A cost of a second as that of an attended second.</summary>
    public Int128 Stretched(Int128 cost)
    {
        if (IsOneWindow)
            return cost;
        var (span, attended) = (windows[^1].End - Start, windows.Sum(window => window.Seconds));
        return Int128.Min(cost * span / Math.Max(1, attended), cost * LargestStretch);
    }
}
