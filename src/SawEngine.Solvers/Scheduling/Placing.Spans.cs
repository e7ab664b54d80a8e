using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <content>Attended work, in spans between breaks, blade changes and crane loads.</content>
internal ref partial struct Placing
{
    private readonly bool NeedsCrane => work.HasCraneLoads && resources is not null && resources.HasCrane(clock.Index);

    private readonly bool FitsNow()
    {
        var (window, at) = (state.Window, Math.Max(state.At, release));
        return Find(0, ref window, ref at) && work.Milliseconds <= (Until(window, at) - at) * 1000;
    }

    private bool InOneSpan()
    {
        if (!Open(work.Milliseconds))
            return false;
        Take(work.Steps, work.Milliseconds);
        state.Life -= (long)work.BladeShare;
        Close();
        return true;
    }

    // With blade changes inside, the time that a job needs is known only once it is tried.
    private bool InOneStretch()
    {
        var before = new SawState(state);
        var (setUp, worked, extra, mark) = (setUpSeconds, workSeconds, overtime, resources?.Mark ?? 0);
        record?.Mark();
        while (Open(work.Milliseconds))
        {
            var (window, at) = (state.Window, Until(state.Window, state.At));
            // Hands for a blade change may be free in a later window only.
            if (Steps(false) && state.Window == window)
                return true;
            state.CopyFrom(before);
            (state.Window, state.At) = (window, Math.Max(at, before.At));
            (setUpSeconds, workSeconds, overtime, spanMilliseconds, spanSteps, done, open) = (setUp, worked, extra, 0, 0, 0, false);
            Start = -1;
            resources?.BackTo(mark);
            record?.BackToMark();
        }
        return false;
    }

    private bool Steps(bool mayPause)
    {
        foreach (var run in work.Runs)
            if (!(run.Kind == StepKind.CraneLoad && NeedsCrane ? CraneLoads(run, mayPause) : Run(run, mayPause)))
                return false;
        Close();
        return true;
    }

    private bool Run(StepRun run, bool mayPause)
    {
        for (var left = run.Count; left > 0;)
        {
            if (run.BladeShare > state.Life)
            {
                Close();
                if ((!mayPause && !GoesOnAtOnce(times.Blade * 1000)) || !ChangeWornBlade())
                    return false;
            }
            var taken = run.BladeShare == 0 ? left : (int)Math.Min(left, state.Life / run.BladeShare);
            taken = open ? (int)Math.Min(taken, Room(run.Milliseconds)) : 0;
            if (taken > 0)
            {
                Take(taken, taken * run.Milliseconds);
                state.Life -= taken * run.BladeShare;
                left -= taken;
                continue;
            }
            Close();
            if ((!mayPause && !GoesOnAtOnce(run.Milliseconds)) || !Open(run.Milliseconds))
                return false;
        }
        return true;
    }

    /// <summary>Each has hands and crane to itself, and is a span of its own.</summary>
    private bool CraneLoads(StepRun run, bool mayPause)
    {
        if (spanSteps > 0)
            Close();
        open = false;
        var seconds = SawClock.RoundUp(run.Milliseconds);
        for (var i = 0; i < run.Count; i++)
        {
            var (window, at) = (state.Window, Math.Max(state.At, release));
            if (!FindCrane(seconds, ref window, ref at, out var hands, out var crane) || (!mayPause && !IsSameStretch(window, at)))
                return false;
            if (hands is not null)
                resources!.Book(hands.Busy, clock.Index, at, seconds);
            resources!.Book(crane.Busy, clock.Index, at, seconds);
            record?.Work.Add(new(at, at + seconds, 1, hands?.OperatorId, crane.CraneId));
            CountWork(at, at + seconds);
            CountAttended(at, at + seconds);
            (state.Window, state.At) = (window, at + seconds);
            done++;
        }
        return true;
    }

    private readonly bool IsSameStretch(int window, long at) => done == 0 || (window == state.Window && at <= Until(state.Window, state.At));

    private readonly bool FindCrane(long seconds, ref int window, ref long at, out OperatorHands? hands, out (string CraneId, Timeline Busy) crane)
    {
        crane = default;
        while (FindHands(seconds, ref window, ref at, out hands))
        {
            (crane, var start) = resources!.FirstCrane(clock.Index, at, seconds);
            if (start == at)
                return true;
            at = start;
        }
        return false;
    }

    private readonly bool GoesOnAtOnce(long milliseconds)
    {
        if (state.Window == windows.Length || state.At < windows[state.Window].Start)
            return false;
        var until = Until(state.Window, state.At);
        return state.At < until && milliseconds <= (until - state.At) * 1000;
    }

    private readonly long Room(long milliseconds) =>
        milliseconds == 0 ? int.MaxValue : (((spanUntil - state.At) * 1000) - spanMilliseconds) / milliseconds;

    private void Take(int count, long milliseconds)
    {
        spanSteps += count;
        spanMilliseconds += milliseconds;
        done += count;
    }

    private bool Open(long milliseconds)
    {
        var (window, at) = (state.Window, Math.Max(state.At, release));
        open = Find(milliseconds, ref window, ref at);
        (state.Window, state.At) = (window, at);
        spanUntil = open ? Until(window, at) : at;
        return open;
    }

    private void Close()
    {
        if (!open)
            return;
        open = false;
        var start = state.At;
        state.At += SawClock.RoundUp(spanMilliseconds);
        CountWork(start, state.At);
        CountAttended(start, state.At);
        record?.Work.Add(new(start, state.At, spanSteps));
        (spanMilliseconds, spanSteps) = (0, 0);
    }
}
