using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A sequence of jobs for every saw, the overtime that is worked, and what follows from them for each job. The frozen jobs of a saw are its first.</summary>
internal sealed class SawPlan
{
    public const long NotScheduled = -1;

    private readonly Shop shop;
    private readonly TimeWindow[]?[] windows;

    public SawPlan(Shop shop)
    {
        this.shop = shop;
        Sequences = Array.ConvertAll(shop.Saws, _ => new List<int>());
        OvertimeWorked = Array.ConvertAll(shop.Saws, saw => new bool[saw.Overtime.Count]);
        windows = new TimeWindow[]?[shop.Saws.Length];
        Start = new long[shop.Jobs.Length];
        Finish = new long[shop.Jobs.Length];
        Cost = new Int128[shop.Jobs.Length];
        Array.Fill(Finish, NotScheduled);
    }

    public SawPlan(SawPlan other)
        : this(other.shop) => CopyFrom(other);

    public Shop Shop => shop;

    public List<int>[] Sequences { get; }

    /// <summary>By saw and overtime window.</summary>
    public bool[][] OvertimeWorked { get; }

    /// <summary>Start of the work of each job that is scheduled.</summary>
    public long[] Start { get; }

    /// <summary>Second after the last of each job, or <see cref="NotScheduled"/>.</summary>
    public long[] Finish { get; }

    /// <summary>Cost of each job but for promises and the makespan.</summary>
    public Int128[] Cost { get; }

    /// <summary>How many of a saw's first jobs are frozen.</summary>
    public int FrozenCount(int saw)
    {
        var count = 0;
        while (count < Sequences[saw].Count && shop.IsFrozen(Sequences[saw][count]))
            count++;
        return count;
    }

    /// <summary>When a saw is attended.</summary>
    public TimeWindow[] Windows(int saw) => windows[saw] ??= shop.Clocks[saw].Windows(OvertimeWorked[saw]);

    public void WorkOvertime(int saw, int window, bool isWorked)
    {
        OvertimeWorked[saw][window] = isWorked;
        windows[saw] = null;
    }

    /// <summary>The plan of the same overtime with other sequences of the jobs that are not frozen, timed.</summary>
    public SawPlan With(IReadOnlyList<int[]> sequences)
    {
        var plan = new SawPlan(this);
        for (var saw = 0; saw < sequences.Count; saw++)
        {
            plan.Sequences[saw].RemoveAll(job => !shop.IsFrozen(job));
            plan.Sequences[saw].AddRange(sequences[saw]);
        }
        new Decoding(shop).Run(plan);
        return plan;
    }

    public void CopyFrom(SawPlan other)
    {
        for (var saw = 0; saw < Sequences.Length; saw++)
        {
            Sequences[saw].Clear();
            Sequences[saw].AddRange(other.Sequences[saw]);
            other.OvertimeWorked[saw].CopyTo(OvertimeWorked[saw], 0);
            windows[saw] = other.windows[saw];
        }
        other.Start.CopyTo(Start, 0);
        other.Finish.CopyTo(Finish, 0);
        other.Cost.CopyTo(Cost, 0);
    }

    /// <summary>Notes where a job was placed.</summary>
    public void Set(int job, int saw, long start, long finish, Int128 cost)
    {
        (Start[job], Finish[job], Cost[job]) = (start, finish, cost);
        if (shop.Previous[job] is { } place)
            Cost[job] += ScheduleCost.Moved(shop.Problem.Previous!, place, shop.Saws[saw].SawId, start);
    }

    /// <summary>Earliest start of a job's work: its release, or the last finish of the jobs before it; negative where one of them is not scheduled, or not yet.</summary>
    public long ReleaseOf(int job, SawWork work)
    {
        var release = Math.Max(0, work.Release);
        foreach (var before in shop.Before[job])
        {
            if (Finish[before] == NotScheduled)
                return -1;
            release = Math.Max(release, Finish[before]);
        }
        return release;
    }

    public Score Score()
    {
        var (unscheduled, makespan) = (0, 0L);
        Int128 cost = 0, moved = 0;
        for (var job = 0; job < Finish.Length; job++)
        {
            if (Finish[job] == NotScheduled)
            {
                unscheduled++;
                continue;
            }
            makespan = Math.Max(makespan, Finish[job]);
            cost += Cost[job];
            if (shop.Previous[job] is { } place)
                moved += Math.Abs(Start[job] - place.Start);
        }
        cost += ScheduleCost.SawTime(shop.MakespanCostMicrosPerSecond, makespan);
        Int128 finishes = 0;
        foreach (var delivery in shop.Deliveries)
        {
            var done = NotScheduled;
            foreach (var job in delivery.Jobs)
                done = Math.Max(done, Finish[job]);
            if (done == NotScheduled)
                continue;
            finishes += done;
            if (delivery.Due is { } due && done > due)
                cost += ScheduleCost.Tardiness(delivery.CostMicrosPerHourLate, done - due);
        }
        return new(unscheduled, cost, moved, finishes, makespan);
    }

    /// <summary>The schedule with all its times; <paramref name="isLeast"/>: no other of the same jobs costs less.</summary>
    public Schedule ToSchedule(string rule, bool isLeast = false)
    {
        var jobs = Decoding.Record(this);
        var cost = ScheduleCost.Held(Score().CostMicros);
        var (bound, boundRule) = isLeast ? (cost, ScheduleBoundRule.AllSequences) : CostBound.Of(shop, job => Finish[job] != NotScheduled);
        var left = Enumerable.Range(0, shop.Jobs.Length).Where(job => Finish[job] == NotScheduled);
        return new()
        {
            Jobs = jobs,
            Unscheduled = [.. left.Select(job => new UnscheduledJob(shop.Jobs[job].JobId, Unschedulable.Reason(shop, this, job))).DistinctBy(job => job.JobId)],
            CostMicros = cost,
            BoundMicros = ScheduleCost.Held(bound),
            BoundRule = boundRule,
            Rule = rule,
        };
    }
}
