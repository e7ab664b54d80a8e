using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Tests.Features.Shop;

/// <summary>
/// Seconds worked out by hand. Changes of the clock in Europe/Vienna: 2026-10-25 03:00 +02:00 back to 02:00 +01:00, 2027-03-28 02:00 +01:00 on to 03:00 +02:00
/// (last Sundays of October and March at 01:00 UTC, Directive 2000/84/EC).
/// </summary>
public sealed class AttendedTimeTests
{
    private const long Hour = 3600;
    private const long Day = 24 * Hour;

    private static readonly Weekday[] WorkingDays = [Weekday.Monday, Weekday.Tuesday, Weekday.Wednesday, Weekday.Thursday, Weekday.Friday];

    [Fact]
    public void Night_shift_over_the_autumn_change_is_an_hour_longer() =>
        Assert.Equal(new TimeWindow(Day, Day + 7 * Hour), First("2026-10-24T00:00:00+02:00", Shift([Weekday.Sunday], "00:00", "06:00")));

    [Fact]
    public void Night_shift_over_the_spring_change_is_an_hour_shorter() =>
        Assert.Equal(new TimeWindow(Day, Day + 5 * Hour), First("2027-03-27T00:00:00+01:00", Shift([Weekday.Sunday], "00:00", "06:00")));

    [Fact]
    public void Morning_after_the_autumn_change_starts_an_hour_later_in_elapsed_time() =>
        Assert.Equal(new TimeWindow(2 * Day + 7 * Hour, 2 * Day + 15 * Hour), First("2026-10-24T00:00:00+02:00", Shift([Weekday.Monday], "06:00", "14:00")));

    [Fact]
    public void Morning_after_the_spring_change_starts_an_hour_earlier_in_elapsed_time() =>
        Assert.Equal(new TimeWindow(2 * Day + 5 * Hour, 2 * Day + 13 * Hour), First("2027-03-27T00:00:00+01:00", Shift([Weekday.Monday], "06:00", "14:00")));

    [Fact]
    public void Time_that_the_clock_skips_counts_as_the_first_instant_after_it() =>
        Assert.Equal(new TimeWindow(Day + 2 * Hour, Day + 2 * Hour + 900), First("2027-03-27T00:00:00+01:00", Shift([Weekday.Sunday], "02:30", "03:15")));

    [Fact]
    public void Shift_that_the_clock_skips_wholly_is_not_worked() =>
        Assert.Equal(new TimeWindow(8 * Day + Hour, 8 * Day + Hour + 1800), First("2027-03-27T00:00:00+01:00", Shift([Weekday.Sunday], "02:00", "02:30")));

    [Fact]
    public void Time_that_the_clock_repeats_counts_as_the_first_of_the_two() =>
        Assert.Equal(new TimeWindow(Day + 2 * Hour + 1800, Day + 7 * Hour), First("2026-10-24T00:00:00+02:00", Shift([Weekday.Sunday], "02:30", "06:00")));

    [Fact]
    public void Shifts_that_touch_at_a_repeated_time_leave_no_gap_and_no_overlap() =>
        Assert.Equal(
            new TimeWindow(Day, Day + 7 * Hour),
            First("2026-10-24T00:00:00+02:00", Shift([Weekday.Sunday], "00:00", "02:30"), Shift([Weekday.Sunday], "02:30", "06:00")));

    [Fact]
    public void Two_shifts_around_midnight_make_one_window() =>
        Assert.Equal(
            new TimeWindow(22 * Hour, 30 * Hour),
            First("2026-11-30T00:00:00+01:00", Shift([Weekday.Monday], "22:00", "00:00"), Shift([Weekday.Tuesday], "00:00", "06:00")));

    [Fact]
    public void Breaks_are_cut_out_in_whatever_order_they_stand()
    {
        var shift = Shift([Weekday.Monday], "06:00", "14:00") with { Breaks = [Break("12:00", "12:30"), Break("09:30", "09:45")] };
        Assert.Equal([new(0, 12_600), new(13_500, 21_600), new(23_400, 28_800)], Windows("2026-11-30T06:00:00+01:00", shift).Take(3));
    }

    [Fact]
    public void Break_at_the_start_of_a_shift_delays_it() =>
        Assert.Equal(new TimeWindow(900, 28_800), First("2026-11-30T06:00:00+01:00", Shift([Weekday.Monday], "06:00", "14:00") with { Breaks = [Break("06:00", "06:15")] }));

    [Fact]
    public void Break_of_one_shift_is_attended_by_a_shift_that_overlaps() =>
        Assert.Equal(
            new TimeWindow(0, 10 * Hour),
            First("2026-11-30T06:00:00+01:00", Shift([Weekday.Monday], "06:00", "14:00") with { Breaks = [Break("10:00", "10:30")] }, Shift([Weekday.Monday], "08:00", "16:00")));

    [Fact]
    public void Nothing_is_attended_before_the_start_of_the_plan() =>
        Assert.Equal(new TimeWindow(0, 4 * Hour), First("2026-11-30T10:00:00+01:00", Shift(WorkingDays, "06:00", "14:00")));

    [Fact]
    public void Fractions_of_a_second_are_cut_from_both_ends() =>
        Assert.Equal(new TimeWindow(1, 3600), First("2026-11-30T11:59:59.500+01:00", Shift(WorkingDays, "12:00", "13:00")));

    [Fact]
    public void Holidays_are_not_worked()
    {
        var windows = new AttendedTime(
            new() { CalendarId = "c", Shifts = [Shift(WorkingDays, "06:00", "14:00")], Holidays = [new(2026, 12, 1)] }, Clock("2026-11-30T06:00:00+01:00")).Shifts;
        Assert.Equal([new(0, 8 * Hour), new(2 * Day, 2 * Day + 8 * Hour)], windows.Take(2));
    }

    [Fact]
    public void Downtimes_are_taken_out_in_whole_seconds()
    {
        var clock = Clock("2026-11-30T06:00:00+01:00");
        IReadOnlyList<TimeWindow> windows = [new(0, 1000), new(2000, 3000), new(4000, 5000)];
        var saw = new SawJson
        {
            SawId = "s",
            Capacity = new() { Round = 100, Width = 100, Height = 100 },
            Tail = 0,
            CalendarId = "c",
            Downtimes = [Down(4500, 9000), Down(100.5, 200.5), Down(900, 2100), Down(150, 300), Down(-500, 10), Down(3200, 3300)],
        };
        var left = TimeSpans.Without(windows, AttendedTime.Down(saw, clock));
        Assert.Equal([new(10, 100), new(300, 900), new(2100, 3000), new(4000, 4500)], left);

        DowntimeJson Down(double from, double to) => new() { Start = clock.Start.AddSeconds(from), End = clock.Start.AddSeconds(to) };
    }

    [Fact]
    public void Calendars_end_400_days_after_the_start()
    {
        var windows = Windows("2026-11-30T06:00:00+01:00", Shift([.. Enum.GetValues<Weekday>()], "00:00", "00:00"));
        Assert.Equal([new(0, 400 * Day)], windows);
    }

    [Fact]
    public void Without_a_zone_the_offset_of_the_start_counts()
    {
        var calendar = new CalendarJson { CalendarId = "c", Shifts = [Shift([Weekday.Sunday], "00:00", "06:00")] };
        var clock = PlanClock.Of(DateTimeOffset.Parse("2026-10-24T00:00:00+02:00", System.Globalization.CultureInfo.InvariantCulture), null);
        Assert.Equal(new TimeWindow(Day, Day + 6 * Hour), new AttendedTime(calendar, clock).Shifts[0]);
        Assert.Equal(TimeSpan.FromHours(2), clock.At(40 * Day).Offset);
    }

    [Fact]
    public void Times_of_answers_carry_the_offset_of_their_day()
    {
        var clock = Clock("2026-10-24T00:00:00+02:00");
        Assert.Equal("2026-10-25T06:00:00+01:00", clock.At(Day + 7 * Hour).ToString("yyyy-MM-ddTHH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture));
    }

    private static TimeWindow First(string start, params ShiftJson[] shifts) => Windows(start, shifts)[0];

    private static IReadOnlyList<TimeWindow> Windows(string start, params ShiftJson[] shifts) =>
        new AttendedTime(new() { CalendarId = "c", Shifts = shifts }, Clock(start)).Shifts;

    private static PlanClock Clock(string start) =>
        PlanClock.Of(DateTimeOffset.Parse(start, System.Globalization.CultureInfo.InvariantCulture), "Europe/Vienna");

    private static ShiftJson Shift(Weekday[] days, string start, string end) => new() { Days = days, Start = Time(start), End = Time(end) };

    private static BreakJson Break(string start, string end) => new() { Start = Time(start), End = Time(end) };

    private static TimeOnly Time(string text) => TimeOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
