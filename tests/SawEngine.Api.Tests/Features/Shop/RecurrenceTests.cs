using System.Diagnostics;
using System.Globalization;
using NodaTime;
using SawEngine.Api.Features.Shop.Recurrences;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Shop;

public sealed class RecurrenceTests
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];
    private static readonly DateTimeZone Vienna = DateTimeZoneProviders.Tzdb["Europe/Vienna"];

    /// <summary>Rules and their dates as RFC 5545 lists them in 3.8.5.3; each starts at 09:00 in New York.</summary>
    public static TheoryData<string, string, string> OfTheStandard => new()
    {
        { "19970902", "RRULE:FREQ=DAILY;COUNT=10", "0902 0903 0904 0905 0906 0907 0908 0909 0910 0911" },
        { "19970902", "RRULE:FREQ=DAILY;INTERVAL=10;COUNT=5", "0902 0912 0922 1002 1012" },
        { "19970901", "RRULE:FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR", "0901 0903 0905 0915 0917 0919 0929 1001 1003 1013 1015 1017 1027 1029 1031 1110 1112 1114 1124 1126 1128 1208 1210 1212 1222" },
        { "19970902", "RRULE:FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH", "0902 0904 0909 0911 0916 0918 0923 0925 0930 1002" },
        { "19970905", "RRULE:FREQ=MONTHLY;COUNT=4;BYDAY=1FR", "0905 1003 1107 1205" },
        { "19970907", "RRULE:FREQ=MONTHLY;INTERVAL=2;COUNT=4;BYDAY=1SU,-1SU", "0907 0928 1102 1130" },
        { "19970904", "RRULE:FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", "0904 1007 1106" },
        { "19970929", "RRULE:FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2;COUNT=4", "0929 1030 1127 1230" },
        { "19970805", "RRULE:FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", "0805 0810 0819 0824" },
        { "19970805", "RRULE:FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", "0805 0817 0819 0831" },
    };

    [Theory]
    [MemberData(nameof(OfTheStandard))]
    public void Rule_gives_the_dates_of_the_standard(string first, string rule, string days) =>
        Assert.Equal(days.Split(' ').Select(day => $"1997{day}T0900"), Starts(first, 9, NewYork, 19970101, 19971231, rule));

    [Fact]
    public void Friday_the_13th_less_the_first_day_is_as_the_standard_has_it() =>
        Assert.Equal(
            ["19980213T0900", "19980313T0900", "19981113T0900", "19990813T0900", "20001013T0900"],
            Starts("19970902", 9, NewYork, 19970101, 20001231, "EXDATE;TZID=America/New_York:19970902T090000", "RRULE:FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13"));

    /// <summary>RFC 5545 leaves it open what a first day is that its rule does not name; here the rule says.</summary>
    [Fact]
    public void First_day_counts_where_the_rule_names_it() =>
        Assert.Equal(["20261204T1300", "20261211T1300"], Starts("20261130", 13, Vienna, 20261130, 20261217, "RRULE:FREQ=WEEKLY;BYDAY=FR"));

    [Fact]
    public void Without_a_rule_the_first_day_and_the_dates_beside_it_count() =>
        Assert.Equal(["20261130T0600", "20261205T0600", "20261212T0800"], Starts("20261130", 6, Vienna, 20261130, 20261231, "RDATE;VALUE=DATE:20261205", "RDATE:20261212T080000,20270101T080000"));

    [Fact]
    public void Rule_may_stand_without_its_name_in_small_letters_and_end_by_a_day() =>
        Assert.Equal(["20261130T0600", "20261201T0600", "20261202T0600"], Starts("20261130", 6, Vienna, 20261130, 20261231, "freq=daily;until=20261202"));

    /// <summary>13:00 in Vienna is 12:00 UTC in winter and 07:00 in New York.</summary>
    [Theory]
    [InlineData("EXDATE:20261211T130000")]
    [InlineData("EXDATE:20261211T120000Z")]
    [InlineData("EXDATE;TZID=America/New_York:20261211T070000")]
    [InlineData("exdate;tzid=\"Europe/Vienna\":20261211T130000")]
    [InlineData("EXDATE;VALUE=DATE:20261211")]
    public void Date_falls_out_in_whatever_zone_it_is_written(string date) =>
        Assert.Equal(["20261204T1300", "20261218T1300"], Starts("20261204", 13, Vienna, 20261130, 20261224, "RRULE:FREQ=WEEKLY", date));

    [Fact]
    public void Other_time_of_a_day_does_not_fall_out() =>
        Assert.Equal(["20261204T1300", "20261211T1300"], Starts("20261204", 13, Vienna, 20261130, 20261217, "RRULE:FREQ=WEEKLY", "EXDATE:20261211T120000"));

    [Fact]
    public void End_in_utc_is_read_in_local_time() =>
        Assert.Equal(["20261130T2330", "20261201T2330"], Starts("20261130", 23, Vienna, 20261130, 20261231, 30, "RRULE:FREQ=DAILY;UNTIL=20261201T223000Z"));

    public static TheoryData<string, string> Faults => new()
    {
        { "RRULE:FREQ=HOURLY", FaultCode.RecurrenceTooFrequent },
        { "RRULE:FREQ=SECONDLY;COUNT=1", FaultCode.RecurrenceTooFrequent },
        { "RRULE:FREQ=DAILY;BYHOUR=6,14", FaultCode.RecurrenceTooFrequent },
        { "RRULE:FREQ=DAILY;BYMINUTE=0", FaultCode.RecurrenceTooFrequent },
        { "RRULE:", FaultCode.InvalidRecurrence },
        { "", FaultCode.InvalidRecurrence },
        { "every friday", FaultCode.InvalidRecurrence },
        { "DTSTART:20261204T130000", FaultCode.InvalidRecurrence },
        { "EXRULE:FREQ=DAILY", FaultCode.InvalidRecurrence },
        { "RRULE;X=1:FREQ=DAILY", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;FREQ=DAILY", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=FORTNIGHTLY", FaultCode.InvalidRecurrence },
        { "RRULE:BYDAY=FR", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;FOO=1", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;INTERVAL=0", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;INTERVAL=2147483648", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;COUNT=-1", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;COUNT=2;UNTIL=20261231", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;UNTIL=tomorrow", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;UNTIL=20260230", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;UNTIL=99991231T235959Z", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=WEEKLY;BYDAY=XX", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=WEEKLY;BYDAY=1FR", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=MONTHLY;BYDAY=99MO", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=MONTHLY;BYMONTHDAY=0", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=MONTHLY;BYMONTHDAY=32", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=WEEKLY;BYMONTHDAY=1", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=MONTHLY;BYWEEKNO=1", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=DAILY;BYYEARDAY=1", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=YEARLY;BYMONTH=13", FaultCode.InvalidRecurrence },
        { "RRULE:FREQ=MONTHLY;BYSETPOS=1", FaultCode.InvalidRecurrence },
        { "RDATE:20261332", FaultCode.InvalidRecurrence },
        { "RDATE;VALUE=PERIOD:20261204T130000/PT1H", FaultCode.InvalidRecurrence },
        { "RDATE;TZID=Mars/Olympus:20261204T130000", FaultCode.InvalidRecurrence },
        { "EXDATE:", FaultCode.InvalidRecurrence },
        { "EXDATE:20261204T130000,,", FaultCode.InvalidRecurrence },
        { "EXDATE:20261204T250000", FaultCode.InvalidRecurrence },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Line_that_cannot_be_read_is_a_fault(string line, string code)
    {
        var faults = new List<(int Line, LeafFault Fault)>();
        Recurrence.Read(["RDATE:20261205", line], (at, fault) => faults.Add((at, fault)));

        Assert.Equal((1, code), (Assert.Single(faults).Line, faults[0].Fault.Code));
    }

    [Fact]
    public void Second_rule_is_a_fault()
    {
        var lines = new List<int>();
        Recurrence.Read(["RRULE:FREQ=DAILY", "RRULE:FREQ=WEEKLY"], (line, _) => lines.Add(line));

        Assert.Equal([1], lines);
    }

    [Theory]
    [InlineData("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=DAILY;INTERVAL=1000")]
    [InlineData("FREQ=YEARLY;INTERVAL=1000")]
    public void Rule_that_never_comes_again_ends(string rule) => Assert.Empty(Starts("20231201", 6, Vienna, 20261130, 20280104, rule));

    /// <summary>Rules of allowed parts in all combinations: what passes the check can be worked out, and is dense at most by day.</summary>
    [Fact]
    public void Whatever_can_be_read_can_be_worked_out()
    {
        string[] frequencies = ["DAILY", "WEEKLY", "MONTHLY", "YEARLY"];
        string[] parts = ["BYDAY=MO,SU", "BYDAY=-1FR,53MO", "BYMONTHDAY=-31,1,31", "BYYEARDAY=-366,100,366", "BYWEEKNO=-53,1,53", "BYMONTH=2,12", "BYSETPOS=-366,1,366", "INTERVAL=1000", "COUNT=100000", "UNTIL=20270331", "WKST=SU"];
        var random = new CsCheck.PCG(1, 5);
        var read = 0;
        for (var i = 0; i < 3000; i++)
        {
            var chosen = parts.Where(_ => random.Next(3) == 0).Prepend($"FREQ={frequencies[random.Next(4)]}");
            var isRead = true;
            var recurrence = Recurrence.Read([string.Join(';', chosen)], (_, _) => isRead = false);
            if (!isRead)
                continue;
            read++;
            var starts = recurrence.Starts(new(2024, 2, 29, 23, 59), new(2026, 11, 30), new(2028, 1, 4), NewYork).ToList();
            Assert.Equal(starts.Select(start => start.Date).Distinct(), starts.Select(start => start.Date));
        }
        Assert.True(read > 500, $"{read} rules");
    }

    private static IEnumerable<string> Starts(string first, int hour, DateTimeZone zone, int from, int to, params string[] lines) => Starts(first, hour, zone, from, to, 0, lines);

    private static IEnumerable<string> Starts(string first, int hour, DateTimeZone zone, int from, int to, int minute, params string[] lines) =>
        Recurrence.Read(lines, (_, fault) => throw new UnreachableException(fault.Detail))
            .Starts(Day(int.Parse(first, CultureInfo.InvariantCulture)) + new LocalTime(hour, minute), Day(from), Day(to), zone)
            .Select(start => start.ToString("uuuuMMdd'T'HHmm", CultureInfo.InvariantCulture));

    private static LocalDate Day(int date) => new(date / 10_000, date / 100 % 100, date % 100);
}
