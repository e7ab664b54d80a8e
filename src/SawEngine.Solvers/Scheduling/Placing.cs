using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Finds the times of one job on one saw.</summary>
internal ref partial struct Placing
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
}
