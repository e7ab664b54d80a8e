using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>One operator's hands: on shift, and one thing at a time.</summary>
internal sealed class OperatorHands(ScheduleOperator worker, long walkingSeconds)
{
    private readonly TimeWindow[] windows = [.. worker.Windows];

    public string OperatorId => worker.OperatorId;

    public Timeline Busy { get; } = new(walkingSeconds);

    /// <summary>First second from one on at which the hands are free for a length of time; <see cref="long.MaxValue"/> where there is none.</summary>
    public long FirstFree(long from, long seconds, int saw)
    {
        for (var window = FirstThatEndsAfter(from); window < windows.Length; window++)
        {
            from = Busy.FirstFree(Math.Max(from, windows[window].Start), seconds, saw);
            if (from + seconds <= windows[window].End)
                return from;
        }
        return long.MaxValue;
    }

    private int FirstThatEndsAfter(long second)
    {
        var (low, high) = (0, windows.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = windows[middle].End > second ? (low, middle) : (middle + 1, high);
        }
        return low;
    }
}
