using NodaTime;
using NodaTime.TimeZones;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop.Recurrences;
using SawEngine.Api.Wire;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Shop;

/// <summary>
/// A calendar worked out in the zone of the plan, in whole seconds since its start: shifts less their breaks, and overtime, on working days. Nothing is before the
/// start of the plan or after the horizon. A local time that a change of the clock skips counts as the first instant after it, one that it repeats as the first of
/// the two; so shifts that touch on the clock touch in time, and a shift over the change is an hour shorter or longer.
/// </summary>
public sealed class AttendedTime
{
    /// <summary>How far calendars are worked out.</summary>
    public const int HorizonDays = 400;

    /// <summary>What a local time is that a change of the clock skips or repeats.</summary>
    internal static readonly ZoneLocalMappingResolver Resolver =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter);

    private const int DaysOfLongestRecurrence = PlanLimits.RecurrenceMinutes / NodaConstants.MinutesPerDay;

    private readonly PlanClock _clock;
    private readonly IReadOnlyList<LocalDate> _workingDays;
    private readonly HashSet<LocalDate> _holidays;
    private readonly IReadOnlyList<ClosureJson> _closures;

    /// <summary>Works out a calendar.</summary>
    public AttendedTime(CalendarJson calendar, PlanClock clock)
    {
        _clock = clock;
        _closures = calendar.Closures;
        _holidays =
        [
            .. calendar.Holidays.Select(LocalDate.FromDateOnly),
            .. calendar.RecurringHolidays.SelectMany(holiday => Starts(holiday, LocalTime.Midnight, clock)).Select(start => start.Date),
        ];
        var (from, to) = DaysOf(clock);
        _workingDays = [.. Enumerable.Range(0, Period.DaysBetween(from, to) + 1).Select(from.PlusDays).Where(IsWorked)];
        Shifts = TimeSpans.Union(calendar.Shifts.SelectMany(OnWeekdays).Concat(calendar.RecurringShifts.Where(shift => shift.CostPerHour is null).SelectMany(ByRule)));
        Overtime = Beside(
            Shifts,
            calendar.Overtime.Select(overtime => (overtime.CostPerHour, OnWeekdays(overtime)))
                .Concat(calendar.RecurringShifts.Where(shift => shift.CostPerHour is not null).Select(shift => (shift.CostPerHour!.Value, ByRule(shift)))));
        OnShift = TimeSpans.Union(Shifts.Concat(Overtime.Select(overtime => overtime.Window)));
    }

    /// <summary>The shifts: ascending, disjoint, not touching.</summary>
    public IReadOnlyList<TimeWindow> Shifts { get; }

    /// <summary>The overtime beside the shifts: ascending, disjoint; where two overlap, at the lower price.</summary>
    public IReadOnlyList<OvertimeWindow> Overtime { get; }

    /// <summary>Both: ascending, disjoint, not touching.</summary>
    public IReadOnlyList<TimeWindow> OnShift { get; }

    /// <summary>When a saw cannot run, in downtimes and maintenance: ascending, disjoint.</summary>
    public static IReadOnlyList<TimeWindow> Down(SawJson saw, PlanClock clock) => TimeSpans.Union(
        saw.Downtimes.Select(downtime => new TimeWindow(clock.SecondsBefore(downtime.Start), clock.SecondsAfter(downtime.End)))
            .Concat(saw.Maintenance.SelectMany(maintenance => Times(maintenance, clock))
                .Select(time => new TimeWindow(clock.SecondsBefore(clock.At(time.Start)), clock.SecondsAfter(clock.At(time.End))))));

    private static List<OvertimeWindow> Beside(IReadOnlyList<TimeWindow> shifts, IEnumerable<(decimal CostPerHour, IEnumerable<TimeWindow> Windows)> overtime)
    {
        var (taken, found) = (shifts, new List<OvertimeWindow>());
        foreach (var price in overtime.GroupBy(one => one.CostPerHour, one => one.Windows).OrderBy(price => price.Key))
        {
            var windows = TimeSpans.Union(price.SelectMany(one => one));
            found.AddRange(TimeSpans.Without(windows, taken).Select(window => new OvertimeWindow(window, JobOption.MicrosPerSecond(new Money(price.Key)))));
            taken = TimeSpans.Union(taken.Concat(windows));
        }
        return [.. found.OrderBy(window => window.Window.Start)];
    }

    private IEnumerable<TimeWindow> OnWeekdays(ShiftJson shift) =>
        _workingDays.Where(day => shift.Days.Any(weekday => (int)weekday + 1 == (int)day.DayOfWeek)).SelectMany(day => WithoutBreaks(shift, day));

    private IEnumerable<TimeWindow> WithoutBreaks(ShiftJson shift, LocalDate day)
    {
        var from = shift.Start.AsStart();
        foreach (var pause in shift.Breaks.OrderBy(pause => pause.Start))
        {
            yield return Window((OnDay(from), OnDay(pause.Start.AsStart())));
            from = pause.End.AsEnd();
        }
        yield return Window((OnDay(from), OnDay(shift.End.AsEnd())));

        LocalDateTime OnDay(TimeSpan sinceMidnight) => day.AtMidnight().PlusTicks(sinceMidnight.Ticks);
    }

    private IEnumerable<TimeWindow> ByRule(RecurringShiftJson shift) => Times(shift, _clock).Where(time => IsWorked(time.Start.Date)).Select(Window);

    /// <summary>The times of a recurrence that may reach into the plan.</summary>
    private static IEnumerable<(LocalDateTime Start, LocalDateTime End)> Times(RecurringTimeJson recurring, PlanClock clock) =>
        Starts(recurring, LocalTime.FromTicksSinceMidnight(recurring.Start.Ticks), clock).Select(start => (start, start.PlusMinutes(recurring.Minutes)));

    private static IEnumerable<LocalDateTime> Starts(IRecurring recurring, LocalTime start, PlanClock clock)
    {
        var (from, to) = DaysOf(clock);
        return Recurrence.Read(recurring.Recurrence).Starts(LocalDate.FromDateOnly(recurring.FirstDay) + start, from.PlusDays(-DaysOfLongestRecurrence), to, clock.Zone);
    }

    private static (LocalDate From, LocalDate To) DaysOf(PlanClock clock)
    {
        var from = Instant.FromDateTimeOffset(clock.Start).InZone(clock.Zone).Date;
        return (from, from.PlusDays(HorizonDays));
    }

    private bool IsWorked(LocalDate day) =>
        !_holidays.Contains(day) && !_closures.Any(closure => day >= LocalDate.FromDateOnly(closure.FirstDay) && day <= LocalDate.FromDateOnly(closure.LastDay));

    private TimeWindow Window((LocalDateTime Start, LocalDateTime End) time) => new(
        Math.Max(0, _clock.SecondsAfter(_clock.At(time.Start))),
        Math.Min(HorizonDays * (long)NodaConstants.SecondsPerDay, _clock.SecondsBefore(_clock.At(time.End))));
}
