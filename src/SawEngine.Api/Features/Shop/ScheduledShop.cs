using NodaTime;
using SawEngine.Api.Features.Plans;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Shop;

/// <summary>A shop as the schedule sees it, from wire to trade; the rules have passed. Lists are by id, ordinal.</summary>
internal sealed class ScheduledShop
{
    private static readonly TimeWindow Horizon = new(0, AttendedTime.HorizonDays * (long)NodaConstants.SecondsPerDay);

    private readonly PlanClock _clock;
    private readonly Dictionary<string, AttendedTime> _calendars;

    /// <summary>The shop from the start of a plan on.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="saws">Its saws as they cut, by id, ordinal.</param>
    /// <param name="clock">The clock of the plan.</param>
    /// <param name="sectionOf">What a section is called in the plan's jobs.</param>
    public ScheduledShop(ShopJson shop, IEnumerable<SawMapping> saws, PlanClock clock, Func<string, string> sectionOf)
    {
        _clock = clock;
        _calendars = Used(shop).ToDictionary(calendar => calendar.CalendarId, calendar => new AttendedTime(calendar, clock), StringComparer.Ordinal);
        var byId = shop.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        IReadOnlyList<string> all = [.. byId.Keys.Order(StringComparer.Ordinal)];
        Saws = [.. saws.Select(saw => WithTimes(ScheduleSaw.Of(saw.Saw, []), byId[saw.Saw.SawId]).WithSetUps(byId[saw.Saw.SawId], sectionOf))];
        Operators =
        [
            .. shop.Operators.OrderBy(one => one.OperatorId, StringComparer.Ordinal)
                .Select(one => new ScheduleOperator(one.OperatorId, _calendars[one.CalendarId].OnShift, Sorted(one.SawIds), one.MostSaws)),
        ];
        Cranes = [.. shop.Cranes.OrderBy(crane => crane.CraneId, StringComparer.Ordinal).Select(crane => new ScheduleCrane(crane.CraneId, Sorted(crane.SawIds)))];

        IReadOnlyList<string> Sorted(IReadOnlyList<string>? sawIds) => sawIds is null ? all : [.. sawIds.Order(StringComparer.Ordinal)];
    }

    /// <summary>The saws.</summary>
    public IReadOnlyList<ScheduleSaw> Saws { get; }

    /// <summary>Who attends them.</summary>
    public IReadOnlyList<ScheduleOperator> Operators { get; }

    /// <summary>What loads heavy bars.</summary>
    public IReadOnlyList<ScheduleCrane> Cranes { get; }

    private static IEnumerable<CalendarJson> Used(ShopJson shop)
    {
        var used = shop.Saws.SelectMany(saw => new[] { saw.CalendarId, saw.Unattended?.CalendarId }).Concat(shop.Operators.Select(one => one.CalendarId)).ToHashSet(StringComparer.Ordinal);
        return shop.Calendars.Where(calendar => used.Contains(calendar.CalendarId));
    }

    private ScheduleSaw WithTimes(ScheduleSaw saw, SawJson json)
    {
        var (calendar, down) = (_calendars[json.CalendarId], AttendedTime.Down(json, _clock));
        return saw with
        {
            Windows = TimeSpans.Without(calendar.Shifts, down),
            Lost = TimeSpans.Without(calendar.Shifts, TimeSpans.Without(calendar.Shifts, down)),
            Overtime = [.. calendar.Overtime.SelectMany(overtime => TimeSpans.Without([overtime.Window], down).Select(window => overtime with { Window = window }))],
            Unattended = json.Unattended is { } runs ? Unattended(runs, TimeSpans.Union(calendar.OnShift.Concat(down))) : null,
        };
    }

    private UnattendedRuns Unattended(UnattendedJson runs, List<TimeWindow> taken) => new(
        TimeSpans.Without(runs.CalendarId is { } calendarId ? _calendars[calendarId].Shifts : [Horizon], taken),
        runs.Bars,
        runs.Cuts,
        runs.Hours is { } hours ? (long)decimal.Floor(hours * ScheduleCost.SecondsPerHour) : long.MaxValue);
}
