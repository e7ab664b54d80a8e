using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>The times of one saw: the only place where a job gets its seconds.</summary>
/// <param name="saw">The saw.</param>
/// <param name="index">Its index in the shop.</param>
/// <param name="present">When somebody of its team is on shift; null where it has none.</param>
/// <param name="setUps">Its set-up times.</param>
internal sealed class SawClock(ScheduleSaw saw, int index, IReadOnlyList<TimeWindow>? present, SetUpTable setUps)
{
    /// <summary>The answer where a job does not fit in what is left of the calendar.</summary>
    public const long NoRoom = -1;

    public ScheduleSaw Saw => saw;

    public int Index => index;

    public SetUpTable SetUps => setUps;

    /// <summary>Attended time with all overtime.</summary>
    public TimeWindow[] Widest { get; } = AttendedWindows.Of(saw, [.. saw.Overtime.Select(_ => true)], present);

    public static long RoundUp(long milliseconds) => (milliseconds / 1000) + (milliseconds % 1000 > 0 ? 1 : 0);

    public long LongestWindow => Widest.Select(window => window.Seconds).DefaultIfEmpty(0).Max();

    /// <summary>Attended time with the overtime that is worked.</summary>
    public TimeWindow[] Windows(IReadOnlyList<bool> overtimeWorked) => overtimeWorked.All(worked => worked) ? Widest : AttendedWindows.Of(saw, overtimeWorked, present);

    /// <summary>First second at or after the given one at which the saw is attended; <see cref="long.MaxValue"/> where there is none.</summary>
    public static long NextAttended(TimeWindow[] windows, SawState state)
    {
        for (var window = state.Window; window < windows.Length; window++)
            if (windows[window].End > state.At)
                return Math.Max(state.At, windows[window].Start);
        return long.MaxValue;
    }

    /// <summary>
    /// Places a job as early as possible after what the saw has done, and books what it needs. Answers its cost but for promises, or <see cref="NoRoom"/>;
    /// then the state and the bookings are of no use any more.
    /// </summary>
    /// <param name="windows">When the saw is attended.</param>
    /// <param name="state">What the saw has done.</param>
    /// <param name="work">The job.</param>
    /// <param name="release">Its earliest start.</param>
    /// <param name="resources">Operators and cranes; null where there are none or they do not matter.</param>
    /// <param name="start">Start of its work.</param>
    /// <param name="record">Where intervals are written down.</param>
    public Int128 Place(TimeWindow[] windows, SawState state, SawWork work, long release, ShopResources? resources, out long start, PlacedJob? record = null)
    {
        var placing = new Placing(this, windows, state, work, release, resources, record);
        var isPlaced = placing.SetUps() && placing.Work();
        start = placing.Start;
        return isPlaced ? placing.Cost : NoRoom;
    }

    /// <summary>The same clock where bars and cuts by itself share one number: for steps of which it is not known what they are.</summary>
    public SawClock ForAnySteps() => saw.Unattended is not { } runs
        ? this
        : new(saw with { Unattended = runs with { Cuts = (int)Math.Min((long)runs.Bars + runs.Cuts, int.MaxValue) } }, index, present, setUps);

    /// <summary>Finish of the work if it has the saw, all its overtime and a blade that lasts to itself, or <see cref="NoRoom"/>.</summary>
    public long FinishAlone(SetUpState from, SawWork work)
    {
        var state = new SawState(setUps.Of(from), 0, ScheduleSaw.FullBladeLife, []);
        return Place(Widest, state, work.Unhindered() with { Blade = -1 }, work.Release, null, out _) == NoRoom ? NoRoom : state.At;
    }
}
