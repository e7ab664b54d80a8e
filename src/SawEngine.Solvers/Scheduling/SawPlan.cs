using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A sequence of jobs for every saw, and what follows from it for each job.</summary>
internal sealed class SawPlan
{
    public const long NotScheduled = -1;

    private readonly Shop shop;

    public SawPlan(Shop shop)
    {
        this.shop = shop;
        Sequences = Array.ConvertAll(shop.Saws, _ => new List<int>());
        Finish = new long[shop.Jobs.Length];
        Cost = new Int128[shop.Jobs.Length];
        Array.Fill(Finish, NotScheduled);
    }

    public SawPlan(SawPlan other)
        : this(other.shop) => CopyFrom(other);

    public List<int>[] Sequences { get; }

    /// <summary>Second after the last of each job, or <see cref="NotScheduled"/>.</summary>
    public long[] Finish { get; }

    /// <summary>Cost of saw time of each job.</summary>
    public Int128[] Cost { get; }

    /// <summary>The plan of given sequences; null where they do not fit the calendars.</summary>
    public static SawPlan? Of(Shop shop, IReadOnlyList<int[]> sequences)
    {
        var plan = new SawPlan(shop);
        for (var saw = 0; saw < sequences.Count; saw++)
        {
            var state = shop.NewState(saw);
            foreach (var job in sequences[saw])
            {
                var work = shop.Work[job][saw]!;
                var seconds = shop.Clocks[saw].Place(state, work);
                if (seconds == SawClock.NoRoom)
                    return null;
                plan.Sequences[saw].Add(job);
                (plan.Finish[job], plan.Cost[job]) = (state.At, ScheduleCost.SawTime(work.CostMicrosPerSecond, seconds));
            }
        }
        return plan;
    }

    public void CopyFrom(SawPlan other)
    {
        for (var saw = 0; saw < Sequences.Length; saw++)
        {
            Sequences[saw].Clear();
            Sequences[saw].AddRange(other.Sequences[saw]);
        }
        other.Finish.CopyTo(Finish, 0);
        other.Cost.CopyTo(Cost, 0);
    }

    public Score Score()
    {
        var (unscheduled, makespan) = (0, 0L);
        Int128 cost = 0;
        for (var job = 0; job < Finish.Length; job++)
        {
            unscheduled += Finish[job] == NotScheduled ? 1 : 0;
            makespan = Math.Max(makespan, Finish[job]);
            cost += Cost[job];
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
        return new(unscheduled, cost, finishes, makespan);
    }

    /// <summary>The schedule with all its times; <paramref name="isLeast"/>: no other of the same jobs costs less.</summary>
    public Schedule ToSchedule(string rule, bool isLeast = false)
    {
        var cost = ScheduleCost.Held(Score().CostMicros);
        var (bound, boundRule) = isLeast ? (cost, ScheduleBoundRule.AllSequences) : CostBound.Of(shop, job => Finish[job] != NotScheduled);
        var jobs = new List<ScheduledJob>(shop.Jobs.Length);
        for (var saw = 0; saw < Sequences.Length; saw++)
        {
            var state = shop.NewState(saw);
            foreach (var job in Sequences[saw])
                jobs.Add(Place(saw, state, job, jobs.Count > 0 && jobs[^1].SawId == shop.Saws[saw].SawId ? jobs[^1].Sequence + 1 : 1));
        }
        var left = Enumerable.Range(0, shop.Jobs.Length).Where(job => Finish[job] == NotScheduled);
        return new()
        {
            Jobs = jobs,
            Unscheduled = [.. left.Select(job => new UnscheduledJob(shop.Jobs[job].JobId, Unschedulable.Reason(shop, job)))],
            CostMicros = cost,
            BoundMicros = ScheduleCost.Held(bound),
            BoundRule = boundRule,
            Rule = rule,
        };
    }

    private ScheduledJob Place(int saw, SawState state, int job, int sequence)
    {
        var record = new PlacedJob();
        if (shop.Clocks[saw].Place(state, shop.Work[job][saw]!, record) == SawClock.NoRoom)
            throw new InvalidOperationException($"Job {shop.Jobs[job].JobId} was in the plan and has no room.");
        return new()
        {
            JobId = shop.Jobs[job].JobId,
            SawId = shop.Saws[saw].SawId,
            Sequence = sequence,
            SetUps = record.SetUps,
            Work = record.Work,
        };
    }
}
