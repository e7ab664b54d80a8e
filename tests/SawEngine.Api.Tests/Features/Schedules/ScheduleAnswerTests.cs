using System.Text;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Tests.Features.Schedules;

/// <summary>What is written of a schedule made by hand. The plan starts at 06:00; the saws work 06:00 to 14:00, s with overtime until 16:00.</summary>
public sealed class ScheduleAnswerTests
{
    private const long Hour = 3600;

    [Fact]
    public void Parts_of_a_job_are_listed_each_with_its_steps_and_late_together()
    {
        var answer = Answer("""{"jobId": "J", "mostParts": 2, "due": "2026-11-30T09:00:00+01:00", "options": [{"sawId": "s", "seconds": 7200, "steps": 10}, {"sawId": "t", "seconds": 7200, "steps": 10}]}""", "", [
            Placed("J", "s", 1, 0, 2 * Hour, 3 * Hour, 5),
            Placed("J", "t", 1, 5, 3 * Hour, 4 * Hour, 5),
        ]);
        Assert.Equal(
            [("s", 1, 5, 2, 1m), ("t", 6, 5, 2, 1m)],
            answer.Jobs.Select(job => (job.SawId, job.FirstStep, job.Steps, job.Parts, job.LateHours!.Value)));
        Assert.Equal(5, answer.Jobs[0].Work[0].Steps);
        Assert.Equal((1, 1, 1, 1, 1m), (answer.Totals.Jobs, answer.Totals.Scheduled, answer.Totals.SplitJobs, answer.Totals.LateJobs, answer.Totals.LateHours));
        Assert.Equal("complete", answer.Status);
    }

    /// <summary>Set-up from 13:45 to 14:15 and work to 15:00 on s, 54 + 36 an hour: 1 h of overtime at 18; 0.5 h of set-up and 0.75 h of work at 90; an hour late at 40.</summary>
    [Fact]
    public void Value_is_the_sum_of_its_terms()
    {
        var job = Placed("J", "s", 1, 0, (long)(8.25 * Hour), 9 * Hour, 1) with { SetUps = [new("section", (long)(7.75 * Hour), (long)(8.25 * Hour))] };
        var answer = Answer("""{"jobId": "J", "due": "2026-11-30T14:00:00+01:00", "costPerHourLate": 40, "options": [{"sawId": "s", "seconds": 2700}]}""", """, "makespanCostPerHour": 3.6""", [job]);
        var terms = answer.Objective.Terms;
        Assert.Equal((40m, 67.5m, 45m, 18m, 32.4m, 0m), (terms.Tardiness, terms.Work, terms.SetUps, terms.Overtime, terms.Makespan, terms.Stability));
        Assert.Equal(40m + 67.5m + 45m + 18m + 32.4m, answer.Objective.Value);
        Assert.Equal("jobsAlone", answer.Objective.BoundRule);
        Assert.Equal((3600, 3600), (answer.Totals.OvertimeSeconds, answer.Saws[0].OvertimeSeconds));
    }

    [Fact]
    public void Seconds_in_which_a_saw_runs_by_itself_are_counted()
    {
        var answer = Answer("""{"jobId": "J", "options": [{"sawId": "t", "seconds": 7200, "grade": "S235JR", "mayRunUnattended": true}]}""", "", [Placed("J", "t", 1, 0, 7 * Hour, 9 * Hour, 1)]);
        Assert.Equal((3600, 0), (answer.Totals.UnattendedSeconds, answer.Totals.OvertimeSeconds));
    }

    [Fact]
    public void Set_ups_and_loads_name_their_resources_and_used_blades_their_life()
    {
        var job = Placed("J", "s", 1, 0, 600, 700, 1) with
        {
            SetUps = [new("blade", 0, 300, "ann", 400_000_000), new("bladeWorn", 300, 600, "ann", 1_000_000_000)],
            Work = [new(600, 660, 1, "bob", "north"), new(660, 700, 1)],
        };
        var answer = Answer("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 40, "loads": 1, "loadSeconds": 60, "craneLoads": true}]}""", "", [job]).Jobs[0];
        Assert.Equal([("operator", "ann", 0.4m), ("operator", "ann", (decimal?)null)], answer.SetUps.Select(setUp => (setUp.Resource, setUp.OperatorId!, setUp.MountedLife)));
        Assert.Equal([("bob", "north"), (null, null)], answer.Work.Select(span => (span.OperatorId, span.CraneId)));
    }

    [Fact]
    public void Set_up_parts_at_the_same_time_count_once()
    {
        var job = Placed("J", "s", 1, 0, 600, 700, 1) with { SetUps = [new("gradeGroup", 0, 600), new("section", 0, 400)] };
        Assert.Equal(600, Answer("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 100}]}""", "", [job]).Totals.SetUpSeconds);
    }

    /// <summary>
    /// A was at 06:00 on s and B, C behind it; now C, A, B start at 06:00, 07:00 and 08:00 and D has gone from t to s at 09:00. A moves by an hour, B by one, C by two
    /// earlier; D not at all. C passes A and B: two pairs. A was in time at 07:00 and is not at 08:00; B was late before; C states no finish.
    /// </summary>
    [Fact]
    public void Changes_against_an_earlier_schedule_are_counted()
    {
        var jobs = string.Join(", ", "ABCD".Select(id => $$"""{"jobId": "{{id}}", "due": "2026-11-30T07:30:00+01:00", "options": [{"sawId": "s", "seconds": 3600}, {"sawId": "t", "seconds": 3600}]}"""));
        const string Previous = """
            , "previous": {
              "jobs": [
                {"jobId": "A", "sawId": "s", "start": "2026-11-30T06:00:00+01:00", "finish": "2026-11-30T07:00:00+01:00"},
                {"jobId": "B", "sawId": "s", "start": "2026-11-30T07:00:00+01:00", "finish": "2026-11-30T08:00:00+01:00"},
                {"jobId": "C", "sawId": "s", "start": "2026-11-30T08:00:00+01:00"},
                {"jobId": "D", "sawId": "t", "start": "2026-11-30T09:00:00+01:00"},
                {"jobId": "gone", "sawId": "t", "start": "2026-11-30T06:00:00+01:00"}
              ],
              "costPerHourMoved": 2, "costPerSawChange": 5
            }
            """;
        var answer = Answer(jobs, Previous, [
            Placed("C", "s", 1, 0, 0, Hour, 1), Placed("A", "s", 2, 0, Hour, 2 * Hour, 1), Placed("B", "s", 3, 0, 2 * Hour, 3 * Hour, 1), Placed("D", "s", 4, 0, 3 * Hour, 4 * Hour, 1),
        ]);
        var changes = answer.Changes!;
        Assert.Equal((4, 4m, 1, 2), (changes.JobsCompared, changes.HoursMoved, changes.SawChanges, changes.ReversedPairs));
        Assert.Equal(["A"], changes.PromisesNewlyBroken);
        Assert.Equal(
            [("A", "s", "s", 1m), ("B", "s", "s", 1m), ("C", "s", "s", -2m), ("D", "t", "s", 0m)],
            changes.Moved.Select(job => (job.JobId, job.PreviousSawId, job.SawId, job.HoursMoved)));
        Assert.Equal(4 * 2m + 5m, answer.Objective.Terms.Stability);
    }

    [Fact]
    public void Without_an_earlier_schedule_nothing_has_changed() =>
        Assert.Null(Answer("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 3600}]}""", "", [Placed("J", "s", 1, 0, 0, Hour, 1)]).Changes);

    [Theory]
    [InlineData("2026-11-30T05:00:00+01:00", 0, "")]
    [InlineData("2026-11-30T07:00:00+01:00", Hour, "")]
    [InlineData("2026-11-30T07:00:00+01:00", Hour + 600, "Job J is frozen from 2026-11-30T07:00:00+01:00 on and starts at 2026-11-30T07:10:00+01:00, as soon as it can: it waits for its set-up, an operator or a crane.")]
    [InlineData("2026-11-30T20:00:00+01:00", 24 * Hour, "Job J is frozen from 2026-11-30T20:00:00+01:00 on and starts at 2026-12-01T06:00:00+01:00, as soon as it can: the saw is not attended then.")]
    public void Frozen_job_that_starts_later_comes_with_a_warning(string frozen, long start, string detail)
    {
        var answer = Answer($$"""{"jobId": "J", "frozen": {"sawId": "s", "start": "{{frozen}}" }, "options": [{"sawId": "s", "seconds": 60}]}""", "", [Placed("J", "s", 1, 0, start, start + 60, 1)]);
        Assert.Equal(detail.Length == 0 ? [] : [$"frozen_start_not_kept {detail}"], answer.Warnings.Select(warning => $"{warning.Code} {warning.Detail}"));
    }

    [Fact]
    public void Frozen_jobs_that_overlap_wait_for_one_another()
    {
        const string Jobs = """
            {"jobId": "J", "frozen": {"sawId": "s", "start": "2026-11-30T05:00:00+01:00"}, "options": [{"sawId": "s", "seconds": 7200}]},
            {"jobId": "K", "frozen": {"sawId": "s", "start": "2026-11-30T07:00:00+01:00"}, "options": [{"sawId": "s", "seconds": 60}]}
            """;
        var warning = Assert.Single(Answer(Jobs, "", [Placed("J", "s", 1, 0, 0, 2 * Hour, 1), Placed("K", "s", 2, 0, 2 * Hour, 2 * Hour + 60, 1)]).Warnings);
        Assert.Equal(("K", "s"), (warning.JobId, warning.SawId));
        Assert.EndsWith("as soon as it can: job J, frozen before it on the saw, is at work until 2026-11-30T08:00:00+01:00.", warning.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Running_job_of_a_saw_that_is_down_goes_on_later()
    {
        var answer = Answer(
            """{"jobId": "J", "frozen": {"sawId": "s", "start": "2026-11-30T05:00:00+01:00"}, "options": [{"sawId": "s", "seconds": 60}]}""",
            "",
            [Placed("J", "s", 1, 0, Hour, Hour + 60, 1)],
            """, "downtimes": [{"start": "2026-11-30T05:00:00+01:00", "end": "2026-11-30T07:00:00+01:00"}]""");
        Assert.Equal("Job J is running at the start of the plan and goes on at 2026-11-30T07:00:00+01:00: the saw is not attended then.", Assert.Single(answer.Warnings).Detail);
    }

    private static ScheduledJob Placed(string jobId, string sawId, int sequence, int firstStep, long start, long finish, int steps) =>
        new() { JobId = jobId, SawId = sawId, Sequence = sequence, FirstStep = firstStep, SetUps = [], Work = [new(start, finish, steps)] };

    private static ScheduleResponse Answer(string jobs, string more, IReadOnlyList<ScheduledJob> scheduled, string ofSaw = "")
    {
        var body = $$"""
            {
              "timeZone": "Europe/Vienna",
              "planStart": "2026-11-30T06:00:00+01:00",
              "jobs": [{{jobs}}],
              "shop": {
                "saws": [
                  {"sawId": "s", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "calendarId": "c", "machineCostPerHour": 54{{ofSaw}}},
                  {"sawId": "t", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "calendarId": "d", "machineCostPerHour": 54, "unattended": {"bars": 1, "cuts": 99} }
                ],
                "calendars": [
                  {
                    "calendarId": "c",
                    "shifts": [{"days": ["MO", "TU"], "start": "06:00", "end": "14:00"}],
                    "overtime": [{"days": ["MO"], "start": "14:00", "end": "16:00", "costPerHour": 18}]
                  },
                  {"calendarId": "d", "shifts": [{"days": ["MO", "TU"], "start": "06:00", "end": "14:00"}]}
                ],
                "rates": {"laborCostPerHour": 36}
              }{{more}}
            }
            """;
        var request = RequestReader.Read<ScheduleRequest>(Encoding.UTF8.GetBytes(body), lenient: false).Request!;
        var mapping = new ScheduleMapping(request);
        var schedule = Schedule.Nothing with { Jobs = scheduled, CostMicros = ScheduleCost.Micros(mapping.Problem, scheduled) };
        return new ScheduleAnswer(request, mapping, schedule).Write(new("sha-256:0", TimeProvider.System, CancellationToken.None), ScheduleExplanation.None);
    }
}
