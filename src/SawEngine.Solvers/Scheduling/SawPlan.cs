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
        Ahead = new long[shop.Jobs.Length];
        KeepsStart = new bool[shop.Jobs.Length];
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

    /// <summary>How many seconds before its turn each job is timed, with all that are before it on its saw, so that it has hands and cranes before others.</summary>
    public long[] Ahead { get; }

    /// <summary>Whether each job waits for the start that it has in the earlier schedule.</summary>
    public bool[] KeepsStart { get; }

    /// <summary>Start of the work of each job that is scheduled.</summary>
    public long[] Start { get; }

    /// <summary>Second after the last of each job, or <see cref="NotScheduled"/>.</summary>
    public long[] Finish { get; }

    /// <summary>Cost of each job but for promises and the makespan.</summary>
    public Int128[] Cost { get; }

    /// <summary>The plan of a schedule of the same jobs, timed again; overtime is worked where something is done in it.</summary>
    public static SawPlan Of(Shop shop, Schedule schedule)
    {
        var plan = new SawPlan(shop);
        var index = Enumerable.Range(0, shop.Jobs.Length).ToDictionary(job => (shop.Jobs[job].JobId, shop.Parts[job].FirstStep));
        for (var saw = 0; saw < shop.Saws.Length; saw++)
        {
            var jobs = schedule.Jobs.Where(job => job.SawId == shop.Saws[saw].SawId).OrderBy(job => job.Sequence).ToList();
            foreach (var job in jobs)
            {
                var at = index[(job.JobId, job.FirstStep)];
                plan.Sequences[saw].Add(at);
                plan.Ahead[at] = job.Ahead;
                plan.KeepsStart[at] = shop.Previous[at]?.Start == job.Start;
            }
            for (var window = 0; window < shop.Saws[saw].Overtime.Count; window++)
                plan.WorkOvertime(saw, window, jobs.Exists(job => IsIn(job, shop.Saws[saw].Overtime[window].Window)));
        }
        new Decoding(shop).Run(plan);
        return plan;
    }

    /// <summary>The same plan, timed, for a shop in which jobs may be split otherwise: where their first part was, all their parts are.</summary>
    public SawPlan In(Shop other)
    {
        var plan = new SawPlan(other);
        var parts = Enumerable.Range(0, other.Jobs.Length).ToLookup(job => other.Jobs[job].JobId, StringComparer.Ordinal);
        for (var saw = 0; saw < Sequences.Length; saw++)
        {
            foreach (var job in Sequences[saw])
            {
                var (own, before) = (parts[shop.Jobs[job].JobId].ToList(), shop.Parts[job]);
                foreach (var one in own)
                    (plan.Ahead[one], plan.KeepsStart[one]) = (Ahead[job], KeepsStart[job]);
                if (own.Count == shop.SplitJobs.GetValueOrDefault(before.Job.JobId, 1))
                    plan.Sequences[saw].Add(own.Find(one => other.Parts[one].FirstStep == before.FirstStep));
                else if (before.FirstStep == 0)
                    plan.Sequences[saw].AddRange(own);
            }
            for (var window = 0; window < OvertimeWorked[saw].Length; window++)
                plan.WorkOvertime(saw, window, OvertimeWorked[saw][window]);
        }
        new Decoding(other).Run(plan);
        return plan;
    }

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
        other.Ahead.CopyTo(Ahead, 0);
        other.KeepsStart.CopyTo(KeepsStart, 0);
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

    /// <summary>Earliest start of a job's work: its release, the start that it keeps, or the last finish of the jobs before it; negative where one of them is not scheduled, or not yet.</summary>
    public long ReleaseOf(int job, SawWork work)
    {
        var release = Math.Max(0, work.Release);
        if (KeepsStart[job] && !shop.IsFrozen(job) && shop.Previous[job] is { } place)
            release = Math.Max(release, place.Start);
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

    private static bool IsIn(ScheduledJob job, TimeWindow window) =>
        job.SetUps.Any(part => part.Start < window.End && window.Start < part.Finish) || job.Work.Any(span => span.Start < window.End && window.Start < span.Finish);

    /// <summary>The schedule with all its times; <paramref name="isLeast"/>: no other of the same jobs costs less.</summary>
    public Schedule ToSchedule(string rule, bool isLeast = false)
    {
        var jobs = Decoding.Record(this);
        var cost = ScheduleCost.Held(Score().CostMicros);
        var (bound, boundRule) = isLeast ? (cost, ScheduleBoundRule.AllSequences) : CostBound.Of(shop, job => Finish[job] != NotScheduled);
        return new()
        {
            Jobs = jobs,
            Unscheduled = [.. Unschedulable.Of(this)],
            CostMicros = cost,
            BoundMicros = ScheduleCost.Held(bound),
            BoundRule = boundRule,
            Rule = rule,
        };
    }
}
