using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A plan and what can be done to it: each change is tried on the tails of the saws it touches, and kept only where it helps.</summary>
internal sealed class PlanMoves
{
    private readonly Shop shop;
    private readonly SawPlan plan;
    private readonly WorkMeter meter;
    private readonly List<SawState>[] before; // state of each saw before its n-th job
    private readonly SawState[] trials;
    private readonly List<(int Job, long Finish, Int128 Cost)> undo = [];
    private readonly List<int> trial = [];

    public PlanMoves(Shop shop, SawPlan plan, WorkMeter meter)
    {
        this.shop = shop;
        this.plan = plan;
        this.meter = meter;
        before = Array.ConvertAll(shop.Saws, _ => new List<SawState>());
        trials = [.. Enumerable.Range(0, shop.Saws.Length).Select(shop.NewState)];
        for (var saw = 0; saw < before.Length; saw++)
            Replay(saw);
        Score = plan.Score();
    }

    public SawPlan Plan => plan;

    public Score Score { get; private set; }

    public bool Stopped => meter.Stopped;

    public int Jobs => shop.Jobs.Length;

    /// <summary>Moves a job, or schedules one that was left out, where that helps most; answers whether it did.</summary>
    public bool MoveToBestPlace(int job)
    {
        var (home, place) = Find(job);
        var rest = home < 0 ? [] : plan.Sequences[home].FindAll(other => other != job);
        Set(job, SawPlan.NotScheduled, 0);
        var homeFits = home < 0 || Tail(home, place, rest);
        var (best, bestSaw, bestPlace) = (Score, -1, -1);
        for (var saw = 0; saw < before.Length; saw++)
        {
            if (shop.Work[job][saw] is null || (saw != home && !homeFits))
                continue;
            trial.Clear();
            trial.Add(job);
            trial.AddRange(saw == home ? rest : plan.Sequences[saw]);
            for (var at = 0; at < trial.Count; at++)
            {
                if (at > 0)
                    (trial[at - 1], trial[at]) = (trial[at], trial[at - 1]);
                if (saw == home && at == place)
                    continue;
                if (Try(saw, saw == home ? Math.Min(at, place) : at) is { } score && score.CompareTo(best) < 0)
                    (best, bestSaw, bestPlace) = (score, saw, at);
            }
        }
        UndoTo(0);
        if (bestSaw < 0)
            return false;
        if (home >= 0)
            plan.Sequences[home].RemoveAt(place);
        plan.Sequences[bestSaw].Insert(bestPlace, job);
        Accept(home, bestSaw, best);
        return true;
    }

    /// <summary>Exchanges two jobs where that helps; answers whether it did.</summary>
    public bool Exchange(int job, int other)
    {
        var ((saw, place), (otherSaw, otherPlace)) = (Find(job), Find(other));
        if (saw < 0 || otherSaw < 0 || shop.Work[job][otherSaw] is null || shop.Work[other][saw] is null)
            return false;
        var (sequence, otherSequence) = (plan.Sequences[saw], plan.Sequences[otherSaw]);
        (sequence[place], otherSequence[otherPlace]) = (other, job);
        var fits = saw == otherSaw
            ? Tail(saw, Math.Min(place, otherPlace), sequence)
            : Tail(saw, place, sequence) && Tail(otherSaw, otherPlace, otherSequence);
        var score = plan.Score();
        UndoTo(0);
        if (fits && score.CompareTo(Score) < 0)
        {
            Accept(saw, otherSaw, score);
            return true;
        }
        (sequence[place], otherSequence[otherPlace]) = (job, other);
        return false;
    }

    /// <summary>Takes jobs out of the plan; answers whether the others still fit. Where not, only <see cref="Restore"/> helps.</summary>
    public bool TakeOut(IReadOnlyList<int> jobs)
    {
        var fits = true;
        foreach (var job in jobs)
        {
            var (saw, place) = Find(job);
            if (saw < 0)
                continue;
            plan.Sequences[saw].RemoveAt(place);
            Set(job, SawPlan.NotScheduled, 0);
            fits &= Replay(saw);
        }
        undo.Clear();
        Score = plan.Score();
        return fits;
    }

    /// <summary>Goes back to sequences that the plan had before.</summary>
    public void Restore(SawPlan other)
    {
        plan.CopyFrom(other);
        for (var saw = 0; saw < before.Length; saw++)
            Replay(saw);
        undo.Clear();
        Score = plan.Score();
    }

    private (int Saw, int Place) Find(int job)
    {
        for (var saw = 0; saw < before.Length; saw++)
            if (plan.Sequences[saw].IndexOf(job) is >= 0 and var place)
                return (saw, place);
        return (-1, -1);
    }

    private void Accept(int saw, int otherSaw, Score score)
    {
        if (saw >= 0)
            Replay(saw);
        if (otherSaw != saw)
            Replay(otherSaw);
        undo.Clear();
        Score = score;
    }

    private bool Replay(int saw)
    {
        var (sequence, states) = (plan.Sequences[saw], before[saw]);
        if (states.Count == 0)
            states.Add(shop.NewState(saw));
        for (var place = 0; place < sequence.Count; place++)
        {
            if (states.Count == place + 1)
                states.Add(new(states[place]));
            states[place + 1].CopyFrom(states[place]);
            if (!Place(saw, states[place + 1], sequence[place]))
                return false;
        }
        meter.Count(sequence.Count);
        return true;
    }

    private Score? Try(int saw, int from)
    {
        var mark = undo.Count;
        Score? score = Tail(saw, from, trial) ? plan.Score() : null;
        UndoTo(mark);
        return score;
    }

    private bool Tail(int saw, int from, List<int> sequence)
    {
        trials[saw].CopyFrom(before[saw][from]);
        meter.Count(sequence.Count - from);
        for (var place = from; place < sequence.Count; place++)
            if (!Place(saw, trials[saw], sequence[place]))
                return false;
        return true;
    }

    private bool Place(int saw, SawState state, int job)
    {
        var work = shop.Work[job][saw]!;
        var seconds = shop.Clocks[saw].Place(state, work);
        if (seconds == SawClock.NoRoom)
            return false;
        Set(job, state.At, ScheduleCost.SawTime(work.CostMicrosPerSecond, seconds));
        return true;
    }

    private void Set(int job, long finish, Int128 cost)
    {
        undo.Add((job, plan.Finish[job], plan.Cost[job]));
        (plan.Finish[job], plan.Cost[job]) = (finish, cost);
    }

    private void UndoTo(int mark)
    {
        for (var i = undo.Count - 1; i >= mark; i--)
            (plan.Finish[undo[i].Job], plan.Cost[undo[i].Job]) = (undo[i].Finish, undo[i].Cost);
        undo.RemoveRange(mark, undo.Count - mark);
    }
}
