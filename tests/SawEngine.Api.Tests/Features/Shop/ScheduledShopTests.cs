using System.Text.Json.Nodes;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Tests.Features.Plans;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using PlanExample = SawEngine.Api.Tests.Features.Plans.PlanExample;

namespace SawEngine.Api.Tests.Features.Shop;

/// <summary>What a shop says of its schedule, from a request for a plan to the problem. The plan starts on Monday, 2026-11-30, 06:00 in Vienna; saw-2 works 06:00 to 14:00.</summary>
public sealed class ScheduledShopTests
{
    private const long Hour = 3600;
    private const long Day = 24 * Hour;

    [Fact]
    public void Saw_without_more_runs_in_its_attended_time_alone()
    {
        var saw = Saw(Map(_ => { }));
        Assert.Empty(saw.Overtime);
        Assert.Null(saw.Unattended);
        Assert.Empty(saw.Shelf);
        Assert.Equal(new SetUpState(null, null, "34x1.1-5/8"), saw.InitialState);
        Assert.Empty(saw.SetUpTimes.Beside);
        Assert.Null(saw.SetUpTimes.SectionChanges);
        // A change of the angle takes a swivel.
        Assert.Equal(30, saw.SetUpTimes.Angle);
    }

    [Fact]
    public void Maintenance_and_downtimes_are_taken_out_of_shifts_and_overtime()
    {
        var saw = Saw(Map(r =>
        {
            Of(r)["maintenance"] = JsonNode.Parse("""[{"firstDay": "2026-11-30", "start": "13:00", "minutes": 120, "recurrence": ["RRULE:FREQ=WEEKLY;BYDAY=MO"], "reason": "guides"}]""");
            r["shop"]!["calendars"]![0]!["overtime"] = JsonNode.Parse("""[{"days": ["MO"], "start": "14:00", "end": "18:00", "costPerHour": 36}]""");
        }));
        Assert.Contains(new TimeWindow(6 * Hour + 1800, 7 * Hour), saw.Windows);
        Assert.Equal(new OvertimeWindow(new(9 * Hour, 12 * Hour), 10_000), saw.Overtime[0]);
        Assert.DoesNotContain(saw.Windows, window => window.End > 7 * Hour && window.Start < 8 * Hour);
    }

    [Fact]
    public void Saw_runs_by_itself_whenever_it_is_not_attended_and_not_down()
    {
        var saw = Saw(Map(r => Of(r)["unattended"] = JsonNode.Parse("""{"bars": 3, "cuts": 200, "hours": 6.5}""")));
        Assert.Equal((3, 200, 23_400L), (saw.Unattended!.Bars, saw.Unattended.Cuts, saw.Unattended.LongestSeconds));
        Assert.Equal(Gaps(saw.Windows, 0, 400 * Day).SelectMany(gap => Gaps([new(Day + 4 * Hour, Day + 6 * Hour)], gap.Start, gap.End)), saw.Unattended.Windows);
    }

    [Fact]
    public void Calendar_of_its_own_says_when_a_saw_runs_by_itself()
    {
        var saw = Saw(Map(r =>
        {
            Of(r)["unattended"] = JsonNode.Parse("""{"bars": 1, "cuts": 10, "calendarId": "night"}""");
            r["shop"]!["calendars"]!.AsArray().Add(JsonNode.Parse("""{"calendarId": "night", "shifts": [{"days": ["MO"], "start": "13:00", "end": "22:00"}], "overtime": [{"days": ["TU"], "start": "14:00", "end": "22:00", "costPerHour": 0}]}"""));
        }));
        Assert.Equal([new(8 * Hour, 16 * Hour), new(7 * Day + 8 * Hour, 7 * Day + 16 * Hour)], saw.Unattended!.Windows.Take(2));
        Assert.Equal(long.MaxValue, saw.Unattended.LongestSeconds);
    }

    /// <summary>Overtime is attended where it is used, so the saw does not run by itself then.</summary>
    [Fact]
    public void Overtime_is_no_time_without_attendance()
    {
        var saw = Saw(Map(r =>
        {
            Of(r)["unattended"] = JsonNode.Parse("""{"bars": 1, "cuts": 10}""");
            r["shop"]!["calendars"]![0]!["overtime"] = JsonNode.Parse("""[{"days": ["MO"], "start": "14:00", "end": "18:00", "costPerHour": 36}]""");
        }));
        Assert.Contains(new TimeWindow(12 * Hour, Day), saw.Unattended!.Windows);
        Assert.DoesNotContain(saw.Unattended.Windows, window => window.Start < 12 * Hour && window.End > 8 * Hour);
    }

    [Fact]
    public void State_shelf_and_set_up_times_are_the_callers()
    {
        var saw = Saw(Map(r =>
        {
            Of(r)["initialSection"] = "ipe200";
            Of(r)["initialGradeGroup"] = "carbon steel";
            Of(r)["initialAngleDegrees"] = -22.50m;
            Of(r)["shelf"] = JsonNode.Parse("""[{"bladeId": "34x1.1-5/8", "remainingLife": 0.7}, {"bladeId": "34x1.1-4/6", "remainingLife": 0.123456789}, {"bladeId": "34x1.1-5/8", "remainingLife": 0.2}]""");
            Of(r)["times"]!["angleSetUpSeconds"] = 44.1m;
            Of(r)["setUpBeside"] = new JsonArray("angle", "gradeGroup");
            Of(r)["setUpChanges"] = JsonNode.Parse("""
                [
                  {"kind": "section", "from": "IPE 200", "to": "hd 50", "seconds": 100.5},
                  {"kind": "section", "to": "Round 50", "seconds": 90},
                  {"kind": "gradeGroup", "from": "carbon steel", "to": "stainless steel", "seconds": 1200},
                  {"kind": "angle", "from": "0", "to": "45.0", "seconds": 20}
                ]
                """);
        }));
        // Sections go by the catalog's name, as the jobs of a plan do; what it does not know stays as it is.
        Assert.Equal(new SetUpState("IPE 200", "carbon steel", "34x1.1-5/8", "-22.5"), saw.InitialState);
        Assert.Equal([new("34x1.1-4/6", 123_456_789), new("34x1.1-5/8", 200_000_000), new("34x1.1-5/8", 700_000_000)], saw.Shelf);
        Assert.Equal(["gradeGroup", "angle"], saw.SetUpTimes.Beside);
        var times = saw.SetUpTimes;
        Assert.Equal((101, 90, 600), (times.SectionChanges!.Seconds("IPE 200", "hd 50", 600), times.SectionChanges.Seconds(null, "Round 50", 600), times.SectionChanges.Seconds("IPE 200", "Round 50", 600)));
        Assert.Equal((1200, 300), (times.GradeGroupChanges!.Seconds("carbon steel", "stainless steel", 300), times.GradeGroupChanges.Seconds("stainless steel", "carbon steel", 300)));
        Assert.Equal((45, 20), (times.Angle, times.AngleChanges!.Seconds("0", "45", 45)));
    }

    [Fact]
    public void Operators_and_cranes_are_mapped_in_order_of_their_ids()
    {
        var problem = Map(r =>
        {
            r["shop"]!["operators"] = JsonNode.Parse("""[{"operatorId": "zoe", "calendarId": "early"}, {"operatorId": "ann", "calendarId": "late", "sawIds": ["saw-2", "saw-1"], "mostSaws": 3}]""");
            r["shop"]!["cranes"] = JsonNode.Parse("""[{"craneId": "south", "sawIds": ["saw-2"]}, {"craneId": "north"}]""");
            r["shop"]!["walkingSeconds"] = 45;
            r["shop"]!["calendars"]!.AsArray().Add(JsonNode.Parse("""{"calendarId": "late", "shifts": [{"days": ["MO"], "start": "14:00", "end": "18:00"}], "overtime": [{"days": ["MO"], "start": "18:00", "end": "20:00", "costPerHour": 9}]}"""));
        });
        Assert.Equal(["ann", "zoe"], problem.Operators.Select(one => one.OperatorId));
        Assert.Equal([3, 2], problem.Operators.Select(one => one.MostSaws));
        Assert.All(problem.Operators, one => Assert.Equal(["saw-1", "saw-2"], one.SawIds));
        Assert.Equal(new TimeWindow(8 * Hour, 14 * Hour), problem.Operators[0].Windows[0]);
        Assert.Equal(problem.Saws[0].Schedule.Windows, problem.Operators[1].Windows);
        Assert.Equal(["north saw-1 saw-2", "south saw-2"], problem.Cranes.Select(crane => $"{crane.CraneId} {string.Join(' ', crane.SawIds)}"));
        Assert.Equal(45, problem.WalkingSeconds);
    }

    [Fact]
    public void Order_of_the_lists_makes_no_difference()
    {
        const string Shelf = """[{"bladeId": "34x1.1-5/8", "remainingLife": 0.7}, {"bladeId": "34x1.1-5/8", "remainingLife": 0.2}]""";
        const string Turned = """[{"bladeId": "34x1.1-5/8", "remainingLife": 0.2}, {"bladeId": "34x1.1-5/8", "remainingLife": 0.7}]""";
        var (one, other) = (Read(r => Of(r)["shelf"] = JsonNode.Parse(Shelf)), Read(r => Of(r)["shelf"] = JsonNode.Parse(Turned)));
        Assert.Equal(Api.Wire.Canonical.RequestDigest.Of(one), Api.Wire.Canonical.RequestDigest.Of(other));
        Assert.NotEqual(Api.Wire.Canonical.RequestDigest.Of(one), Api.Wire.Canonical.RequestDigest.Of(Read(_ => { })));
    }

    private static ScheduleSaw Saw(PlanProblem problem) => problem.Saws.Single(saw => saw.Saw.SawId == "saw-2").Schedule;

    private static JsonNode Of(JsonNode request) => request["shop"]!["saws"]![0]!;

    private static PlanProblem Map(Action<JsonNode> change) => PlanMapping.Of(Read(change)).Problem;

    private static PlanRequest Read(Action<JsonNode> change) => PlanReading.Read(PlanExample.With(change));

    /// <summary>What windows leave of a span.</summary>
    private static IEnumerable<TimeWindow> Gaps(IEnumerable<TimeWindow> windows, long start, long end)
    {
        foreach (var window in windows.Where(window => window.End > start && window.Start < end))
        {
            if (window.Start > start)
                yield return new(start, window.Start);
            start = Math.Min(end, window.End);
        }
        if (start < end)
            yield return new(start, end);
    }
}
