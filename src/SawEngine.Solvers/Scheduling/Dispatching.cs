using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Builds a plan job by job, after the frozen ones: the saw that is free first asks, its most urgent job goes next. The job runs on the saw that asked, or
/// on the one where it is done first.
/// </summary>
internal sealed class Dispatching
{
    private readonly Shop shop;
    private readonly ShopResources? resources;
    private readonly Priority priority;
    private readonly bool onQuickestSaw;
    private readonly SawPlan plan;
    private readonly SawState[] states;
    private readonly SawState[] trials;
    private readonly List<int> pending;
    private readonly bool[][] open;
    private readonly int[] openJobs;
    private readonly bool[] isWaiting;

    private Dispatching(Shop shop, Priority priority, bool onQuickestSaw, bool worksOvertime)
    {
        this.shop = shop;
        this.priority = priority;
        this.onQuickestSaw = onQuickestSaw;
        resources = shop.Resources.Any ? shop.Resources : null;
        resources?.Clear();
        plan = new(shop);
        for (var saw = 0; saw < shop.Saws.Length; saw++)
            for (var window = 0; window < shop.Saws[saw].Overtime.Count; window++)
                plan.WorkOvertime(saw, window, worksOvertime);
        states = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        trials = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        isWaiting = new bool[states.Length];
        pending = [.. Enumerable.Range(0, shop.Jobs.Length).Where(job => !shop.IsFrozen(job))];
        open = Array.ConvertAll(shop.Work, options => Array.ConvertAll(options, work => work is not null));
        openJobs = [.. Enumerable.Range(0, shop.Saws.Length).Select(saw => pending.Count(job => open[job][saw]))];
    }

    public static SawPlan Run(Shop shop, Priority priority, bool onQuickestSaw, bool worksOvertime)
    {
        var dispatching = new Dispatching(shop, priority, onQuickestSaw, worksOvertime);
        dispatching.PlaceFrozen();
        for (var saw = dispatching.FreeFirst(); saw >= 0; saw = dispatching.FreeFirst())
            dispatching.Dispatch(saw);
        return dispatching.plan;
    }

    private void PlaceFrozen()
    {
        var jobs = shop.Frozen.SelectMany((frozen, saw) => frozen.Select(job => (Job: job, Saw: saw))).OrderBy(pair => shop.Jobs[pair.Job].Frozen!.Start);
        foreach (var (job, saw) in jobs)
            if (Try(job, saw) is { } placed)
                Accept(job, saw, placed);
    }

    private int FreeFirst()
    {
        var (best, earliest) = (-1, long.MaxValue);
        for (var saw = 0; saw < states.Length; saw++)
        {
            if (openJobs[saw] == 0 || isWaiting[saw])
                continue;
            var free = FreeFrom(saw);
            if (free < earliest)
                (best, earliest) = (saw, free);
        }
        return best;
    }

    /// <summary>When it is next attended, or free to go on by itself after its last shift.</summary>
    private long FreeFrom(int saw)
    {
        var free = SawClock.NextAttended(plan.Windows(saw), states[saw]);
        return free == long.MaxValue && shop.Saws[saw].Unattended is not null ? states[saw].At : free;
    }

    private void Dispatch(int saw)
    {
        var job = MostUrgent(saw);
        if (job < 0)
        {
            isWaiting[saw] = true;
            return;
        }
        var (target, placed) = onQuickestSaw ? QuickestSaw(job) : (saw, Tried(job, saw));
        if (placed is null)
            return;
        Array.Clear(isWaiting);
        Accept(job, target, Try(job, target)!.Value);
        for (var other = 0; other < states.Length; other++)
            Close(job, other);
        pending.Remove(job);
    }

    private int MostUrgent(int saw)
    {
        var now = FreeFrom(saw);
        var (best, bestWait, bestUrgency) = (-1, 0L, (Int128)0);
        foreach (var job in pending)
        {
            if (!open[job][saw])
                continue;
            var work = shop.Work[job][saw]!;
            var release = plan.ReleaseOf(job, work);
            if (release < 0)
                continue;
            var setUp = shop.SetUpSeconds(saw, states[saw], work);
            var wait = Math.Max(0, release - now - setUp);
            if (best >= 0 && wait > bestWait)
                continue;
            var urgency = priority.Of(job, work, now, setUp);
            if (best < 0 || wait < bestWait || urgency > bestUrgency || (urgency == bestUrgency && shop.Due[job] < shop.Due[best]))
                (best, bestWait, bestUrgency) = (job, wait, urgency);
        }
        return best;
    }

    private (int Saw, Placed? Placed) QuickestSaw(int job)
    {
        var (best, placed) = (-1, (Placed?)null);
        for (var saw = 0; saw < states.Length; saw++)
            if (open[job][saw] && Tried(job, saw) is { } other && (placed is null || other.Finish < placed.Value.Finish))
                (best, placed) = (saw, other);
        return (best, placed);
    }

    /// <summary>Where the job would be placed; a saw without room is closed to it, as later there will be less.</summary>
    private Placed? Tried(int job, int saw)
    {
        var mark = resources?.Mark ?? 0;
        var placed = Try(job, saw);
        resources?.BackTo(mark);
        if (placed is null)
            Close(job, saw);
        return placed;
    }

    private Placed? Try(int job, int saw)
    {
        trials[saw].CopyFrom(states[saw]);
        var work = shop.Work[job][saw]!;
        var mark = resources?.Mark ?? 0;
        var cost = shop.Clocks[saw].Place(plan.Windows(saw), trials[saw], work, plan.ReleaseOf(job, work), resources, out var start);
        if (cost != SawClock.NoRoom)
            return new Placed(start, trials[saw].At, cost);
        resources?.BackTo(mark);
        return null;
    }

    /// <summary>Takes over the last trial on a saw.</summary>
    private void Accept(int job, int saw, Placed placed)
    {
        (states[saw], trials[saw]) = (trials[saw], states[saw]);
        plan.Sequences[saw].Add(job);
        plan.Set(job, saw, placed.Start, placed.Finish, placed.Cost);
    }

    private void Close(int job, int saw)
    {
        if (!open[job][saw])
            return;
        open[job][saw] = false;
        openJobs[saw]--;
    }
}
