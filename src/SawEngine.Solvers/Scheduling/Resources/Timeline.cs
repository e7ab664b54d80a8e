namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>What somebody or something is busy with, one thing at a time, by start.</summary>
/// <param name="changeSeconds">Seconds that pass between two things on different saws.</param>
internal sealed class Timeline(long changeSeconds)
{
    private readonly List<(long Start, long Finish, int Saw)> busy = [];

    public void Clear() => busy.Clear();

    /// <summary>First second from one on from which a length of time is free for a saw.</summary>
    public long FirstFree(long from, long seconds, int saw)
    {
        for (var i = FirstThatEndsAfter(from - changeSeconds); i < busy.Count; i++)
        {
            var (start, finish, other) = busy[i];
            var change = other == saw ? 0 : changeSeconds;
            if (from + seconds + change <= start)
                return from;
            from = Math.Max(from, finish + change);
        }
        return from;
    }

    public void Add(long start, long finish, int saw) => busy.Insert(FirstThatEndsAfter(start), (start, finish, saw));

    public void Remove(long start, long finish)
    {
        var i = FirstThatEndsAfter(start - 1);
        while (busy[i].Start != start || busy[i].Finish != finish)
            i++;
        busy.RemoveAt(i);
    }

    private int FirstThatEndsAfter(long second)
    {
        if (busy.Count == 0 || busy[^1].Finish <= second)
            return busy.Count;
        var (low, high) = (0, busy.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = busy[middle].Finish > second ? (low, middle) : (middle + 1, high);
        }
        return low;
    }
}
