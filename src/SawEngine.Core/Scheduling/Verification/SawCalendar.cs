namespace SawEngine.Core.Scheduling.Verification;

/// <summary>When a saw is attended and when it may run by itself.</summary>
internal sealed class SawCalendar
{
    /// <summary>No stretch of attended time.</summary>
    public const int None = -1;

    private readonly TimeWindow[] attended;
    private readonly TimeWindow[] running;
    private readonly TimeWindow[] overtime;

    public SawCalendar(ScheduleSaw saw)
    {
        Regular = [.. saw.Windows.OrderBy(window => window.Start)];
        Unattended = saw.Unattended is { } runs ? [.. runs.Windows.OrderBy(window => window.Start)] : [];
        overtime = [.. saw.Overtime.Select(one => one.Window).OrderBy(window => window.Start)];
        attended = Joined(Regular.Concat(overtime));
        running = Joined(attended.Concat(Unattended));
    }

    /// <summary>The windows without overtime.</summary>
    public TimeWindow[] Regular { get; }

    /// <summary>The windows in which the saw may run by itself.</summary>
    public TimeWindow[] Unattended { get; }

    /// <summary>The stretch of attended time, regular and overtime joined, that holds the whole interval.</summary>
    public int StretchOf(long start, long finish) => Holding(attended, start, finish);

    /// <summary>The stretch of attended time at whose end, or in which, something stops.</summary>
    public int StretchBefore(long finish)
    {
        var last = LastFrom(attended, finish == long.MinValue ? finish : finish - 1);
        return last != None && finish <= attended[last].End ? last : None;
    }

    /// <summary>The stretch of attended time in which something starts.</summary>
    public int StretchAt(long start)
    {
        var last = LastFrom(attended, start);
        return last != None && start < attended[last].End ? last : None;
    }

    /// <summary>Whether a whole window of overtime lies in the interval: where it is not used, it is a break.</summary>
    public bool HoldsOvertime(long start, long finish)
    {
        var next = LastFrom(overtime, start);
        if (next == None || overtime[next].Start < start)
            next++;
        return next < overtime.Length && overtime[next].End <= finish;
    }

    /// <summary>Whether the saw is attended, or may run by itself, all through the interval.</summary>
    public bool MayRunThrough(long start, long finish) => Holding(running, start, finish) != None;

    /// <summary>The last of ascending windows that starts at or before a second.</summary>
    public static int LastFrom(ReadOnlySpan<TimeWindow> windows, long second)
    {
        var (low, high) = (0, windows.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (windows[middle].Start <= second)
                low = middle + 1;
            else
                high = middle;
        }
        return low - 1;
    }

    /// <summary>The one of ascending windows that holds the whole interval.</summary>
    public static int Holding(ReadOnlySpan<TimeWindow> windows, long start, long finish)
    {
        var last = LastFrom(windows, start);
        return last != None && start <= finish && finish <= windows[last].End ? last : None;
    }

    /// <summary>Windows in any order, those that overlap or touch as one.</summary>
    public static TimeWindow[] Joined(IEnumerable<TimeWindow> windows)
    {
        var joined = new List<TimeWindow>();
        foreach (var window in windows.OrderBy(window => window.Start))
        {
            if (joined.Count > 0 && window.Start <= joined[^1].End)
                joined[^1] = new(joined[^1].Start, Math.Max(joined[^1].End, window.End));
            else
                joined.Add(window);
        }
        return [.. joined];
    }
}
