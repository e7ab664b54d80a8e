using System.Runtime.CompilerServices;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// The sequence of one saw with running sums, so that a change is judged by what it touches. Places count from 1; place 0 is the saw at
/// its start. Nothing is allocated and nothing checked for overflow: <see cref="AxisShop"/> admits no numbers that could.
/// </summary>
internal sealed class SawSequence
{
    /// <summary>The answer where a change is no use: too dear, or a job cannot run here.</summary>
    public const long TooDear = long.MaxValue;

    private readonly JobNumbers[] numbers;
    private readonly long[] setUp;
    private readonly int width;
    private readonly long[] finish;
    private readonly long[] cost;
    private readonly long[] lateWeight;
    private readonly int[] waits;
    private readonly int[] scratch;
    private readonly long[] ownCost;
    private readonly AttendedAxis? axis; // null where time on it is time
    private (int Keep, int Count, long Version) pending;

    public SawSequence(AxisShop shop, int saw)
    {
        width = shop.Jobs + 1;
        setUp = shop.SetUp[saw];
        numbers = [.. Enumerable.Range(0, width).Select(job => new JobNumbers(
            shop.Seconds[saw][job], shop.Release[saw][job], shop.Due[saw][job], shop.Weight[saw][job], shop.WorkCost[saw][job], shop.SetUpRate[saw][job]))];
        axis = shop.Axes[saw].IsOneWindow ? null : shop.Axes[saw];
        Jobs = new int[width];
        scratch = new int[width];
        finish = new long[width];
        cost = new long[width];
        ownCost = new long[width];
        lateWeight = new long[width];
        waits = new int[width];
        finish[0] = shop.Start[saw];
    }

    /// <summary>Jobs by place.</summary>
    public int[] Jobs { get; }

    public int Count { get; private set; }

    /// <summary>Cost of the jobs, without that of the last finish.</summary>
    public long Cost => cost[Count];

    public long LastFinish => finish[Count];

    /// <summary>Changes with every change; the same number is the same sequence.</summary>
    public long Version { get; private set; }

    /// <summary>Cost and penalty of the last finish.</summary>
    public long Total { get; private set; }

    /// <summary>Work done in judging, in steps of some nanoseconds.</summary>
    public long Work { get; set; }

    /// <summary>What the last finish costs.</summary>
    public FinishPenalty Penalty { get; private set; }

    public bool CanRun(int job) => numbers[job].Seconds >= 0;

    public long FinishAt(int place) => finish[place];

    public bool IsLate(int place) => numbers[Jobs[place]] is { Weight: > 0 } job && TimeOf(finish[place]) > job.Due;

    public void Use(FinishPenalty penalty)
    {
        Penalty = penalty;
        Total = cost[Count] + penalty.Of(finish[Count]);
    }

    /// <summary>Puts jobs in sequence.</summary>
    public void Set(ReadOnlySpan<int> jobs, long version)
    {
        jobs.CopyTo(Jobs.AsSpan(1));
        Count = jobs.Length;
        Version = version;
        Sum(1);
    }

    /// <summary>Makes the change that <see cref="Try"/> judges.</summary>
    public void Apply(int keep, ReadOnlySpan<Piece> pieces, int tail, long version)
    {
        var count = keep;
        foreach (var piece in pieces)
            for (var place = piece.From; place <= piece.To; place++)
                scratch[++count] = piece.Of.Jobs[place];
        for (var place = tail; place <= Count; place++)
            scratch[++count] = Jobs[place];
        pending = (keep, count, version);
    }

    /// <summary>Ends <see cref="Apply"/>; two saws that exchange jobs are both read before either is written.</summary>
    public void Commit()
    {
        var (keep, count, version) = pending;
        Array.Copy(scratch, keep + 1, Jobs, keep + 1, count - keep);
        (Count, Version) = (count, version);
        Sum(keep + 1);
    }

    /// <summary>
    /// Cost and penalty of the saw with its first places kept, then pieces, then its tail from a place on; <see cref="TooDear"/> where
    /// that reaches a limit.
    /// </summary>
    public long Try(int keep, ReadOnlySpan<Piece> pieces, int tail, long limit)
    {
        unchecked
        {
            Work++;
            if (AtLeast(keep, pieces, tail) >= limit)
                return TooDear;
            var (time, sum, before) = (finish[keep], cost[keep], Jobs[keep]);
            foreach (var piece in pieces)
            {
                var jobs = piece.Of.Jobs;
                Work += (piece.To - piece.From + 1) >> 1;
                for (var place = piece.From; place <= piece.To; place++)
                {
                    var job = jobs[place];
                    if (numbers[job].Seconds < 0)
                        return TooDear;
                    sum += Follow(before, job, ref time);
                    before = job;
                }
                if (sum >= limit)
                    return TooDear;
            }
            return Tail(time, sum, before, tail, limit);
        }
    }

    /// <summary>Cost of a job after another; time goes on to its finish.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private long Follow(int before, int job, ref long time)
    {
        unchecked
        {
            ref readonly var next = ref numbers[job];
            var change = setUp[(before * width) + job];
            time = Math.Max(time + change, next.Release) + next.Seconds;
            // No branch: whether a job is late is hard to foresee.
            var late = TimeOf(time) - next.Due;
            return next.WorkCost + (next.SetUpRate * change) + (next.Weight * (late & ~(late >> 63)));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private long TimeOf(long second) => axis is null ? second : axis.TimeOf(second);

    private long Tail(long time, long sum, int before, int tail, long limit)
    {
        unchecked
        {
            for (var place = tail; place <= Count; place++)
            {
                var job = Jobs[place];
                sum += Follow(before, job, ref time);
                if (sum >= limit)
                {
                    Work += (place - tail) >> 1;
                    return TooDear;
                }
                if (time == finish[place])
                {
                    Work += (place - tail) >> 1;
                    sum += cost[Count] - cost[place];
                    time = finish[Count];
                    break;
                }
                before = job;
            }
            Work += (Count - tail) >> 2;
            sum += Penalty.Of(time);
            return sum >= limit ? TooDear : sum;
        }
    }

    /// <summary>
    /// What a change costs at least, from running sums: tardiness is convex in a shift, so that a part of the sequence that is shifted
    /// costs no less than its tangent says. With breaks that holds of later shifts alone, as time passes no slower than attended time.
    /// </summary>
    private long AtLeast(int keep, ReadOnlySpan<Piece> pieces, int tail)
    {
        unchecked
        {
            var (time, sum, before) = (finish[keep], cost[keep], Jobs[keep]);
            foreach (var piece in pieces)
            {
                if (piece.Of == this)
                {
                    sum += Shifted(piece.From, piece.To, before, ref time);
                    before = Jobs[piece.To];
                    continue;
                }
                var jobs = piece.Of.Jobs;
                for (var place = piece.From; place <= piece.To; place++)
                {
                    var job = jobs[place];
                    if (numbers[job].Seconds < 0)
                        return TooDear;
                    sum += Follow(before, job, ref time);
                    before = job;
                }
            }
            if (tail <= Count)
                sum += Shifted(tail, Count, before, ref time);
            return sum + Penalty.Of(time);
        }
    }

    private long Shifted(int from, int to, int before, ref long time)
    {
        unchecked
        {
            var first = Jobs[from];
            var change = setUp[(before * width) + first] - setUp[(Jobs[from - 1] * width) + first];
            var shift = time + setUp[(before * width) + first] - (finish[from] - numbers[first].Seconds);
            var part = cost[to] - cost[from - 1] + (numbers[first].SetUpRate * change);
            if (axis is not null && shift < 0)
            {
                part = ownCost[to] - ownCost[from - 1] + (numbers[first].SetUpRate * change);
                time = finish[to] + shift;
            }
            else if (shift < 0 || waits[to] == waits[from - 1])
            {
                part += shift * (lateWeight[to] - lateWeight[from - 1]);
                time = finish[to] + shift;
            }
            else
            {
                time = finish[to];
            }
            return Math.Max(part, 0);
        }
    }

    private void Sum(int from)
    {
        unchecked
        {
            for (var place = from; place <= Count; place++)
            {
                var (before, job) = (Jobs[place - 1], Jobs[place]);
                ref readonly var next = ref numbers[job];
                var free = finish[place - 1] + setUp[(before * width) + job];
                var time = finish[place - 1];
                cost[place] = cost[place - 1] + Follow(before, job, ref time);
                finish[place] = time;
                ownCost[place] = ownCost[place - 1] + next.WorkCost + (next.SetUpRate * (free - finish[place - 1]));
                lateWeight[place] = lateWeight[place - 1] + (TimeOf(time) > next.Due ? next.Weight : 0);
                waits[place] = waits[place - 1] + (next.Release >= free && next.Release > finish[0] ? 1 : 0);
            }
            Work += Count - from + 10;
            Total = cost[Count] + Penalty.Of(finish[Count]);
        }
    }
}
