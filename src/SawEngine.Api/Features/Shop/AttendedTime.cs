using NodaTime;
using NodaTime.TimeZones;
using SawEngine.Api.Features.Plans;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Shop;

/// <summary>
/// When a saw is attended, in whole seconds since the start of the plan: shifts less their breaks, on working days, less downtimes.
/// A local time that a change of the clock skips counts as the first instant after it, one that it repeats as the first of the two;
/// so shifts that touch on the clock touch in time, and a shift over the change is an hour shorter or longer.
/// </summary>
public static class AttendedTime
{
    /// <summary>How far calendars are worked out.</summary>
    public const int HorizonDays = 400;

    private static readonly ZoneLocalMappingResolver Resolver =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter);

    /// <summary>The windows of a calendar: ascending, disjoint, not touching, none before the start of the plan, none after the horizon.</summary>
    public static IReadOnlyList<TimeWindow> Of(CalendarJson calendar, PlanClock clock)
    {
        var firstDay = Instant.FromDateTimeOffset(clock.Start).InZone(clock.Zone).Date;
        var holidays = calendar.Holidays.Select(LocalDate.FromDateOnly).ToHashSet();
        return Union(Enumerable.Range(0, HorizonDays + 1)
            .Select(firstDay.PlusDays)
            .Where(day => !holidays.Contains(day))
            .SelectMany(day => calendar.Shifts.Where(shift => WorkedOn(shift, day)).SelectMany(shift => Attended(shift, day)))
            .Select(span => new TimeWindow(
                Math.Max(0, clock.SecondsAfter(At(span.Start))),
                Math.Min(HorizonDays * (long)NodaConstants.SecondsPerDay, clock.SecondsBefore(At(span.End))))));

        DateTimeOffset At(LocalDateTime local) => clock.Zone.ResolveLocal(local, Resolver).ToDateTimeOffset();
    }

    /// <summary>The windows that downtimes leave.</summary>
    public static IReadOnlyList<TimeWindow> Without(IReadOnlyList<TimeWindow> windows, IEnumerable<DowntimeJson> downtimes, PlanClock clock) =>
        Subtract(windows, Union(downtimes.Select(downtime => new TimeWindow(clock.SecondsBefore(downtime.Start), clock.SecondsAfter(downtime.End)))));

    private static bool WorkedOn(ShiftJson shift, LocalDate day) => shift.Days.Any(weekday => (int)weekday + 1 == (int)day.DayOfWeek);

    /// <summary>The shift without its breaks.</summary>
    private static IEnumerable<(LocalDateTime Start, LocalDateTime End)> Attended(ShiftJson shift, LocalDate day)
    {
        var from = shift.Start.AsStart();
        foreach (var pause in shift.Breaks.OrderBy(pause => pause.Start))
        {
            yield return (OnDay(from), OnDay(pause.Start.AsStart()));
            from = pause.End.AsEnd();
        }
        yield return (OnDay(from), OnDay(shift.End.AsEnd()));

        LocalDateTime OnDay(TimeSpan sinceMidnight) => day.AtMidnight().PlusTicks(sinceMidnight.Ticks);
    }

    /// <summary>Windows that overlap or touch become one; empty ones go.</summary>
    private static List<TimeWindow> Union(IEnumerable<TimeWindow> windows)
    {
        var merged = new List<TimeWindow>();
        foreach (var window in windows.Where(window => window.End > window.Start).OrderBy(window => window.Start).ThenBy(window => window.End))
        {
            if (merged.Count > 0 && window.Start <= merged[^1].End)
                merged[^1] = merged[^1] with { End = Math.Max(merged[^1].End, window.End) };
            else
                merged.Add(window);
        }
        return merged;
    }

    private static List<TimeWindow> Subtract(IReadOnlyList<TimeWindow> windows, List<TimeWindow> holes)
    {
        var left = new List<TimeWindow>();
        var next = 0;
        foreach (var window in windows)
        {
            while (next < holes.Count && holes[next].End <= window.Start)
                next++;
            var from = window.Start;
            for (var i = next; i < holes.Count && holes[i].Start < window.End; i++)
            {
                if (holes[i].Start > from)
                    left.Add(new(from, holes[i].Start));
                from = Math.Max(from, holes[i].End);
            }
            if (from < window.End)
                left.Add(new(from, window.End));
        }
        return left;
    }
}
