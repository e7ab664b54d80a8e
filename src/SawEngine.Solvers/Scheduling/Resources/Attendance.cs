namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>How many saws a team can attend, over time, and when its saws are busy. Only kept where it can ever be too few.</summary>
/// <param name="levels">From when on how many; ascending, the first at or before every time asked for.</param>
internal sealed class Attendance(IReadOnlyList<(long From, int Saws)> levels)
{
    private readonly Dictionary<int, List<(long Start, long Finish)>> busy = [];

    public void Clear()
    {
        foreach (var spans in busy.Values)
            spans.Clear();
    }

    /// <summary>First second from one on at which one more saw cannot be attended; the one itself where it cannot be then.</summary>
    public long FreeUntil(int saw, long second)
    {
        while (second < long.MaxValue && IsFree(saw, second, out var next))
            second = next;
        return second;
    }

    /// <summary>First second from one on at which one more saw can be attended; <see cref="long.MaxValue"/> where there is none.</summary>
    public long NextFree(int saw, long second)
    {
        while (second < long.MaxValue && !IsFree(saw, second, out var next))
            second = next;
        return second;
    }

    /// <summary>A saw's spans come in the order of time.</summary>
    public void Add(int saw, long start, long finish)
    {
        if (!busy.TryGetValue(saw, out var spans))
            busy[saw] = spans = [];
        spans.Add((start, finish));
    }

    public void RemoveLast(int saw) => busy[saw].RemoveAt(busy[saw].Count - 1);

    private bool IsFree(int saw, long second, out long next)
    {
        var level = LevelAt(second);
        next = level + 1 < levels.Count ? levels[level + 1].From : long.MaxValue;
        var others = 0;
        foreach (var (other, spans) in busy)
            if (other != saw && IsBusy(spans, second, ref next))
                others++;
        return others < levels[level].Saws;
    }

    private static bool IsBusy(List<(long Start, long Finish)> spans, long second, ref long next)
    {
        // Most questions are about the end of what is booked.
        if (spans.Count == 0 || spans[^1].Finish <= second)
            return false;
        var (low, high) = (0, spans.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = spans[middle].Finish > second ? (low, middle) : (middle + 1, high);
        }
        var isBusy = spans[low].Start <= second;
        next = Math.Min(next, isBusy ? spans[low].Finish : spans[low].Start);
        return isBusy;
    }

    private int LevelAt(long second)
    {
        var (low, high) = (0, levels.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = levels[middle].From <= second ? (middle, high) : (low, middle - 1);
        }
        return low;
    }
}
