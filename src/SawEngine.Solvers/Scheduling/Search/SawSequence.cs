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

    private readonly SawNumbers numbers;
    private readonly Place[] places; // the one after the last has no job
    private readonly int[] scratch;
    private (int Keep, int Count, long Version) pending;

    public SawSequence(SawNumbers numbers)
    {
        this.numbers = numbers;
        Jobs = new int[numbers.Width];
        scratch = new int[numbers.Width];
        places = new Place[numbers.Width + 1];
        places[0].Finish = numbers.Start;
    }

    /// <summary>What is known of the saw.</summary>
    public SawNumbers Numbers => numbers;

    /// <summary>Place 0 is the saw at its start; after the last is one without a job.</summary>
    public ReadOnlySpan<Place> Places => places;

    /// <summary>Jobs by place.</summary>
    public int[] Jobs { get; }

    public int Count { get; private set; }

    /// <summary>Cost of the jobs, without that of the last finish.</summary>
    public long Cost => places[Count].Cost;

    public long LastFinish => places[Count].Finish;

    /// <summary>Changes with every change; the same number is the same sequence.</summary>
    public long Version { get; private set; }

    /// <summary>Cost and penalty of the last finish.</summary>
    public long Total { get; private set; }

    /// <summary>Work done in judging, in steps of some nanoseconds.</summary>
    public long Work { get; set; }

    /// <summary>What the last finish costs.</summary>
    public FinishPenalty Penalty { get; private set; }

    public bool CanRun(int job) => numbers.Jobs[job].Seconds >= 0;

    public long FinishAt(int place) => places[place].Finish;

    public bool IsLate(int place) => places[place] is { Weight: > 0, Late: > 0 };

    public void Use(FinishPenalty penalty)
    {
        Penalty = penalty;
        Total = Cost + penalty.Of(LastFinish);
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
            return AtLeast(keep, pieces, tail) >= limit ? TooDear : Judge(keep, pieces, tail, limit);
        }
    }

    private long Judge(int keep, ReadOnlySpan<Piece> pieces, int tail, long limit)
    {
        unchecked
        {
            var (time, sum, before) = (places[keep].Finish, places[keep].Cost, Jobs[keep]);
            foreach (var piece in pieces)
            {
                var jobs = piece.Of.Jobs;
                Work += (piece.To - piece.From + 1) >> 1;
                for (var place = piece.From; place <= piece.To; place++)
                {
                    var job = jobs[place];
                    if (!CanRun(job))
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

    /// <summary>Whether the exchange of two neighboring blocks costs less than the sequence as it is; where the second begins, the first ends.</summary>
    public bool IsBetterExchanged(int first, int second, int last) =>
        Judge(first - 1, [new(this, second, last), new(this, first, second - 1)], last + 1, Total) != TooDear;

    /// <summary>Cost of a job after another; time goes on to its finish.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private long Follow(int before, int job, ref long time)
    {
        unchecked
        {
            ref readonly var next = ref numbers.Jobs[job];
            var change = numbers.SetUp[(before * numbers.Width) + job];
            time = Math.Max(time + change, next.Release) + next.Seconds;
            // No branch: whether a job is late is hard to foresee.
            var late = numbers.TimeOf(time) - next.Due;
            return next.WorkCost + (next.SetUpRate * change) + (next.Weight * (late & ~(late >> 63)));
        }
    }

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
                if (time == places[place].Finish)
                {
                    Work += (place - tail) >> 1;
                    sum += Cost - places[place].Cost;
                    time = LastFinish;
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
            var (time, sum, before) = (places[keep].Finish, places[keep].Cost, Jobs[keep]);
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
                    if (!CanRun(job))
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
            ref readonly var first = ref places[from];
            ref readonly var last = ref places[to];
            ref readonly var kept = ref places[from - 1];
            var change = numbers.SetUp[(before * numbers.Width) + first.Job];
            var shift = time + change - first.Start;
            var own = last.OwnCost - kept.OwnCost + (numbers.Jobs[first.Job].SetUpRate * (change - first.SetUp));
            if (shift > 0 && last.Waits != kept.Waits)
                shift = 0;
            time = last.Finish + shift;
            var late = numbers.HasBreaks && shift < 0 ? 0 : last.LateCost - kept.LateCost + (shift * (last.LateWeight - kept.LateWeight));
            return own + (late & ~(late >> 63));
        }
    }

    private void Sum(int from)
    {
        unchecked
        {
            for (var at = from; at <= Count; at++)
            {
                ref readonly var before = ref places[at - 1];
                ref var place = ref places[at];
                var job = Jobs[at];
                ref readonly var next = ref numbers.Jobs[job];
                var setUp = numbers.SetUp[(before.Job * numbers.Width) + job];
                var free = before.Finish + setUp;
                place.Job = job;
                place.SetUp = setUp;
                place.Start = Math.Max(free, next.Release);
                place.Finish = place.Start + next.Seconds;
                place.Weight = next.Weight;
                place.Late = numbers.TimeOf(place.Finish) - next.Due;
                place.OwnCost = before.OwnCost + next.WorkCost + (next.SetUpRate * setUp);
                place.Cost = place.OwnCost + before.LateCost + (place.Late > 0 ? next.Weight * place.Late : 0);
                place.LateWeight = before.LateWeight + (place.Late > 0 ? next.Weight : 0);
                place.Waits = before.Waits + (next.Release >= free && next.Release > numbers.Start ? 1 : 0);
            }
            places[Count + 1] = new() { Start = LastFinish };
            Work += Count - from + 10;
            Total = Cost + Penalty.Of(LastFinish);
        }
    }
}
