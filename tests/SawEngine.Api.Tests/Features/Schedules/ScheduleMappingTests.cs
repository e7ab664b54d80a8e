using System.Text;
using System.Text.Json.Nodes;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Tests.Features.Schedules;

/// <summary>From a request for a schedule to the problem. The plan starts at 06:00; saw s costs 54 an hour and labor 36, 90 together: 25,000 millionths a second.</summary>
public sealed class ScheduleMappingTests
{
    private const string Option = """{"sawId": "s", "seconds": 100}""";

    [Fact]
    public void Job_without_more_is_free_whole_and_pauses()
    {
        var job = Job(Option, "");
        Assert.Empty(job.After);
        Assert.Null(job.Frozen);
        Assert.Equal(1, job.MostParts);
        Assert.True(job.Options[0].MayPause);
        Assert.False(job.Options[0].MayRunUnattended);
        Assert.Equal(new SetUpState(null, null, null), job.Options[0].SetUp);
        Assert.Equal([new StepRun(100_000, 1)], job.Options[0].Steps);
        Assert.Equal((25_000, 25_000), (job.Options[0].CostMicrosPerSecond, job.Options[0].SetUpCostMicrosPerSecond));
    }

    /// <summary>Ten steps of 10 s and three loads of 60.0001 s, rounded up to 60,001 ms: three steps, three and four behind a load each (10/3, 20/3 and 30/3 rounded down).</summary>
    [Fact]
    public void Loads_stand_before_their_shares_of_the_steps()
    {
        var steps = Job("""{"sawId": "s", "seconds": 100, "steps": 10, "loads": 3, "loadSeconds": 60.0001}""", "").Options[0].Steps;
        var load = new StepRun(60_001, 1, 0, StepKind.Load);
        Assert.Equal([load, new(10_000, 3), load, new(10_000, 3), load, new(10_000, 4)], steps);
    }

    /// <summary>11 ms over four steps: three of 3 ms and one of 2 ms; two loads by crane before two steps each.</summary>
    [Fact]
    public void Loads_share_steps_that_differ_by_a_millisecond()
    {
        var steps = Job("""{"sawId": "s", "seconds": 0.011, "steps": 4, "loads": 2, "loadSeconds": 1, "craneLoads": true}""", "").Options[0].Steps;
        var load = new StepRun(1_000, 1, 0, StepKind.CraneLoad);
        Assert.Equal([load, new(3, 2), load, new(3, 1), new(2, 1)], steps);
        Assert.Equal(6, JobSteps.Count(Read("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 0.011, "steps": 4, "loads": 2, "loadSeconds": 1}]}""", "").Jobs[1].Options[0]));
    }

    [Fact]
    public void Wear_is_of_the_steps_and_not_of_the_loads()
    {
        var steps = Job("""{"sawId": "s", "seconds": 30, "steps": 3, "loads": 3, "loadSeconds": 5, "bladeLifeShare": 0.000000008}""", "").Options[0].Steps;
        Assert.Equal([0, 3, 0, 3, 0, 2], steps.Select(run => run.BladeShare));
    }

    [Fact]
    public void Angle_precedence_parts_and_pauses_are_the_callers()
    {
        var job = Job("""{"sawId": "s", "seconds": 100, "steps": 2, "angleDegrees": -22.50, "mayPause": false}""", """, "after": ["Z", "K"], "mostParts": 4""");
        Assert.Equal("-22.5", job.Options[0].SetUp.Angle);
        Assert.Equal(["K", "Z"], job.After);
        Assert.Equal((4, false), (job.MostParts, job.Options[0].MayPause));
    }

    [Theory]
    [InlineData("2026-11-30T07:00:00+01:00", 3600)]
    [InlineData("2026-11-30T07:00:00.5+01:00", 3601)]
    [InlineData("2026-11-30T05:00:00Z", 0)]
    [InlineData("2026-11-30T05:30:00+01:00", -1800)]
    public void Frozen_job_has_its_saw_and_start(string start, long seconds) =>
        Assert.Equal(new FrozenPlace("s", seconds), Job(Option, $$""", "frozen": {"sawId": "s", "start": "{{start}}"}""").Frozen);

    /// <summary>Half the cost of an hour late, twice that of work, none of set-ups, and overtime at 1.5.</summary>
    [Fact]
    public void Weights_are_factors_on_the_costs()
    {
        var problem = Map(""", "weights": {"tardiness": 0.5, "work": 2, "setUps": 0, "overtime": 1.5}, "makespanCostPerHour": 36""", """, "due": "2026-11-30T12:00:00+01:00", "costPerHourLate": 40""");
        Assert.Equal(20_000_000, problem.Deliveries.Single(delivery => delivery.DeliveryId == "J").CostMicrosPerHourLate);
        var option = problem.Jobs[0].Options[0];
        Assert.Equal((50_000, 0), (option.CostMicrosPerSecond, option.SetUpCostMicrosPerSecond));
        // 18 an hour are 5,000 millionths a second.
        Assert.Equal(7_500, problem.Saws[0].Overtime[0].CostMicrosPerSecond);
        Assert.Equal(10_000, problem.MakespanCostMicrosPerSecond);
    }

    [Fact]
    public void Earlier_schedule_is_that_of_the_jobs_asked_for_by_id()
    {
        var problem = Map("""
            , "previous": {
              "jobs": [
                {"jobId": "Z", "sawId": "gone", "start": "2026-11-30T05:00:00+01:00"},
                {"jobId": "past", "sawId": "s", "start": "2026-11-30T05:00:00+01:00"},
                {"jobId": "J", "sawId": "s", "start": "2026-11-30T06:00:01.9+01:00", "finish": "2026-11-30T07:00:00+01:00"}
              ],
              "costPerHourMoved": 12.5, "costPerSawChange": 7
            }
            """);
        Assert.Equal([new PreviousPlace("J", "s", 1), new PreviousPlace("Z", "gone", 0)], problem.Previous!.Places);
        Assert.Equal((12_500_000, 7_000_000), (problem.Previous.CostMicrosPerHourMoved, problem.Previous.CostMicrosPerSawChange));
        Assert.Null(Map("").Previous);
    }

    /// <summary>Titanium and magnesium burn: an own grade like one of them does too, whatever it is called.</summary>
    [Theory]
    [InlineData("S235JR", true)]
    [InlineData("Ti-6Al-4V", false)]
    [InlineData("AZ31B", false)]
    [InlineData("house steel", true)]
    [InlineData("house titanium", false)]
    public void Grade_decides_whether_a_job_may_run_unattended(string grade, bool may)
    {
        var mapping = new ScheduleMapping(Read(
            $$"""{"jobId": "J", "options": [{"sawId": "s", "seconds": 100, "grade": "{{grade}}", "mayRunUnattended": true}]}""",
            """, "grades": [{"gradeId": "house titanium", "densityKgPerM3": 4500, "likeGrade": "Ti-6Al-4V"}, {"gradeId": "house steel", "densityKgPerM3": 7850, "likeGrade": "C45"}]"""));
        Assert.Equal(may, mapping.Problem.Jobs[0].Options[0].MayRunUnattended);
        Assert.Equal(may ? [] : ["attended_only_grade J s"], mapping.Warnings().Select(warning => $"{warning.Code} {warning.JobId} {warning.SawId}"));
    }

    [Fact]
    public void Grade_alone_does_not_let_a_job_run_unattended() =>
        Assert.False(Job("""{"sawId": "s", "seconds": 100, "grade": "S235JR"}""", "").Options[0].MayRunUnattended);

    private static ScheduleJob Job(string option, string more) => new ScheduleMapping(Read($$"""{"jobId": "J", "options": [{{option}}]{{more}}}""", "")).Problem.Jobs[0];

    private static ScheduleProblem Map(string more, string ofJob = "") => new ScheduleMapping(Read($$"""{"jobId": "J", "options": [{{Option}}]{{ofJob}}}""", more)).Problem;

    /// <summary>A request with the job, two others and more members.</summary>
    private static ScheduleRequest Read(string job, string more)
    {
        var request = JsonNode.Parse($$"""
            {
              "timeZone": "Europe/Vienna",
              "planStart": "2026-11-30T06:00:00+01:00",
              "jobs": [{"jobId": "Z", "options": []}, {{job}}, {"jobId": "K", "options": []}],
              "shop": {
                "saws": [{"sawId": "s", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "calendarId": "c", "machineCostPerHour": 54}],
                "calendars": [
                  {
                    "calendarId": "c",
                    "shifts": [{"days": ["MO"], "start": "06:00", "end": "14:00"}],
                    "overtime": [{"days": ["MO"], "start": "14:00", "end": "16:00", "costPerHour": 18}]
                  }
                ],
                "rates": {"laborCostPerHour": 36}
              }{{more}}
            }
            """)!;
        return RequestReader.Read<ScheduleRequest>(Encoding.UTF8.GetBytes(request.ToJsonString()), lenient: false) is { Request: { } read } result
            ? read
            : throw new InvalidOperationException("The request cannot be read.");
    }
}
