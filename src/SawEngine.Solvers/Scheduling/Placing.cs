using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Finds the times of one job on one saw.</summary>
internal ref struct Placing
{
    private const int MostParts = 8;

    private readonly SawClock clock;
    private readonly ScheduleSaw saw;
    private readonly SetUpTimes times;
    private readonly TimeWindow[] windows;
    private readonly SawState state;
    private readonly SawWork work;
    private readonly long release;
    private readonly ShopResources? resources;
    private readonly Attendance? attendance;
    private readonly PlacedJob? record;
    private long spanUntil;
    private long spanMilliseconds;
    private int spanSteps;
    private int done;
    private bool open;
    private long setUpSeconds;
    private long workSeconds;
    private Int128 overtime;

    public Placing(SawClock clock, TimeWindow[] windows, SawState state, SawWork work, long release, ShopResources? resources, PlacedJob? record)
    {
        (this.clock, saw, times) = (clock, clock.Saw, clock.Saw.SetUpTimes);
        (this.windows, this.state, this.work, this.release) = (windows, state, work, release);
        (this.resources, attendance, this.record) = (resources, resources?.TeamOf(clock.Index)?.Attendance, record);
    }

    /// <summary>Start of the first step.</summary>
    public long Start { get; private set; } = -1;

    public readonly Int128 Cost =>
        ScheduleCost.SawTime(work.CostMicrosPerSecond, workSeconds) + ScheduleCost.SawTime(work.SetUpCostMicrosPerSecond, setUpSeconds) + overtime;

    public bool SetUps()
    {
        if (!work.IsRunning && !Parts())
            return false;
        state.SetUpFor(work);
        return true;
    }

    public bool Work()
    {
        // A blade that cannot make the very first cut is changed with the set-up, before the release if need be.
        if (work.Runs.Length > 0 && work.Runs[0].BladeShare > state.Life && !ChangeWornBlade())
            return false;
        if (work.MayRunUnattended && saw.Unattended is { } unattended)
            return UnattendedSteps(unattended);
        if (work.BladeShare <= state.Life && !NeedsCrane && (!work.MayPause || work.Milliseconds == 0 || FitsNow()))
            return InOneSpan();
        return work.MayPause ? Steps(true) : InOneStretch();
    }

    private readonly bool NeedsCrane => work.HasCraneLoads && resources is not null && resources.HasCrane(clock.Index);

    // Those that follow one another, and those beside them from the moment the saw is free.
    private bool Parts()
    {
        var (free, window) = (state.At, state.Window);
        var table = clock.SetUps;
        var count = 0;
        Span<TimeWindow> parts = stackalloc TimeWindow[MostParts];
        for (var kind = 0; kind < table.Kinds.Length; kind++)
        {
            var seconds = table.Seconds(kind, state.SetUp, work.SetUpNumbers);
            var mounted = (long?)null;
            if (table.Kinds[kind] == SetUpRules.Blade && work.Blade >= 0 && work.Blade != state.Blade)
                mounted = Mount(work.Blade, seconds);
            if (seconds == 0)
                continue;
            var beside = table.Beside[kind];
            var (partWindow, at) = beside ? (window, free) : (state.Window, state.At);
            if (!Part(table.Kinds[kind], seconds, mounted, ref partWindow, ref at))
                return false;
            parts[count++] = new(at - seconds, at);
            if (!beside)
                (state.Window, state.At) = (partWindow, at);
        }
        Settle(parts[..count]);
        return true;
    }

    // A change that takes no time is not told, so the blade can only be the one that was there before.
    private readonly long Mount(int blade, long seconds)
    {
        if (seconds > 0)
            state.Mount(blade, work.BladeShare);
        else
            state.MountLast(blade);
        return state.Life;
    }

    /// <summary>Counts the time of parts, those at the same time once, and goes on after the last.</summary>
    private void Settle(scoped Span<TimeWindow> parts)
    {
        if (parts.Length > 1)
            parts.Sort(static (one, other) => one.Start.CompareTo(other.Start));
        var until = long.MinValue;
        foreach (var part in parts)
        {
            var start = Math.Max(part.Start, until);
            if (part.End <= start)
                continue;
            setUpSeconds += part.End - start;
            CountAttended(start, part.End);
            until = part.End;
        }
        if (until > state.At)
            state.At = until;
    }

    private void CountWork(long start, long finish)
    {
        Start = Start < 0 ? start : Start;
        workSeconds += finish - start;
    }

    private void CountAttended(long start, long finish)
    {
        if (saw.Overtime.Count > 0)
            CountOvertime(start, finish);
        if (attendance is not null)
            resources!.Attend(clock.Index, start, finish);
    }

    private void CountOvertime(long start, long finish)
    {
        foreach (var (window, cost) in saw.Overtime)
            if (window.Start < finish && start < window.End)
                overtime += ScheduleCost.SawTime(cost, Math.Min(window.End, finish) - Math.Max(window.Start, start));
    }

    private bool ChangeWornBlade()
    {
        state.Mount(-1, RestShare());
        var (window, at) = (state.Window, state.At);
        if (!Part(SetUpRules.BladeWorn, times.Blade, state.Life, ref window, ref at))
            return false;
        (state.Window, state.At) = (window, at);
        setUpSeconds += times.Blade;
        CountAttended(at - times.Blade, at);
        return true;
    }

    private readonly Int128 RestShare()
    {
        var (rest, skip) = ((Int128)0, done);
        foreach (var run in work.Runs)
        {
            var left = Math.Max(0, run.Count - skip);
            skip = Math.Max(0, skip - run.Count);
            rest += (Int128)run.BladeShare * left;
        }
        return rest;
    }

    /// <summary>A part of a set-up from a moment on; the moment is then its end.</summary>
    private readonly bool Part(string kind, long seconds, long? mountedLife, ref int window, ref long at)
    {
        if (!FindHands(seconds, ref window, ref at, out var hands))
            return false;
        if (hands is not null)
            resources!.Book(hands.Busy, clock.Index, at, seconds);
        record?.SetUps.Add(new(kind, at, at + seconds, hands?.OperatorId, mountedLife));
        at += seconds;
        return true;
    }

    private readonly bool FindHands(long seconds, ref int window, ref long at, out OperatorHands? hands)
    {
        hands = null;
        while (Find(seconds * 1000, ref window, ref at))
        {
            if (resources is null)
                return true;
            (hands, var start) = resources.FirstHands(clock.Index, at, seconds);
            if (start == at)
                return true;
            at = start;
        }
        return false;
    }

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

    /// <summary>First moment from one on from which the saw is attended for a length of time.</summary>
    private readonly bool Find(long milliseconds, ref int window, ref long at)
    {
        for (; window < windows.Length; window++)
        {
            at = Math.Max(at, windows[window].Start);
            while (at < windows[window].End && milliseconds <= (windows[window].End - at) * 1000)
            {
                if (attendance is null)
                    return true;
                var until = attendance.FreeUntil(clock.Index, at, windows[window].End);
                if (until > at && milliseconds <= (until - at) * 1000)
                    return true;
                at = attendance.NextFree(clock.Index, until);
            }
        }
        return false;
    }

    /// <summary>End of the attended stretch.</summary>
    private readonly long Until(int window, long at) =>
        attendance is null ? windows[window].End : attendance.FreeUntil(clock.Index, at, windows[window].End);

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
