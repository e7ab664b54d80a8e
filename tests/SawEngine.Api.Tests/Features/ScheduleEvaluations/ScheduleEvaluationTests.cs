using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;
using SawEngine.Api.Tests.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Tests.Features.ScheduleEvaluations;

[Collection(HostCollection.Name)]
public sealed class ScheduleEvaluationTests(ServiceHost host)
{
    private const string Schedules = "/v1/schedules";
    private const string Path = "/v1/schedules/evaluations";

    /// <summary>
    /// The request of the schedule by hand with that schedule: chips and section for J2 from 06:00 to 06:15, work of 9300 s to 08:50; the blade for J1 to 08:55, its section from
    /// 09:30 to 09:40, work of 5400 s to 11:10; J3 on the other saw, set up from 06:00, from 09:30 to 10:00:01.
    /// </summary>
    private static readonly string HandMade = """
        [
          {
            "jobId": "J1", "sawId": "saw-1", "sequence": 2,
            "setUps": [
              {"kind": "blade", "start": "2026-11-30T08:50:00+01:00", "finish": "2026-11-30T08:55:00+01:00"},
              {"kind": "section", "start": "2026-11-30T09:30:00+01:00", "finish": "2026-11-30T09:40:00+01:00"}
            ],
            "work": [{"start": "2026-11-30T09:40:00+01:00", "finish": "2026-11-30T11:10:00+01:00", "steps": 24}]
          },
          {
            "jobId": "J2", "sawId": "saw-1", "sequence": 1,
            "setUps": [
              {"kind": "gradeGroup", "start": "2026-11-30T06:00:00+01:00", "finish": "2026-11-30T06:05:00+01:00"},
              {"kind": "section", "start": "2026-11-30T06:05:00+01:00", "finish": "2026-11-30T06:15:00+01:00"}
            ],
            "work": [{"start": "2026-11-30T06:15:00+01:00", "finish": "2026-11-30T08:50:00+01:00", "steps": 12}]
          },
          {
            "jobId": "J3", "sawId": "saw-2", "sequence": 1,
            "setUps": [
              {"kind": "gradeGroup", "start": "2026-11-30T08:35:00+01:00", "finish": "2026-11-30T08:40:00+01:00"},
              {"kind": "section", "start": "2026-11-30T08:45:00+01:00", "finish": "2026-11-30T08:55:00+01:00"}
            ],
            "work": [{"start": "2026-11-30T09:30:00+01:00", "finish": "2026-11-30T10:00:01+01:00", "steps": 1}]
          }
        ]
        """;

    private static JsonObject ByHandRequest(Action<JsonArray>? edit = null)
    {
        var (request, jobs) = (JsonNode.Parse(ByHand.Json)!.AsObject(), JsonNode.Parse(HandMade)!.AsArray());
        edit?.Invoke(jobs);
        request["schedule"] = new JsonObject { ["jobs"] = jobs };
        return request;
    }

    /// <summary>16,500 s on saw-1 at 25,000 millionths and 2,701 s on saw-2 at 21,666 (90 and 78 an hour, rounded down), by hand.</summary>
    [Fact]
    public async Task Schedule_made_by_hand_is_clean_and_costs_what_it_does_by_hand()
    {
        var answer = await Answer(ByHandRequest());

        Assert.Empty(Violations(answer));
        Assert.True((bool)answer["isClean"]!);
        Assert.False((bool)answer["timedByEngine"]!);
        var terms = answer["cost"]!["terms"]!;
        Assert.Equal(14700 * 0.025m + 1801 * 0.021666m, (decimal)terms["work"]!);
        Assert.Equal(1800 * 0.025m + 900 * 0.021666m, (decimal)terms["setUps"]!);
        Assert.Equal(16500 * 0.025m + 2701 * 0.021666m, (decimal)answer["cost"]!["value"]!);
        Assert.Equal((0m, 1m), ((decimal)answer["comparison"]!["difference"]!, (decimal)answer["comparison"]!["ratio"]!));
    }

    private const string NinePastFive = "2026-11-30T05:09:00+01:00";

    /// <summary>Edits of the schedule by hand in which a rule is broken, the place and the rule.</summary>
    public static TheoryData<string, string, string, string> Mutants => new()
    {
        { "unknown job", "0/jobId=\"J9\"", "#/schedule/jobs/0/jobId", ScheduleRule.UnknownJob },
        { "unknown saw", "0/sawId=\"saw-9\"", "#/schedule/jobs/0/sawId", ScheduleRule.UnknownSaw },
        { "saw that cannot take it", "1/sawId=\"saw-2\"", "#/schedule/jobs/1/sawId", ScheduleRule.SawNotEligible },
        { "gap in the sequence", "0/sequence=3", "#/schedule/jobs/0/sequence", ScheduleRule.SequenceBroken },
        { "before the plan", $"2/setUps/0/start=\"{NinePastFive}\"", "#/schedule/jobs/2", ScheduleRule.StartsBeforePlan },
        { "two at once", "0/setUps/0/start=\"2026-11-30T08:49:00+01:00\";0/setUps/0/finish=\"2026-11-30T08:54:00+01:00\"", "#/schedule/jobs/0", ScheduleRule.Overlap },
        { "no set-up", "0/setUps=[]", "#/schedule/jobs/0", ScheduleRule.SetUpMissing },
        { "set-up of another thing", "2/setUps/0/kind=\"angle\"", "#/schedule/jobs/2/setUps", ScheduleRule.SetUpUnneeded },
        { "short set-up", "2/setUps/0/finish=\"2026-11-30T08:39:59+01:00\"", "#/schedule/jobs/2/setUps", ScheduleRule.SetUpDuration },
        { "set-up in the break", "0/setUps/1/start=\"2026-11-30T09:10:00+01:00\";0/setUps/1/finish=\"2026-11-30T09:20:00+01:00\"", "#/schedule/jobs/0/setUps", ScheduleRule.SetUpOutsideShift },
        { "work before its release", "2/work/0/start=\"2026-11-30T08:55:00+01:00\";2/work/0/finish=\"2026-11-30T09:25:01+01:00\"", "#/schedule/jobs/2/work", ScheduleRule.WorkBeforeRelease },
        { "work over the break", "2/work/0/start=\"2026-11-30T08:55:00+01:00\";2/work/0/finish=\"2026-11-30T09:25:01+01:00\"", "#/schedule/jobs/2/work", ScheduleRule.WorkOutsideShift },
        { "short work", "0/work/0/finish=\"2026-11-30T11:09:59+01:00\"", "#/schedule/jobs/0/work", ScheduleRule.WorkDuration },
        { "steps left out", "0/work/0/steps=23", "#/schedule/jobs/0/work", ScheduleRule.WorkSteps },
        { "stated start", "0/start=\"2026-11-30T09:41:00+01:00\"", "#/schedule/jobs/0/start", "statement_differs" },
        { "stated finish", "0/finish=\"2026-11-30T11:10:01+01:00\"", "#/schedule/jobs/0/finish", "statement_differs" },
        { "stated steps", "0/steps=23", "#/schedule/jobs/0/steps", "statement_differs" },
    };

    [Theory]
    [MemberData(nameof(Mutants))]
    public async Task Broken_rule_is_found_at_its_place(string what, string edits, string pointer, string code)
    {
        var request = ByHandRequest(jobs =>
        {
            foreach (var edit in edits.Split(';'))
                Set(jobs, edit[..edit.IndexOf('=', StringComparison.Ordinal)], JsonNode.Parse(edit[(edit.IndexOf('=', StringComparison.Ordinal) + 1)..]));
        });
        var answer = await Answer(request);

        Assert.True(Violations(answer).Contains($"{pointer} {code}"), $"{what}: {string.Join(", ", Violations(answer))}");
        Assert.False((bool)answer["isClean"]!);
        Assert.All(answer["violations"]!.AsArray(), violation => Assert.True(Pointers.Resolves((string)violation!["pointer"]!, request), violation!.ToJsonString()));
    }

    [Fact]
    public async Task Job_in_no_list_is_missing()
    {
        var answer = await Answer(ByHandRequest(jobs => jobs.RemoveAt(2)));

        Assert.Equal(["#/jobs/2 job_missing"], Violations(answer));
        Assert.Equal((3, 2), ((int)answer["totals"]!["jobs"]!, (int)answer["totals"]!["scheduled"]!));
    }

    [Theory]
    [InlineData("no_shift_left", "")]
    [InlineData("no_mood", "#/schedule/unscheduled/0 unknown_reason")]
    public async Task Job_that_is_left_out_needs_a_reason_of_the_list(string reason, string violation)
    {
        var request = ByHandRequest(jobs => jobs.RemoveAt(2));
        request["schedule"]!["unscheduled"] = JsonNode.Parse($$"""[{"jobId": "J3", "reason": "{{reason}}"}]""");

        Assert.Equal(violation.Length == 0 ? [] : [violation], Violations(await Answer(request)));
    }

    [Fact]
    public async Task Job_listed_twice_is_found()
    {
        var answer = await Answer(ByHandRequest(jobs => jobs.Add(jobs[2]!.DeepClone())));

        Assert.Contains(Violations(answer), violation => violation.EndsWith(" job_listed_twice", StringComparison.Ordinal));
    }

    /// <summary>The unknown job costs nothing, and the sequence behind it closes up, so that only itself is wrong.</summary>
    [Fact]
    public async Task What_is_not_asked_for_counts_for_nothing_and_spoils_nothing()
    {
        var answer = await Answer(ByHandRequest(jobs =>
        {
            var stranger = jobs[2]!.DeepClone();
            (stranger["jobId"], jobs[2]!["sequence"]) = ("J9", 2);
            jobs.Add(stranger);
        }));

        Assert.Equal(["#/schedule/jobs/3/jobId unknown_job"], Violations(answer));
        Assert.Equal(16500 * 0.025m + 2701 * 0.021666m, (decimal)answer["cost"]!["value"]!);
        Assert.Equal(["J1", "J2", "J3"], answer["jobs"]!.AsArray().Select(job => (string?)job!["jobId"]));
    }

    /// <summary>The same schedule without its times: the engine gives each job the same work, as early as its saw allows.</summary>
    [Fact]
    public async Task Jobs_without_work_are_timed_in_their_sequence()
    {
        var answer = await Answer(ByHandRequest(jobs =>
        {
            foreach (var job in jobs)
            {
                job!.AsObject().Remove("setUps");
                job.AsObject().Remove("work");
            }
        }));

        Assert.Empty(Violations(answer));
        Assert.True((bool)answer["timedByEngine"]!);
        Assert.Equal(
            ["J1 2026-11-30T09:40:00+01:00 2026-11-30T11:10:00+01:00", "J2 2026-11-30T06:15:00+01:00 2026-11-30T08:50:00+01:00", "J3 2026-11-30T09:30:00+01:00 2026-11-30T10:00:01+01:00"],
            answer["jobs"]!.AsArray().Select(job => $"{job!["jobId"]} {job["start"]} {job["finish"]}"));
        Assert.Empty(answer["warnings"]!.AsArray());
    }

    /// <summary>
    /// J1 moved before J2: blade to 06:05, chips to ... in the order of set-ups: chips 06:00 to 06:05, blade to 06:10, section to 06:20, work of 24 steps of 225 s to 07:50. J2: blade to 07:55, section to 08:05,
    /// four steps of 775 s to 08:56:40, then the break, and eight from 09:30 to 11:13:20. One more change of the blade, 300 s, than the engine's.
    /// </summary>
    [Fact]
    public async Task Moved_by_hand_the_schedule_is_timed_anew()
    {
        var request = ByHandRequest(jobs =>
        {
            (jobs[0]!["sequence"], jobs[1]!["sequence"]) = (1, 2);
            jobs[0]!.AsObject().Remove("work");
        });
        var answer = await Answer(request);

        Assert.Empty(Violations(answer));
        Assert.Equal(
            ["J1 2026-11-30T06:20:00+01:00 2026-11-30T07:50:00+01:00", "J2 2026-11-30T08:05:00+01:00 2026-11-30T11:13:20+01:00"],
            answer["jobs"]!.AsArray().Take(2).Select(job => $"{job!["jobId"]} {job["start"]} {job["finish"]}"));
        Assert.Equal(300 * 0.025m, (decimal)answer["comparison"]!["difference"]!);
        var warning = answer["warnings"]!.AsArray().Single()!;
        Assert.Equal(("stated_times_not_used", "#/schedule/jobs/0"), ((string?)warning["code"], (string?)warning["pointer"]));
    }

    [Theory]
    [InlineData("""{"jobId": "J9", "sawId": "saw-1", "sequence": 1}""", "#/schedule/jobs/0/jobId unknown_job")]
    [InlineData("""{"jobId": "J1", "sawId": "saw-9", "sequence": 1}""", "#/schedule/jobs/0/sawId unknown_saw")]
    [InlineData("""{"jobId": "J2", "sawId": "saw-2", "sequence": 1}""", "#/schedule/jobs/0/sawId saw_not_eligible")]
    [InlineData("""{"jobId": "J2", "sawId": "saw-1", "sequence": 1, "firstStep": 13}""", "#/schedule/jobs/0/firstStep work_steps")]
    [InlineData("""{"jobId": "J2", "sawId": "saw-1", "sequence": 1, "steps": 13}""", "#/schedule/jobs/0/steps work_steps")]
    [InlineData("""{"jobId": "J2", "sawId": "saw-1", "sequence": 1, "steps": 0}""", "#/schedule/jobs/0/steps work_steps")]
    public async Task What_cannot_be_timed_is_told_and_left_out(string row, string violation)
    {
        var request = ByHandRequest(jobs =>
        {
            jobs.Clear();
            jobs.Add(JsonNode.Parse(row));
        });
        var answer = await Answer(request);

        Assert.Contains(violation, Violations(answer));
        Assert.Empty(answer["jobs"]!.AsArray());
        Assert.Equal(0m, (decimal)answer["cost"]!["value"]!);
        Assert.All(answer["violations"]!.AsArray(), found => Assert.True(Pointers.Resolves((string)found!["pointer"]!, request), found!.ToJsonString()));
    }

    [Fact]
    public async Task A_thousand_violations_are_listed_and_all_are_counted()
    {
        var answer = await Answer(ByHandRequest(jobs =>
        {
            for (var i = 0; i < 1500; i++)
                jobs.Add(JsonNode.Parse($$"""{"jobId": "X{{i}}", "sawId": "saw-1", "sequence": {{i + 3}}, "work": [{"start": "2026-11-30T12:00:00+01:00", "finish": "2026-11-30T12:00:01+01:00", "steps": 1}]}"""));
        }));

        Assert.Equal((1500, 1000), ((int)answer["violationCount"]!, answer["violations"]!.AsArray().Count));
    }

    [Fact]
    public async Task Without_comparison_the_engine_makes_none()
    {
        var request = ByHandRequest();
        request["compare"] = false;

        Assert.Null((await Answer(request))["comparison"]);
    }

    public static TheoryData<string, string, string> Faults => new()
    {
        { "0/work/0/finish=\"2026-11-30T09:39:59+01:00\"", "#/schedule/jobs/0/work/0/finish", FaultCode.SpanEndsBeforeItBegins },
        { "0/setUps/0/finish=\"2026-11-30T08:49:00+01:00\"", "#/schedule/jobs/0/setUps/0/finish", FaultCode.SpanEndsBeforeItBegins },
        { "0/setUps/0/kind=\"coffee\"", "#/schedule/jobs/0/setUps/0/kind", FaultCode.UnknownValue },
        { "0/work/0/start=\"2006-11-30T09:39:59+01:00\"", "#/schedule/jobs/0/work/0/start", FaultCode.DateOutOfRange },
        { "0/work/0/steps=-1", "#/schedule/jobs/0/work/0/steps", FaultCode.TooSmall },
        { "0/sequence=0", "#/schedule/jobs/0/sequence", FaultCode.TooSmall },
        { "0/firstStep=0", "#/schedule/jobs/0/firstStep", FaultCode.TooSmall },
        { "0/setUps/0/mountedLife=1.5", "#/schedule/jobs/0/setUps/0/mountedLife", FaultCode.TooLarge },
        { "0/jobId=\"\"", "#/schedule/jobs/0/jobId", FaultCode.Empty },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task What_is_no_schedule_at_all_is_refused(string edit, string pointer, string code)
    {
        var place = edit.IndexOf('=', StringComparison.Ordinal);
        var request = ByHandRequest(jobs => Set(jobs, edit[..place], JsonNode.Parse(edit[(place + 1)..])));
        var problem = await host.Post(Path, request.ToJsonString(), code == FaultCode.UnknownValue ? 400 : 422);

        Assert.Equal([$"{pointer} {code}"], problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["code"]}"));
    }

    [Fact]
    public async Task More_steps_than_a_job_has_at_most_are_refused()
    {
        var request = ByHandRequest(jobs => jobs[0]!["work"] = new JsonArray([.. Enumerable.Range(0, 2).Select(_ => JsonNode.Parse("""{"start": "2026-11-30T12:00:00+01:00", "finish": "2026-11-30T12:00:01+01:00", "steps": 60000}"""))]));
        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Equal(["#/schedule/jobs/0/work too_large"], problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["code"]}"));
    }

    [Fact]
    public async Task More_spans_than_can_be_evaluated_are_too_much_work()
    {
        var request = ByHandRequest(jobs =>
        {
            foreach (var job in jobs.Take(2))
                job!["work"] = new JsonArray([.. Enumerable.Range(0, ScheduleLimits.Spans / 2).Select(_ => JsonNode.Parse("""{"start": "2026-11-30T12:00:00Z", "finish": "2026-11-30T12:00:01Z", "steps": 0}"""))]);
        });
        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Equal(["#/schedule/jobs too_much_work"], problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["code"]}"));
    }

    [Fact]
    public async Task Schedule_of_the_example_is_clean_as_the_engine_answers_it()
    {
        var example = JsonNode.Parse(host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Path == Schedules).Example)!.AsObject();
        var solved = await host.Post(Schedules, example.ToJsonString(), 200);

        Assert.Equal("complete", (string?)solved["status"]);
        await AssertAgreement(example, solved);
    }

    /// <summary>Whatever the engine schedules is clean by the evaluation, and costs the same to the last digit, cause by cause.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Engine_and_evaluation_agree(int hundred)
    {
        var scheduled = 0;
        for (var i = 0; i < 25; i++)
        {
            var request = new RandomSchedule(100 * hundred + i).Request();
            var solved = await host.Post(Schedules, request.ToJsonString(), 200);
            scheduled += (int)solved["totals"]!["scheduled"]!;
            await AssertAgreement(request, solved);
        }
        Assert.True(scheduled > 50, $"{scheduled} jobs");
    }

    private async Task AssertAgreement(JsonObject request, JsonObject solved)
    {
        var evaluated = request.DeepClone().AsObject();
        Assert.DoesNotContain(solved["unscheduled"]!.AsArray(), job => (string?)job!["reason"] == UnscheduledReason.NotVerified);
        evaluated["schedule"] = new JsonObject { ["jobs"] = solved["jobs"]!.DeepClone(), ["unscheduled"] = solved["unscheduled"]!.DeepClone() };
        var answer = await Answer(evaluated);

        Assert.True(Violations(answer).Count == 0, $"{string.Join("; ", answer["violations"]!.AsArray().Select(violation => violation!.ToJsonString()))}\n{request.ToJsonString()}");
        Assert.Equal((decimal)solved["objective"]!["value"]!, (decimal)answer["cost"]!["value"]!);
        Assert.True(JsonNode.DeepEquals(solved["objective"]!["terms"], answer["cost"]!["terms"]));
        Assert.Equal((decimal)answer["cost"]!["value"]!, answer["cost"]!["terms"]!.AsObject().Sum(term => (decimal)term.Value!));
        foreach (var member in new[] { "jobs", "saws", "totals", "changes" })
            Assert.True(JsonNode.DeepEquals(solved[member], answer[member]), $"{member}: {solved[member]} and {answer[member]}");
        Assert.Equal(0m, (decimal)answer["comparison"]!["difference"]!);
    }

    private Task<JsonObject> Answer(JsonObject request) => host.Post(Path, request.ToJsonString(), 200);

    private static List<string> Violations(JsonObject answer) =>
        [.. answer["violations"]!.AsArray().Select(violation => $"{violation!["pointer"]} {violation["code"]}")];

    /// <summary>Sets a value at a path such as <c>0/work/0/steps</c>.</summary>
    private static void Set(JsonArray jobs, string path, JsonNode? value)
    {
        var steps = path.Split('/');
        var parent = steps[..^1].Aggregate((JsonNode)jobs, static (node, step) => node is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : node[step]!);
        parent[steps[^1]] = value;
    }
}
