using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// All sequences of all subsets of a few jobs on one saw, by dynamic programming (Held and Karp 1962): for each subset and last job the
/// finishes and costs of which none is both earlier and cheaper than another. What costs a limit or more is left out.
/// </summary>
internal sealed class SubsetProgram
{
    private const int MostEntries = 4_000_000;

    private readonly AxisShop shop;
    private readonly int saw;
    private readonly long limit;
    private readonly int[] first;
    private readonly List<Entry> entries = [];
    private readonly List<Entry> candidates = [];

    private SubsetProgram(AxisShop shop, int saw, long limit)
    {
        (this.shop, this.saw, this.limit) = (shop, saw, limit);
        first = new int[(shop.Jobs << shop.Jobs) + 1];
        Best = new long[1 << shop.Jobs];
        Array.Fill(Best, long.MaxValue);
        Best[0] = 0;
    }

    /// <summary>Least cost of a subset, in millionths; where only the makespan costs its least finish. <see cref="long.MaxValue"/>: none below the limit.</summary>
    public long[] Best { get; }

    /// <summary>The program of a saw; null where it would be too large.</summary>
    public static SubsetProgram? Of(AxisShop shop, int saw, long limit, CancellationToken cancellation)
    {
        var program = new SubsetProgram(shop, saw, limit);
        for (var set = 1; set < 1 << shop.Jobs; set++)
        {
            if (cancellation.IsCancellationRequested || program.entries.Count > MostEntries)
                return null;
            program.Fill(set);
        }
        return program;
    }

    /// <summary>The sequence that is behind <see cref="Best"/>.</summary>
    public int[] Sequence(int set)
    {
        if (set == 0)
            return [];
        var at = -1;
        for (var i = first[set * shop.Jobs]; i < first[(set + 1) * shop.Jobs]; i++)
            if (at < 0 || Value(entries[i]) < Value(entries[at]))
                at = i;
        var jobs = new List<int>();
        for (; at >= 0; at = entries[at].Before)
            jobs.Add(entries[at].Job);
        jobs.Reverse();
        return [.. jobs];
    }

    private long Value(Entry entry) => shop.MakespanRate > 0 ? entry.Finish : entry.Cost;

    private void Fill(int set)
    {
        for (var last = 0; last < shop.Jobs; last++)
        {
            first[(set * shop.Jobs) + last] = entries.Count;
            if ((set >> last & 1) != 0 && shop.Seconds[saw][last + 1] >= 0)
                Fill(set & ~(1 << last), last + 1);
        }
        first[(set + 1) * shop.Jobs] = entries.Count;
        for (var i = first[set * shop.Jobs]; i < entries.Count; i++)
            Best[set] = Math.Min(Best[set], Value(entries[i]));
    }

    private void Fill(int rest, int job)
    {
        candidates.Clear();
        if (rest == 0)
            Add(-1, 0, shop.Start[saw], 0, job);
        for (var i = first[rest * shop.Jobs]; rest != 0 && i < first[(rest + 1) * shop.Jobs]; i++)
            Add(i, entries[i].Job, entries[i].Finish, entries[i].Cost, job);
        candidates.Sort(static (one, other) => one.Finish != other.Finish ? one.Finish.CompareTo(other.Finish) : one.Cost.CompareTo(other.Cost));
        var cheapest = long.MaxValue;
        foreach (var candidate in candidates)
        {
            if (candidate.Cost >= cheapest)
                continue;
            cheapest = candidate.Cost;
            entries.Add(candidate);
        }
    }

    private void Add(int at, int before, long time, long cost, int job)
    {
        var setUp = shop.SetUp[saw][(before * (shop.Jobs + 1)) + job];
        var finish = Math.Max(time + setUp, shop.Release[saw][job]) + shop.Seconds[saw][job];
        var late = Math.Max(0, finish - shop.Due[saw][job]);
        var sum = cost + (shop.Weight[saw][job] * late / ScheduleCost.SecondsPerHour) + ((shop.WorkCost[saw][job] + (shop.SetUpRate[saw][job] * setUp)) / ScheduleCost.SecondsPerHour);
        var entry = new Entry(finish, sum, at, job);
        if (Value(entry) < limit)
            candidates.Add(entry);
    }

    private readonly record struct Entry(long Finish, long Cost, int Before, int Job);
}
