using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Gives the jobs of a plan their times in the order in which the saws can go on, each as early as it can, frozen ones first. What has no room, or
/// waits for a job that is not scheduled, is left out.
/// </summary>
internal sealed class Decoding
{
    private readonly Shop shop;
    private readonly ShopResources? resources;
    private readonly SawState[] states;
    private readonly SawState[] blank;
    private readonly SawState[] before;
    private readonly int[] next;
    private readonly long[] ready;
    private readonly bool[] isPlaced;
    private readonly long[] ahead; // by job: the most of it and of those after it on its saw

    public Decoding(Shop shop)
    {
        this.shop = shop;
        resources = shop.Resources.Any ? shop.Resources : null;
        blank = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        states = [.. blank.Select(state => new SawState(state))];
        before = [.. blank.Select(state => new SawState(state))];
        next = new int[states.Length];
        ready = new long[states.Length];
        isPlaced = new bool[shop.Jobs.Length];
        ahead = new long[shop.Jobs.Length];
    }

    /// <summary>The listed jobs of a plan that has its times, by saw and sequence.</summary>
    public static IReadOnlyList<ScheduledJob> Record(SawPlan plan)
    {
        var recorded = new List<ScheduledJob>[plan.Sequences.Length];
        for (var saw = 0; saw < recorded.Length; saw++)
            recorded[saw] = [];
        new Decoding(plan.Shop).Run(plan, recorded);
        return [.. recorded.SelectMany(jobs => jobs)];
    }

    /// <summary>Times the plan. Jobs that find no room leave their sequence.</summary>
    public void Run(SawPlan plan) => Run(plan, null);

    private void Run(SawPlan plan, List<ScheduledJob>[]? recorded)
    {
        resources?.Clear();
        Array.Clear(next);
        Array.Clear(isPlaced);
        Array.Fill(plan.Finish, SawPlan.NotScheduled);
        for (var saw = 0; saw < states.Length; saw++)
            states[saw].CopyFrom(blank[saw]);
        foreach (var saw in shop.FrozenOrder)
            if (next[saw] < plan.Sequences[saw].Count && shop.IsFrozen(plan.Sequences[saw][next[saw]]))
                Place(plan, saw, recorded);
        for (var saw = 0; saw < states.Length; saw++)
            ready[saw] = SawClock.NextAttended(plan.Windows(saw), states[saw]);
        if (shop.IsCoupled)
            LookAhead(plan);
        else
            for (var saw = 0; saw < states.Length; saw++)
                while (next[saw] < plan.Sequences[saw].Count)
                    Place(plan, saw, recorded);
        for (var saw = NextSaw(plan); saw >= 0; saw = NextSaw(plan))
            Place(plan, saw, recorded);
    }

    private void LookAhead(SawPlan plan)
    {
        foreach (var sequence in plan.Sequences)
            for (var (place, most) = (sequence.Count - 1, 0L); place >= 0; place--)
                ahead[sequence[place]] = most = Math.Max(most, plan.Ahead[sequence[place]]);
    }

    /// <summary>The saw that can go on first, less what its jobs are ahead; where all wait for one another, the first that is not done.</summary>
    private int NextSaw(SawPlan plan)
    {
        var (best, earliest, waiting) = (-1, long.MaxValue, -1);
        for (var saw = 0; saw < next.Length; saw++)
        {
            if (next[saw] >= plan.Sequences[saw].Count)
                continue;
            waiting = waiting < 0 ? saw : waiting;
            var job = plan.Sequences[saw][next[saw]];
            if (ready[saw] - ahead[job] < earliest && AreBeforePlaced(job))
                (best, earliest) = (saw, ready[saw] - ahead[job]);
        }
        return best >= 0 ? best : waiting;
    }

    private bool AreBeforePlaced(int job)
    {
        foreach (var before in shop.Before[job])
            if (!isPlaced[before])
                return false;
        return true;
    }

    private void Place(SawPlan plan, int saw, List<ScheduledJob>[]? recorded)
    {
        var job = plan.Sequences[saw][next[saw]];
        var work = shop.Work[job][saw]!;
        var record = recorded is null ? null : new PlacedJob();
        var mark = resources?.Mark ?? 0;
        before[saw].CopyFrom(states[saw]);
        var release = plan.ReleaseOf(job, work);
        var start = 0L;
        var cost = release < 0 ? SawClock.NoRoom : shop.Clocks[saw].Place(plan.Windows(saw), states[saw], work, release, resources, out start, record);
        isPlaced[job] = true;
        if (cost == SawClock.NoRoom)
        {
            states[saw].CopyFrom(before[saw]);
            resources?.BackTo(mark);
            plan.Sequences[saw].RemoveAt(next[saw]);
            return;
        }
        plan.Set(job, saw, start, states[saw].At, cost);
        next[saw]++;
        ready[saw] = SawClock.NextAttended(plan.Windows(saw), states[saw]);
        recorded?[saw].Add(new()
        {
            JobId = shop.Jobs[job].JobId,
            SawId = shop.Saws[saw].SawId,
            Sequence = next[saw],
            FirstStep = shop.Parts[job].FirstStep,
            Ahead = plan.Ahead[job],
            SetUps = record!.SetUps.Count <= 1 ? record.SetUps : [.. record.SetUps.OrderBy(part => part.Start)],
            Work = record.Work,
        });
    }
}
