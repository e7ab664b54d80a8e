using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Builds a plan job by job: the saw that is free first asks, its most urgent job goes next. The job runs on the saw that asked, or
/// on the one where it is done first.
/// </summary>
internal sealed class Dispatching
{
    private readonly Shop shop;
    private readonly Priority priority;
    private readonly bool onQuickestSaw;
    private readonly SawPlan plan;
    private readonly SawState[] states;
    private readonly SawState[] trials;
    private readonly long[] trialSeconds;
    private readonly List<int> pending;
    private readonly bool[][] open;
    private readonly int[] openJobs;

    private Dispatching(Shop shop, Priority priority, bool onQuickestSaw)
    {
        this.shop = shop;
        this.priority = priority;
        this.onQuickestSaw = onQuickestSaw;
        plan = new(shop);
        states = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        trials = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        trialSeconds = new long[shop.Saws.Length];
        pending = [.. Enumerable.Range(0, shop.Jobs.Length)];
        open = Array.ConvertAll(shop.Work, options => Array.ConvertAll(options, work => work is not null));
        openJobs = [.. Enumerable.Range(0, shop.Saws.Length).Select(saw => open.Count(job => job[saw]))];
    }

    public static SawPlan Run(Shop shop, Priority priority, bool onQuickestSaw)
    {
        var dispatching = new Dispatching(shop, priority, onQuickestSaw);
        for (var saw = dispatching.FreeFirst(); saw >= 0; saw = dispatching.FreeFirst())
            dispatching.Dispatch(saw);
        return dispatching.plan;
    }

    private int FreeFirst()
    {
        var (best, earliest) = (-1, long.MaxValue);
        for (var saw = 0; saw < states.Length; saw++)
        {
            if (openJobs[saw] == 0)
                continue;
            var free = shop.Clocks[saw].NextAttended(states[saw]);
            if (free < earliest)
                (best, earliest) = (saw, free);
        }
        return best;
    }

    private void Dispatch(int saw)
    {
        var job = MostUrgent(saw);
        var target = onQuickestSaw ? QuickestSaw(job) : Try(job, saw) ? saw : -1;
        if (target < 0)
            return;
        (states[target], trials[target]) = (trials[target], states[target]);
        plan.Sequences[target].Add(job);
        plan.Finish[job] = states[target].At;
        plan.Cost[job] = ScheduleCost.SawTime(shop.Work[job][target]!.CostMicrosPerSecond, trialSeconds[target]);
        for (var other = 0; other < states.Length; other++)
            Close(job, other);
        pending.Remove(job);
    }

    private int MostUrgent(int saw)
    {
        var now = shop.Clocks[saw].NextAttended(states[saw]);
        var (best, bestWait, bestUrgency) = (-1, 0L, (Int128)0);
        foreach (var job in pending)
        {
            if (!open[job][saw])
                continue;
            var work = shop.Work[job][saw]!;
            var setUp = SetUpRules.Seconds(states[saw].SetUp, work.SetUp, shop.Saws[saw].SetUpTimes);
            var wait = Math.Max(0, work.Release - now - setUp);
            if (best >= 0 && wait > bestWait)
                continue;
            var urgency = priority.Of(job, work, now, setUp);
            if (best < 0 || wait < bestWait || urgency > bestUrgency || (urgency == bestUrgency && shop.Due[job] < shop.Due[best]))
                (best, bestWait, bestUrgency) = (job, wait, urgency);
        }
        return best;
    }

    private int QuickestSaw(int job)
    {
        var best = -1;
        for (var saw = 0; saw < states.Length; saw++)
            if (open[job][saw] && Try(job, saw) && (best < 0 || trials[saw].At < trials[best].At))
                best = saw;
        return best;
    }

    /// <summary>Whether the job has room; a saw without room is closed to it, as later there will be less.</summary>
    private bool Try(int job, int saw)
    {
        trials[saw].CopyFrom(states[saw]);
        trialSeconds[saw] = shop.Clocks[saw].Place(trials[saw], shop.Work[job][saw]!);
        if (trialSeconds[saw] != SawClock.NoRoom)
            return true;
        Close(job, saw);
        return false;
    }

    private void Close(int job, int saw)
    {
        if (!open[job][saw])
            return;
        open[job][saw] = false;
        openJobs[saw]--;
    }
}
