using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Schedules;

/// <summary>Small shops whose best schedule is worked out by hand. Saws work 06:00 to 14:00 and cost nothing; set-ups of sections take 10 minutes.</summary>
[Collection(HostCollection.Name)]
public sealed class SmallShopTests(ServiceHost host)
{
    /// <summary>B first ends at 08:00, in time; A then at 10:00, two hours late at 10.</summary>
    [Fact]
    public async Task One_operator_serves_the_urgent_job_first()
    {
        var answer = await Answer(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 7200}], "due": "2026-11-30T08:00:00Z", "costPerHourLate": 10}, {"jobId": "B", "options": [{"sawId": "s2", "seconds": 7200}], "due": "2026-11-30T08:00:00Z", "costPerHourLate": 1000}""",
            more: """, "operators": [{"operatorId": "O1", "calendarId": "c", "mostSaws": 1}]""");
        Assert.Equal(20m, Value(answer));
    }

    /// <summary>B loads until 06:30 and ends at 07:30, in time; A loads until 07:00 and ends at 08:00, half an hour late at 10.</summary>
    [Fact]
    public async Task One_crane_serves_the_urgent_job_first()
    {
        var answer = await Answer(
            string.Join(", ", new[] { ("A", "s1", 10), ("B", "s2", 1000) }.Select(job =>
                $$"""{"jobId": "{{job.Item1}}", "options": [{"sawId": "{{job.Item2}}", "seconds": 3600, "loads": 1, "loadSeconds": 1800, "craneLoads": true}], "due": "2026-11-30T07:30:00Z", "costPerHourLate": {{job.Item3}}}""")),
            more: """, "cranes": [{"craneId": "K1"}]""");
        Assert.Equal(5m, Value(answer));
    }

    /// <summary>Nothing is gained by starting sooner, and moving costs 100 an hour.</summary>
    [Fact]
    public async Task Jobs_stay_where_they_were_where_moving_costs()
    {
        var answer = await Answer(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 3600}]}, {"jobId": "B", "options": [{"sawId": "s1", "seconds": 3600}]}""",
            beside: """, "previous": {"costPerHourMoved": 100, "jobs": [{"jobId": "A", "sawId": "s1", "start": "2026-11-30T09:00:00Z", "finish": "2026-11-30T10:00:00Z"}, {"jobId": "B", "sawId": "s1", "start": "2026-11-30T12:00:00Z", "finish": "2026-11-30T13:00:00Z"}]}""");
        Assert.Equal((0m, 0m), (Value(answer), (decimal)answer["changes"]!["hoursMoved"]!));
        Assert.Equal(["2026-11-30T09:00:00+00:00", "2026-11-30T12:00:00+00:00"], answer["jobs"]!.AsArray().Select(job => (string?)job!["start"]));
    }

    [Fact]
    public async Task Running_job_that_goes_on_is_not_moved()
    {
        var answer = await Answer(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 3600}], "frozen": {"sawId": "s1", "start": "2026-11-30T05:40:00Z"}}""",
            beside: """, "previous": {"costPerHourMoved": 100, "jobs": [{"jobId": "A", "sawId": "s1", "start": "2026-11-30T05:40:00Z", "finish": "2026-11-30T07:00:00Z"}]}""");
        Assert.Equal((0m, 0m), (Value(answer), (decimal)answer["changes"]!["hoursMoved"]!));
    }

    /// <summary>Four hours of work from 06:00 with the saw down from 07:00 to 09:00 end at 12:00. No overtime ends it sooner: no shift ends before.</summary>
    [Fact]
    public async Task No_overtime_is_proposed_while_the_saw_is_down()
    {
        var answer = await Answer(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 14400, "steps": 4}], "due": "2026-11-30T10:00:00Z", "costPerHourLate": 10}""",
            saw: """, "downtimes": [{"start": "2026-11-30T07:00:00Z", "end": "2026-11-30T09:00:00Z"}]""");
        var late = answer["lateness"]![0]!;
        Assert.Equal(2m, (decimal)answer["jobs"]![0]!["lateHours"]!);
        Assert.Equal([("sawNotDown", 0m)], late["cures"]!.AsArray().Select(cure => ((string)cure!["kind"]!, (decimal)cure["lateHours"]!)));
    }

    /// <summary>A is frozen from 10:00 to 11:00, B follows until 12:00: five hours behind A, one of its own work; there are no operators to wait for.</summary>
    [Fact]
    public async Task Time_behind_a_frozen_job_is_that_of_an_earlier_job()
    {
        var answer = await Answer(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 3600}], "frozen": {"sawId": "s1", "start": "2026-11-30T10:00:00Z"}}, {"jobId": "B", "options": [{"sawId": "s1", "seconds": 3600}], "due": "2026-11-30T09:00:00Z", "costPerHourLate": 50}""");
        Assert.Equal([("earlierJobs", 5m), ("work", 1m)], answer["lateness"]![0]!["causes"]!.AsArray().Select(cause => ((string)cause!["kind"]!, (decimal)cause["hours"]!)));
        Assert.Equal("frozen", (string?)answer["reasons"]!.AsArray().Single(job => (string?)job!["jobId"] == "A")!["waitsFor"]!["kind"]);
    }

    [Fact]
    public async Task Late_jobs_at_no_cost_are_told()
    {
        var answer = await Answer("""{"jobId": "A", "options": [{"sawId": "s1", "seconds": 7200}], "due": "2026-11-30T07:00:00Z"}""");
        Assert.Equal(["late_at_no_cost A"], answer["warnings"]!.AsArray().Select(warning => $"{warning!["code"]} {warning["jobId"]}"));
    }

    [Fact]
    public async Task Overdue_job_that_is_left_out_is_not_late()
    {
        var answer = await Answer("""{"jobId": "A", "options": [{"sawId": "s1", "seconds": 90000}], "due": "2026-11-29T07:00:00Z"}""");
        Assert.Equal(("step_longer_than_shift", "job_overdue"), ((string?)answer["unscheduled"]![0]!["reason"], (string?)answer["warnings"]!.AsArray().Single()!["code"]));
    }

    /// <summary>C must follow A, which stands behind it: C is left out and the edit is not clean.</summary>
    [Fact]
    public async Task Edited_sequence_against_a_predecessor_is_a_violation()
    {
        var answer = await Evaluated("""{"jobId": "C", "sawId": "s1", "sequence": 1}, {"jobId": "A", "sawId": "s1", "sequence": 2}""");
        Assert.Equal(["#/schedule/jobs/0/sequence sequence_against_after"], Violations(answer));
    }

    [Fact]
    public async Task Edited_sequences_that_are_equal_are_a_violation()
    {
        var answer = await Evaluated("""{"jobId": "A", "sawId": "s1", "sequence": 1}, {"jobId": "C", "sawId": "s1", "sequence": 1}""");
        Assert.Equal(["#/schedule/jobs/1/sequence sequence_repeated"], Violations(answer));
    }

    private static IEnumerable<string> Violations(JsonObject answer) => answer["violations"]!.AsArray().Select(violation => $"{violation!["pointer"]} {violation["code"]}");

    private static decimal Value(JsonObject answer) => (decimal)answer["objective"]!["value"]!;

    private Task<JsonObject> Answer(string jobs, string saw = "", string more = "", string beside = "") => host.Post("/v1/schedules", Request(jobs, saw, more, beside), 200);

    private Task<JsonObject> Evaluated(string rows) => host.Post(
        "/v1/schedules/evaluations",
        Request(
            """{"jobId": "A", "options": [{"sawId": "s1", "seconds": 3600}]}, {"jobId": "C", "options": [{"sawId": "s1", "seconds": 3600}], "after": ["A"]}""", "", "", $$""", "schedule": {"jobs": [{{rows}}]}"""),
        200);

    private static string Request(string jobs, string saw, string more, string beside) => $$"""
        {
          "planStart": "2026-11-30T06:00:00Z",
          "jobs": [{{jobs}}],
          "shop": {
            "saws": [
              {"sawId": "s1", "capacity": {"round": 400, "width": 400, "height": 400}, "tail": 100, "calendarId": "c", "machineCostPerHour": 0{{saw}}},
              {"sawId": "s2", "capacity": {"round": 400, "width": 400, "height": 400}, "tail": 100, "calendarId": "c", "machineCostPerHour": 0}
            ],
            "calendars": [{"calendarId": "c", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00"}]}],
            "rates": {"laborCostPerHour": 0}{{more}}
          }{{beside}}
        }
        """;
}
