using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The attended seconds of a saw in a row, without the breaks between; before the first and after the last window time runs as usual.</summary>
internal sealed class AttendedAxis
{
    private const int BucketBits = 10;

    private readonly TimeWindow[] windows;
    private readonly long[] ends; // of the windows, on the axis
    private readonly long[] breaks; // before each window, all together
    private readonly int[] buckets; // window in which each stretch of the axis begins

    public AttendedAxis(TimeWindow[] windows)
    {
        this.windows = windows;
        ends = new long[windows.Length];
        breaks = new long[windows.Length];
        for (var i = 0; i < windows.Length; i++)
        {
            breaks[i] = i == 0 ? 0 : breaks[i - 1] + windows[i].Start - windows[i - 1].End;
            ends[i] = windows[i].End - breaks[i];
        }
        buckets = windows.Length <= 1 ? [] : Buckets();
    }

    public bool IsEmpty => windows.Length == 0;

    public bool IsOneWindow => windows.Length <= 1;

    public long Start => IsEmpty ? 0 : windows[0].Start;

    /// <summary>The attended seconds before a time.</summary>
    public long Of(long time)
    {
        if (IsEmpty || time <= Start)
            return time;
        var passed = 0L;
        for (var i = 1; i < windows.Length && windows[i - 1].End < time; i++)
            passed += Math.Min(time, windows[i].Start) - windows[i - 1].End;
        return time - passed;
    }

    /// <summary>The time of a second on the axis; at the end of a window it is that end.</summary>
    public long TimeOf(long second)
    {
        if (IsOneWindow || second <= ends[0])
            return second;
        var bucket = (second - Start) >> BucketBits;
        var window = bucket < buckets.Length ? buckets[bucket] : ends.Length - 1;
        while (window + 1 < ends.Length && second > ends[window])
            window++;
        return second + breaks[window];
    }

    private int[] Buckets()
    {
        var buckets = new int[((ends[^1] - Start) >> BucketBits) + 1];
        for (var (bucket, window) = (0, 0); bucket < buckets.Length; bucket++)
        {
            while (window + 1 < ends.Length && ends[window] < Start + ((long)bucket << BucketBits))
                window++;
            buckets[bucket] = window;
        }
        return buckets;
    }
}
