namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>How many saws a team can attend, over time, and when its saws are busy. Only kept where it can ever be too few.</summary>
internal sealed class Attendance
{
    private readonly (long From, int Saws)[] levels;
    private readonly int[] saws;
    private readonly List<(long Start, long Finish)>[] busy; // as saws

    /// <param name="levels">From when on how many; ascending, the first at or before every time asked for.</param>
    /// <param name="saws">The team's saws.</param>
    public Attendance(IEnumerable<(long From, int Saws)> levels, int[] saws)
    {
        this.levels = [.. levels];
        this.saws = saws;
        busy = Array.ConvertAll(saws, _ => new List<(long, long)>());
    }

    public void Clear()
    {
        foreach (var spans in busy)
            spans.Clear();
    }

    /// <summary>First second from one on, but no later than a limit, at which one more saw cannot be attended; the one itself where it cannot be then.</summary>
    public long FreeUntil(int saw, long second, long limit)
    {
        while (second < limit && IsFree(saw, second, out var next))
            second = next;
        return Math.Min(second, limit);
    }

    /// <summary>First second from one on at which one more saw can be attended; <see cref="long.MaxValue"/> where there is none.</summary>
    public long NextFree(int saw, long second)
    {
        while (second < long.MaxValue && !IsFree(saw, second, out var next))
            second = next;
        return second;
    }

    /// <summary>A saw's spans come in the order of time.</summary>
    public void Add(int saw, long start, long finish) => busy[Array.IndexOf(saws, saw)].Add((start, finish));

    public void RemoveLast(int saw)
    {
        var spans = busy[Array.IndexOf(saws, saw)];
        spans.RemoveAt(spans.Count - 1);
    }

    private bool IsFree(int saw, long second, out long next)
    {
        var level = LevelAt(second);
        next = level + 1 < levels.Length ? levels[level + 1].From : long.MaxValue;
        if (levels[level].Saws >= saws.Length || levels[level].Saws == 0)
            return levels[level].Saws > 0;
        var others = 0;
        for (var i = 0; i < saws.Length; i++)
            if (saws[i] != saw && IsBusy(busy[i], second, ref next))
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
        var (low, high) = (0, levels.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = levels[middle].From <= second ? (middle, high) : (low, middle - 1);
        }
        return low;
    }
}
