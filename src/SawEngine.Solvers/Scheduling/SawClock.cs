using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>The times of one saw: the only place where a job gets its seconds.</summary>
internal sealed class SawClock(ScheduleSaw saw)
{
    /// <summary>The answer where a job does not fit in what is left of the calendar.</summary>
    public const long NoRoom = -1;

    private readonly TimeWindow[] windows = [.. saw.Windows];

    public static long RoundUp(long milliseconds) => (milliseconds / 1000) + (milliseconds % 1000 > 0 ? 1 : 0);

    /// <summary>First second at or after the given one at which the saw is attended; <see cref="long.MaxValue"/> where there is none.</summary>
    public long NextAttended(SawState state)
    {
        for (var window = state.Window; window < windows.Length; window++)
            if (windows[window].End > state.At)
                return Math.Max(state.At, windows[window].Start);
        return long.MaxValue;
    }

    public long LongestWindow => windows.Select(window => window.Seconds).DefaultIfEmpty(0).Max();

    /// <summary>
    /// Places a job as early as possible after what the saw has done. Answers the seconds of set-up and work, or <see cref="NoRoom"/>;
    /// then the state is of no use any more.
    /// </summary>
    public long Place(SawState state, SawWork work, PlacedJob? record = null)
    {
        var placing = new Placing(windows, saw.SetUpTimes.Blade, state, work, record);
        foreach (var kind in SetUpRules.Order)
            if (!placing.SetUp(kind, SetUpRules.Seconds(kind, state.SetUp, work.SetUp, saw.SetUpTimes)))
                return NoRoom;
        state.Mount(work);
        return placing.Work() ? placing.Busy : NoRoom;
    }

    /// <summary>Finish of the work if it has the saw with a new blade to itself, or <see cref="NoRoom"/>.</summary>
    public long FinishAlone(SetUpState from, SawWork work)
    {
        var state = new SawState(from, 0, 1, ScheduleSaw.FullBladeLife);
        return Place(state, work with { Blade = -1 }) == NoRoom ? NoRoom : state.At;
    }

    private ref struct Placing(ReadOnlySpan<TimeWindow> windows, long bladeSeconds, SawState state, SawWork work, PlacedJob? record)
    {
        private readonly ReadOnlySpan<TimeWindow> windows = windows;
        private long spanMilliseconds;
        private int spanSteps;
        private bool open;

        public long Busy { get; private set; }

        public bool SetUp(string kind, long seconds) => seconds == 0 || Part(kind, seconds);

        public bool Work()
        {
            // A blade that cannot make the very first cut is changed with the set-up, before the release if need be.
            if (work.Runs.Length > 0 && work.Runs[0].BladeShare > state.Life && !ChangeWornBlade())
                return false;
            if (work.BladeShare <= state.Life && (!work.MayPause || work.Milliseconds == 0 || FitsNow()))
                return InOneSpan();
            return work.MayPause ? Steps(true) : InOneWindow();
        }

        private readonly bool FitsNow()
        {
            var next = Find(Math.Max(state.At, work.Release), 0);
            return next.Window < windows.Length && Fits(next.Window, next.Start, work.Milliseconds);
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
        private bool InOneWindow()
        {
            var (life, busy) = (state.Life, Busy);
            record?.Mark();
            while (Open(work.Milliseconds))
            {
                if (Steps(false))
                    return true;
                state.At = windows[state.Window].End;
                state.Life = life;
                (Busy, spanMilliseconds, spanSteps, open) = (busy, 0, 0, false);
                record?.BackToMark();
            }
            return false;
        }

        private bool Steps(bool mayPause)
        {
            foreach (var run in work.Runs)
                if (!Run(run, mayPause))
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
                    if (!mayPause && !Fits(state.Window, state.At, bladeSeconds * 1000))
                        return false;
                    if (!ChangeWornBlade())
                        return false;
                }
                var steps = run.BladeShare == 0 ? left : (int)Math.Min(left, state.Life / run.BladeShare);
                steps = open ? (int)Math.Min(steps, Room(run.Milliseconds)) : 0;
                if (steps > 0)
                {
                    Take(steps, steps * run.Milliseconds);
                    state.Life -= steps * run.BladeShare;
                    left -= steps;
                    continue;
                }
                Close();
                if (!mayPause && !Fits(state.Window, state.At, run.Milliseconds))
                    return false;
                if (!Open(run.Milliseconds))
                    return false;
            }
            return true;
        }

        private readonly long Room(long milliseconds) =>
            milliseconds == 0 ? int.MaxValue : (((windows[state.Window].End - state.At) * 1000) - spanMilliseconds) / milliseconds;

        private void Take(int steps, long milliseconds)
        {
            spanSteps += steps;
            spanMilliseconds += milliseconds;
        }

        private bool Open(long milliseconds)
        {
            (state.Window, state.At) = Find(Math.Max(state.At, work.Release), milliseconds);
            return open = state.Window < windows.Length;
        }

        private void Close()
        {
            if (!open)
                return;
            var (start, seconds) = (state.At, RoundUp(spanMilliseconds));
            state.At += seconds;
            Busy += seconds;
            record?.Work.Add(new(start, state.At, spanSteps));
            (spanMilliseconds, spanSteps, open) = (0, 0, false);
        }

        private bool ChangeWornBlade()
        {
            if (!Part(SetUpRules.BladeWorn, bladeSeconds))
                return false;
            state.Life = ScheduleSaw.FullBladeLife;
            return true;
        }

        private bool Part(string kind, long seconds)
        {
            (state.Window, state.At) = Find(state.At, seconds * 1000);
            if (state.Window == windows.Length)
                return false;
            record?.SetUps.Add(new(kind, state.At, state.At + seconds));
            state.At += seconds;
            Busy += seconds;
            return true;
        }

        /// <summary>First window and second from the given one on where a length of time fits.</summary>
        private readonly (int Window, long Start) Find(long from, long milliseconds)
        {
            for (var window = state.Window; window < windows.Length; window++)
            {
                var start = Math.Max(from, windows[window].Start);
                if (Fits(window, start, milliseconds))
                    return (window, start);
            }
            return (windows.Length, from);
        }

        private readonly bool Fits(int window, long start, long milliseconds) =>
            start < windows[window].End && milliseconds <= (windows[window].End - start) * 1000;
    }
}
