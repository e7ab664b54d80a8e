using System.Globalization;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Tests.Features.Shop;

/// <summary>
/// Seconds worked out by hand. Changes of the clock in Europe/Vienna: 2026-10-25 03:00 +02:00 back to 02:00 +01:00, 2027-03-28 02:00 +01:00 on to 03:00 +02:00
/// (Directive 2000/84/EC); in America/New_York: 2026-11-01 02:00 -04:00 back to 01:00 -05:00, 2027-03-14 02:00 -05:00 on to 03:00 -04:00 (15 U.S.C. 260a).
/// </summary>
public sealed class CalendarTests
{
    private const long Hour = 3600;
    private const long Day = 24 * Hour;
    private const string Vienna = "Europe/Vienna";
    private const string NewYork = "America/New_York";

    /// <summary>A start at midnight of the day before a change, and a weekly rule for the day of the change; the change is an hour after the start at the latest.</summary>
    public static TheoryData<string, string, string, int> Changes => new()
    {
        { Vienna, "2026-10-24T00:00:00+02:00", "2026-10-25", 7 },
        { Vienna, "2027-03-27T00:00:00+01:00", "2027-03-28", 5 },
        { NewYork, "2026-10-31T00:00:00-04:00", "2026-11-01", 7 },
        { NewYork, "2027-03-13T00:00:00-05:00", "2027-03-14", 5 },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void Six_hours_by_the_clock_over_a_change_are_five_or_seven(string zone, string start, string sunday, int hours)
    {
        var expected = new TimeWindow(Day, Day + hours * Hour);
        var (clock, day) = (Clock(start, zone), Date(sunday));

        Assert.Equal(expected, new AttendedTime(Calendar() with { Shifts = [Shift<ShiftJson>([Weekday.Sunday], "00:00", "06:00")] }, clock).Shifts[0]);
        Assert.Equal(expected, new AttendedTime(Calendar() with { RecurringShifts = [Recurring(day, "00:00", 360, "RRULE:FREQ=WEEKLY")] }, clock).Shifts[0]);
        Assert.Equal(expected, new AttendedTime(Calendar() with { Overtime = [Shift<OvertimeJson>([Weekday.Sunday], "00:00", "06:00")] }, clock).Overtime[0].Window);
        Assert.Equal(expected, new AttendedTime(Calendar() with { RecurringShifts = [Recurring(day, "00:00", 360, "RRULE:FREQ=WEEKLY") with { CostPerHour = 1 }] }, clock).Overtime[0].Window);
        Assert.Equal(expected, new AttendedTime(Calendar() with { Overtime = [Shift<OvertimeJson>([Weekday.Sunday], "00:00", "06:00")] }, clock).OnShift[0]);
        Assert.Equal(expected, AttendedTime.Down(Saw() with { Maintenance = [Maintained(day, "00:00", 360, "RRULE:FREQ=WEEKLY")] }, clock)[0]);
    }

    /// <summary>A day with a change has 23 or 25 hours.</summary>
    [Theory]
    [MemberData(nameof(Changes))]
    public void The_same_time_of_day_comes_23_or_25_hours_later_over_a_change(string zone, string start, string sunday, int hours)
    {
        var times = new AttendedTime(Calendar() with { RecurringShifts = [Recurring(Date(sunday).AddDays(-1), "12:00", 240, "RRULE:FREQ=DAILY")] }, Clock(start, zone)).Shifts;

        Assert.Equal([12 * Hour, (hours + 30) * Hour, (hours + 54) * Hour], times.Take(3).Select(time => time.Start));
        Assert.All(times.Take(3), time => Assert.Equal(4 * Hour, time.Seconds));
    }

    /// <summary>02:30 is skipped in Vienna: 02:30 to 03:15 lasts from 03:00 on; 01:30 comes twice in New York: 01:30 to 02:30 lasts from the first 01:30 to 02:30, two hours.</summary>
    [Theory]
    [InlineData(Vienna, "2027-03-27T00:00:00+01:00", "2027-03-28", "02:30", 45, 7200, 8100)]
    [InlineData(NewYork, "2026-10-31T00:00:00-04:00", "2026-11-01", "01:30", 60, 5400, 12_600)]
    public void Start_that_the_clock_skips_is_the_first_instant_after_it_and_one_that_it_repeats_the_first_of_the_two(
        string zone, string start, string day, string time, int minutes, int from, int to) =>
        Assert.Equal(
            new TimeWindow(Day + from, Day + to),
            new AttendedTime(Calendar() with { RecurringShifts = [Recurring(Date(day), time, minutes, "RRULE:FREQ=WEEKLY")] }, Clock(start, zone)).Shifts[0]);

    [Fact]
    public void A_calendar_mixes_shifts_of_the_week_and_recurring_ones()
    {
        var calendar = Calendar() with
        {
            Shifts = [Shift<ShiftJson>([Weekday.Monday], "06:00", "14:00")],
            // Every other Monday afternoon from the first one on, but not on the second.
            RecurringShifts = [Recurring(new(2026, 11, 30), "14:00", 240, "RRULE:FREQ=WEEKLY;INTERVAL=2", "EXDATE:20261214T140000")],
        };

        Assert.Equal(
            [new(0, 12 * Hour), new(7 * Day, 7 * Day + 8 * Hour), new(14 * Day, 14 * Day + 8 * Hour), new(21 * Day, 21 * Day + 8 * Hour), new(28 * Day, 28 * Day + 12 * Hour)],
            new AttendedTime(calendar, Monday).Shifts.Take(5));
    }

    [Fact]
    public void A_time_that_began_before_the_plan_reaches_into_it()
    {
        var calendar = Calendar() with { RecurringShifts = [Recurring(new(2026, 11, 29), "22:00", 600, "RRULE:FREQ=WEEKLY")] };

        Assert.Equal([new(0, 2 * Hour), new(6 * Day + 16 * Hour, 7 * Day + 2 * Hour)], new AttendedTime(calendar, Monday).Shifts.Take(2));
    }

    [Fact]
    public void Nothing_begins_on_holidays_and_in_closures_but_what_began_before_goes_on()
    {
        var calendar = Calendar() with
        {
            Shifts = [Shift<ShiftJson>([.. Enum.GetValues<Weekday>()], "06:00", "14:00")],
            RecurringShifts = [Recurring(new(2026, 11, 30), "22:00", 480, "RRULE:FREQ=DAILY")],
            Overtime = [Shift<OvertimeJson>([.. Enum.GetValues<Weekday>()], "15:00", "16:00")],
            Holidays = [new(2026, 12, 1)],
            RecurringHolidays = [new() { FirstDay = new(2025, 12, 3), Recurrence = ["RRULE:FREQ=YEARLY"] }],
            Closures = [new() { FirstDay = new(2026, 12, 5), LastDay = new(2026, 12, 6) }],
        };
        var times = new AttendedTime(calendar, Monday);

        // Monday, its night until Tuesday 06:00; Wednesday, its night; Friday, its night until Saturday 06:00; the next Monday, with no pause at 06:00 after.
        Assert.Equal(
            [new(0, 8 * Hour), new(16 * Hour, Day), new(2 * Day, 2 * Day + 8 * Hour), new(2 * Day + 16 * Hour, 3 * Day), new(4 * Day, 4 * Day + 8 * Hour), new(4 * Day + 16 * Hour, 5 * Day), new(7 * Day, 7 * Day + 8 * Hour)],
            times.Shifts.Take(7));
        Assert.Equal([9 * Hour, 2 * Day + 9 * Hour, 4 * Day + 9 * Hour, 7 * Day + 9 * Hour], times.Overtime.Take(4).Select(overtime => overtime.Window.Start));
    }

    [Fact]
    public void Overtime_lies_beside_shifts_and_at_the_lower_price_where_two_overlap()
    {
        var calendar = Calendar() with
        {
            Shifts = [Shift<ShiftJson>([Weekday.Monday], "06:00", "14:00")],
            Overtime = [Shift<OvertimeJson>([Weekday.Monday], "12:00", "20:00") with { CostPerHour = 36 }, Shift<OvertimeJson>([Weekday.Monday], "16:00", "18:00") with { CostPerHour = 18 }],
        };
        var times = new AttendedTime(calendar, Monday);

        Assert.Equal([new(0, 8 * Hour)], times.Shifts.Take(1));
        // 36 an hour are 10,000 millionths a second.
        Assert.Equal(
            [new(new(8 * Hour, 10 * Hour), 10_000), new(new(10 * Hour, 12 * Hour), 5_000), new(new(12 * Hour, 14 * Hour), 10_000)],
            times.Overtime.Take(3));
        Assert.Equal(new TimeWindow(0, 14 * Hour), times.OnShift[0]);
    }

    [Fact]
    public void Breaks_of_overtime_are_cut_out()
    {
        var overtime = Shift<OvertimeJson>([Weekday.Monday], "06:00", "10:00") with { Breaks = [new() { Start = Time("08:00"), End = Time("08:30") }] };

        Assert.Equal([new(0, 2 * Hour), new(2 * Hour + 1800, 4 * Hour)], new AttendedTime(Calendar() with { Overtime = [overtime] }, Monday).Overtime.Take(2).Select(one => one.Window));
    }

    private static PlanClock Monday { get; } = Clock("2026-11-30T06:00:00+01:00", Vienna);

    private static CalendarJson Calendar() => new() { CalendarId = "c", Shifts = [] };

    private static SawJson Saw() => new() { SawId = "s", Capacity = new() { Round = 100, Width = 100, Height = 100 }, Tail = 0, CalendarId = "c" };

    private static T Shift<T>(Weekday[] days, string start, string end) where T : ShiftJson => typeof(T) == typeof(OvertimeJson)
        ? (T)(ShiftJson)new OvertimeJson { Days = days, Start = Time(start), End = Time(end), CostPerHour = 1 }
        : (T)new ShiftJson { Days = days, Start = Time(start), End = Time(end) };

    private static RecurringShiftJson Recurring(DateOnly day, string start, int minutes, params string[] lines) =>
        new() { FirstDay = day, Start = Time(start), Minutes = minutes, Recurrence = lines };

    private static MaintenanceJson Maintained(DateOnly day, string start, int minutes, params string[] lines) =>
        new() { FirstDay = day, Start = Time(start), Minutes = minutes, Recurrence = lines };

    private static PlanClock Clock(string start, string zone) => PlanClock.Of(DateTimeOffset.Parse(start, CultureInfo.InvariantCulture), zone);

    private static DateOnly Date(string text) => DateOnly.Parse(text, CultureInfo.InvariantCulture);

    private static TimeOnly Time(string text) => TimeOnly.Parse(text, CultureInfo.InvariantCulture);
}
