using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <content>Work that may go on by itself.</content>
internal ref partial struct Placing
{
    private bool UnattendedSteps(UnattendedRuns unattended)
    {
        if (work.Steps == 0)
            return InOneSpan();
        foreach (var run in work.Runs)
        {
            if (run.Kind == StepKind.CraneLoad && NeedsCrane)
            {
                CloseUnattended(unattended);
                if (!CraneLoads(run, true))
                    return false;
                continue;
            }
            for (var left = run.Count; left > 0;)
            {
                var taken = AttendedSteps(run, left);
                if (taken == 0 && !UnattendedStep(run, unattended))
                    return false;
                left -= Math.Max(taken, 1);
            }
        }
        CloseUnattended(unattended);
        return true;
    }

    /// <summary>Goes on with what can be done attended; answers how many steps.</summary>
    private int AttendedSteps(StepRun run, int left)
    {
        if (!open || run.Milliseconds == 0)
            return 0;
        var at = (state.At * 1000) + spanMilliseconds;
        var taken = (int)Math.Min(left, Math.Max(0, AttendedUntil(at) - at) / run.Milliseconds);
        if (run.BladeShare > 0)
            taken = (int)Math.Min(taken, state.Life / run.BladeShare);
        Take(taken, taken * run.Milliseconds);
        state.Life -= taken * run.BladeShare;
        return taken;
    }

    private bool UnattendedStep(StepRun run, UnattendedRuns unattended)
    {
        if (run.BladeShare > state.Life)
        {
            CloseUnattended(unattended);
            if (!ChangeWornBlade())
                return false;
        }
        var from = open ? (state.At * 1000) + spanMilliseconds : Math.Max(state.At, release) * 1000;
        var at = FirstStart(run, from, unattended);
        if (at == long.MaxValue)
            return false;
        if (!open || at != from)
        {
            CloseUnattended(unattended);
            (state.At, open) = (at / 1000, true);
        }
        Count(run, at, unattended);
        Take(1, run.Milliseconds);
        state.Life -= run.BladeShare;
        return true;
    }

    /// <summary>First millisecond from one on at which a step can start: what runs goes on by itself, and what begins is begun by somebody.</summary>
    private readonly long FirstStart(StepRun run, long from, UnattendedRuns unattended)
    {
        if (open && IsCovered(run, from, unattended))
            return from;
        for (; from < long.MaxValue; from = NextStart(from))
            if (AttendedUntil(from) > from && IsCovered(run, from, unattended))
                return from;
        return from;
    }

    private readonly bool IsCovered(StepRun run, long from, UnattendedRuns unattended)
    {
        var (at, finish) = (from, from + run.Milliseconds);
        do
        {
            if (AttendedUntil(at) is var until && until > at)
                at = until;
            else if (UnattendedAt(at, unattended) is >= 0 and var window && MayCount(run, window, finish, unattended))
                at = unattended.Windows[window].End * 1000;
            else
                return false;
        }
        while (at < finish);
        return true;
    }

    /// <summary>First millisecond after one at which the saw begins to be attended.</summary>
    private readonly long NextStart(long from)
    {
        var second = from / 1000;
        for (var window = state.Window; window < windows.Length; window++)
        {
            if (windows[window].Start > second)
                return windows[window].Start * 1000;
            if (attendance is null || windows[window].End <= second)
                continue;
            var free = attendance.NextFree(clock.Index, Math.Max(attendance.FreeUntil(clock.Index, second, windows[window].End), second + 1));
            if (free < windows[window].End)
                return free * 1000;
        }
        return long.MaxValue;
    }

    /// <summary>Until when the saw is attended from a millisecond on; not after it where it is not attended then.</summary>
    private readonly long AttendedUntil(long at)
    {
        for (var window = state.Window; window < windows.Length && windows[window].Start * 1000 <= at; window++)
            if (windows[window].End * 1000 > at)
                return (attendance is null ? windows[window].End : attendance.FreeUntil(clock.Index, at / 1000, windows[window].End)) * 1000;
        return 0;
    }

    private readonly int FirstUnattended() => Math.Max(0, state.Unattended.Window);

    private readonly int UnattendedAt(long at, UnattendedRuns unattended)
    {
        for (var window = FirstUnattended(); window < unattended.Windows.Count && unattended.Windows[window].Start * 1000 <= at; window++)
            if (unattended.Windows[window].End * 1000 > at)
                return window;
        return -1;
    }

    private readonly bool MayCount(StepRun run, int window, long finish, UnattendedRuns unattended)
    {
        var (_, bars, cuts) = CountsOf(window);
        var allowed = run.Kind switch
        {
            StepKind.Cut => cuts < unattended.Cuts,
            StepKind.Load => bars < unattended.Bars,
            _ => false,
        };
        var longest = unattended.LongestSeconds;
        var start = unattended.Windows[window].Start;
        return allowed && (longest >= long.MaxValue / 1000 - start || Math.Min(finish, unattended.Windows[window].End * 1000) <= (start + longest) * 1000);
    }

    private readonly (int Window, int Bars, int Cuts) CountsOf(int window) => state.Unattended.Window == window ? state.Unattended : (window, 0, 0);

    private readonly void Count(StepRun run, long at, UnattendedRuns unattended)
    {
        var finish = at + run.Milliseconds;
        for (var window = FirstUnattended(); window < unattended.Windows.Count && unattended.Windows[window].Start * 1000 < finish; window++)
            if (unattended.Windows[window].End * 1000 > at)
            {
                var (_, bars, cuts) = CountsOf(window);
                state.Unattended = run.Kind == StepKind.Load ? (window, bars + 1, cuts) : (window, bars, cuts + 1);
            }
    }

    /// <summary>Ends a span that may have run on by itself; only what was attended counts as such.</summary>
    private void CloseUnattended(UnattendedRuns unattended)
    {
        if (!open)
            return;
        var (start, finish) = (state.At, state.At + SawClock.RoundUp(spanMilliseconds));
        (state.At, open) = (finish, false);
        CountWork(start, finish);
        record?.Work.Add(new(start, finish, spanSteps));
        (spanMilliseconds, spanSteps) = (0, 0);
        var from = start;
        for (var window = FirstThatEndsAfter(start, unattended); from < finish; window++)
        {
            var end = window < unattended.Windows.Count ? Math.Min(finish, unattended.Windows[window].Start) : finish;
            if (end > from)
                CountAttended(from, end);
            from = window < unattended.Windows.Count ? unattended.Windows[window].End : finish;
        }
        while (state.Window < windows.Length && windows[state.Window].End <= finish)
            state.Window++;
    }

    private static int FirstThatEndsAfter(long second, UnattendedRuns unattended)
    {
        var window = 0;
        while (window < unattended.Windows.Count && unattended.Windows[window].End <= second)
            window++;
        return window;
    }
}
