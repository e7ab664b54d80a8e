using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Schedules;

[Collection(HostCollection.Name)]
public sealed class ScheduleTests(ServiceHost host)
{
    private const string Path = "/v1/schedules";

    private JsonObject Example() =>
        JsonNode.Parse(host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Path == Path).Example)!.AsObject();

    /// <summary>
    /// By hand: chips and section for J2 from 06:00 to 06:15, work of 9300 s to 08:50; the blade for J1 to 08:55, its section's 600 s not before the break at 09:00 but after
    /// it, 09:30 to 09:40; work of 5400 s to 11:10. J1 first would need a second change of the blade.
    /// </summary>
    [Fact]
    public async Task Schedule_is_as_by_hand()
    {
        var answer = await Answer(Json(ByHand.Json));

        Assert.Equal(["J2 2026-11-30T06:15:00+01:00 2026-11-30T08:50:00+01:00", "J1 2026-11-30T09:40:00+01:00 2026-11-30T11:10:00+01:00"], Times(answer, "saw-1"));
        Assert.Equal(["J3 2026-11-30T09:30:00+01:00 2026-11-30T10:00:01+01:00"], Times(answer, "saw-2"));
        var j1 = Job(answer, "J1");
        Assert.Equal(
            ["blade 2026-11-30T08:50:00+01:00", "section 2026-11-30T09:30:00+01:00"],
            j1["setUps"]!.AsArray().Select(setUp => $"{setUp!["kind"]} {setUp["start"]}"));
        Assert.Equal("SO-1001", (string?)j1["attributes"]!["orderId"]);
        Assert.Equal("complete", (string?)answer["status"]);
        // 4.0833 h and 0.5 h of set-ups on saw-1 at 48 + 42, 0.5003 h and 0.25 h on saw-2 at 36 + 42, each hour's cost rounded down to a millionth a second.
        Assert.Equal(16500 * 0.025m + 2701 * 0.021666m, (decimal)answer["objective"]!["value"]!);
    }

    /// <summary>W. E. Smith, 1956: the weighted sum of finish times on one machine is least by ascending time over weight.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Overdue_jobs_without_set_ups_are_in_order_of_time_over_cost_late(int seed)
    {
        var random = new CsCheck.PCG(1, (ulong)seed);
        var jobs = Enumerable.Range(0, 7).Select(i => (Id: $"J{i}", Seconds: 600 + (int)random.Next(3000), Cost: 10 + (int)random.Next(90))).ToList();
        var request = OneSaw(jobs.Select(job => Json($$"""{"jobId": "{{job.Id}}", "due": "2026-11-30T00:00:00Z", "costPerHourLate": {{job.Cost}}, "options": [{"sawId": "s", "seconds": {{job.Seconds}}}]}""")));

        var answer = await Answer(request);

        Assert.Equal(jobs.OrderBy(job => job.Seconds / (double)job.Cost).Select(job => job.Id), answer["saws"]![0]!["jobIds"]!.AsArray().Select(id => (string)id!));
        Assert.Equal(7, (int)answer["totals"]!["lateJobs"]!);
        Assert.Equal(jobs.Sum(job => job.Seconds), (int)answer["totals"]!["workSeconds"]!);
    }

    [Theory]
    [InlineData("""{"options": []}""", "no_saw_for_job")]
    [InlineData("""{"options": [{"sawId": "s", "seconds": 90000}]}""", "step_longer_than_shift")]
    [InlineData("""{"options": [{"sawId": "never", "seconds": 60}]}""", "no_shift_left")]
    [InlineData("""{"options": [{"sawId": "s", "seconds": 60, "bladeId": "b", "bladeLifeShare": 1.5}]}""", "cut_exceeds_blade_life")]
    public async Task What_cannot_run_is_listed_with_the_reason(string members, string reason)
    {
        var job = Json(members);
        job["jobId"] = "J";

        var answer = await Answer(OneSaw([job, Json("""{"jobId": "K", "options": [{"sawId": "s", "seconds": 60}]}""")]));

        Assert.Equal("partial", (string?)answer["status"]);
        Assert.Equal([$"J {reason}"], answer["unscheduled"]!.AsArray().Select(row => $"{row!["jobId"]} {row["reason"]}"));
        Assert.Equal("K", (string?)answer["jobs"]!.AsArray().Single()!["jobId"]);
    }

    [Fact]
    public async Task Nothing_scheduled_has_no_finish()
    {
        var answer = await Answer(OneSaw([Json("""{"jobId": "J", "options": []}""")]));

        Assert.Equal("none", (string?)answer["status"]);
        Assert.Null(answer["totals"]!["finish"]);
        Assert.Equal(0, (decimal)answer["objective"]!["value"]!);
    }

    [Fact]
    public async Task Job_that_needs_several_blades_changes_them_between_its_steps()
    {
        var answer = await Answer(OneSaw([Json("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 4000, "steps": 10, "bladeId": "b", "bladeLifeShare": 2.5}]}""")]));

        var changes = Job(answer, "J")["setUps"]!.AsArray().Select(setUp => (string)setUp!["kind"]!).ToList();
        Assert.Equal(["blade", "bladeWorn", "bladeWorn"], changes);
        Assert.Equal(4000, (int)answer["totals"]!["workSeconds"]!);
    }

    [Theory]
    [InlineData("10", 3, "0.1", 10)]
    [InlineData("2", 100000, "0.00001", 2)]
    [InlineData("0.0001", 7, "0", 1)]
    public async Task Steps_take_no_more_time_than_their_job(string seconds, int steps, string share, int work)
    {
        var job = $$"""{"jobId": "J", "options": [{"sawId": "s", "seconds": {{seconds}}, "steps": {{steps}}, "bladeId": "b", "bladeLifeShare": {{share}}}]}""";
        var answer = await Answer(OneSaw([Json(job)]));

        Assert.Equal(work, (int)answer["totals"]!["workSeconds"]!);
        Assert.Equal("proof", (string?)answer["stoppedBy"]);
    }

    [Fact]
    public async Task Overdue_job_comes_with_a_warning_and_its_hours_late()
    {
        var answer = await Answer(OneSaw([Json("""{"jobId": "J", "due": "2026-11-30T05:00:00Z", "options": [{"sawId": "s", "seconds": 3600}]}""")]));

        Assert.Equal("job_overdue", (string?)answer["warnings"]![0]!["code"]);
        Assert.Equal(2, (decimal)Job(answer, "J")["lateHours"]!);
    }

    [Fact]
    public async Task Order_of_lists_does_not_matter()
    {
        var example = Example();
        var turned = Example();
        foreach (var list in new[] { turned["jobs"]!.AsArray(), turned["shop"]!["saws"]!.AsArray(), turned["shop"]!["blades"]!.AsArray(), turned["jobs"]![0]!["options"]!.AsArray() })
        {
            var items = list.Select(item => item!.DeepClone()).Reverse().ToList();
            list.Clear();
            items.ForEach(list.Add);
        }

        Assert.Equal(
            Answers.WithoutTiming((await Answer(example)).ToJsonString()),
            Answers.WithoutTiming((await Answer(turned)).ToJsonString()));
    }

    public static TheoryData<string, string, string> Faults => new()
    {
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "saw", "seconds": 60}]}]}""", "#/jobs/0/options/0/sawId", FaultCode.UnknownSaw },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "bladeId": "c"}]}]}""", "#/jobs/0/options/0/bladeId", FaultCode.UnknownBlade },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60}, {"sawId": "s", "seconds": 70}]}]}""", "#/jobs/0/options/1/sawId", FaultCode.DuplicateId },
        { """{"jobs": [{"jobId": "J", "due": "2046-01-01T00:00:00Z", "options": []}]}""", "#/jobs/0/due", FaultCode.DateOutOfRange },
        { """{"jobs": [{"jobId": "J", "release": "2006-01-01T00:00:00Z", "options": []}]}""", "#/jobs/0/release", FaultCode.DateOutOfRange },
        { """{"jobs": [{"jobId": "J", "after": ["K"], "options": []}]}""", "#/jobs/0/after/0", FaultCode.UnknownJob },
        { """{"jobs": [{"jobId": "J", "after": ["J"], "options": []}]}""", "#/jobs/0/after", FaultCode.AfterItself },
        { """{"jobs": [{"jobId": "J", "after": ["K", "K"], "options": []}, {"jobId": "K", "options": []}]}""", "#/jobs/0/after/1", FaultCode.DuplicateId },
        { """{"jobs": [{"jobId": "J", "options": []}, {"jobId": "K", "after": ["J", "M"], "options": []}, {"jobId": "L", "after": ["K"], "options": []}, {"jobId": "M", "after": ["L"], "options": []}]}""", "#/jobs/1/after", FaultCode.AfterItself },
        { """{"jobs": [{"jobId": "J", "frozen": {"sawId": "saw", "start": "2026-11-30T07:00:00Z"}, "options": []}]}""", "#/jobs/0/frozen/sawId", FaultCode.UnknownSaw },
        { """{"jobs": [{"jobId": "J", "frozen": {"sawId": "s", "start": "2046-11-30T07:00:00Z"}, "options": []}]}""", "#/jobs/0/frozen/start", FaultCode.DateOutOfRange },
        { """{"jobs": [{"jobId": "J", "frozen": {"sawId": "s", "start": "2026-11-30T05:00:00Z"}, "options": []}, {"jobId": "K", "frozen": {"sawId": "s", "start": "2026-11-30T06:00:00Z"}, "options": []}]}""", "#/jobs/1/frozen", FaultCode.FrozenJobsOverlap },
        { """{"jobs": [{"jobId": "J", "mostParts": 0, "options": []}]}""", "#/jobs/0/mostParts", FaultCode.TooSmall },
        { """{"jobs": [{"jobId": "J", "mostParts": 2, "options": [{"sawId": "s", "seconds": 60, "steps": 4}, {"sawId": "never", "seconds": 60, "steps": 5}]}]}""", "#/jobs/0/options", FaultCode.StepsDiffer },
        { """{"jobs": [{"jobId": "J", "mostParts": 2, "options": [{"sawId": "s", "seconds": 60, "steps": 4}, {"sawId": "never", "seconds": 0.001, "steps": 4}]}]}""", "#/jobs/0/options", FaultCode.StepsDiffer },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "mayRunUnattended": true}]}]}""", "#/jobs/0/options/0/mayRunUnattended", FaultCode.GradeRequired },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "grade": "S356J2"}]}]}""", "#/jobs/0/options/0/grade", FaultCode.UnknownGrade },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "steps": 2, "loads": 3, "loadSeconds": 60}]}]}""", "#/jobs/0/options/0/loads", FaultCode.MoreLoadsThanSteps },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "loads": 1}]}]}""", "#/jobs/0/options/0", FaultCode.ValueRequired },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "loadSeconds": 60}]}]}""", "#/jobs/0/options/0/loadSeconds", FaultCode.LoadsRequired },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "craneLoads": true}]}]}""", "#/jobs/0/options/0/craneLoads", FaultCode.LoadsRequired },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "loads": 1, "loadSeconds": 0}]}]}""", "#/jobs/0/options/0/loadSeconds", FaultCode.MustBePositive },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "angleDegrees": -90.5}]}]}""", "#/jobs/0/options/0/angleDegrees", FaultCode.TooSmall },
        { """{"jobs": [{"jobId": "J", "options": [{"sawId": "s", "seconds": 60, "angleDegrees": 22.5001}]}]}""", "#/jobs/0/options/0/angleDegrees", FaultCode.TooFine },
        { """{"grades": [{"gradeId": "g", "densityKgPerM3": 7850, "likeGrade": "C45"}, {"gradeId": "g", "densityKgPerM3": 7850, "likeGrade": "C45"}]}""", "#/grades/1/gradeId", FaultCode.DuplicateId },
        { """{"grades": [{"gradeId": "g", "densityKgPerM3": 7850, "likeGrade": "C44"}]}""", "#/grades/0/likeGrade", FaultCode.UnknownGrade },
        { """{"weights": {"tardiness": -1}}""", "#/weights/tardiness", FaultCode.TooSmall },
        { """{"weights": {"overtime": 1001}}""", "#/weights/overtime", FaultCode.TooLarge },
        { """{"makespanCostPerHour": -1}""", "#/makespanCostPerHour", FaultCode.TooSmall },
        { """{"previous": {"jobs": [{"jobId": "J", "sawId": "s", "start": "2026-11-30T06:00:00Z"}, {"jobId": "J", "sawId": "s", "start": "2026-11-30T06:00:00Z"}]}}""", "#/previous/jobs/1/jobId", FaultCode.DuplicateId },
        { """{"previous": {"jobs": [{"jobId": "J", "sawId": "s", "start": "2006-11-30T06:00:00Z"}]}}""", "#/previous/jobs/0/start", FaultCode.DateOutOfRange },
        { """{"previous": {"jobs": [{"jobId": "J", "sawId": "s", "start": "2026-11-30T06:00:00Z", "finish": "2106-11-30T06:00:00Z"}]}}""", "#/previous/jobs/0/finish", FaultCode.DateOutOfRange },
        { """{"previous": {"jobs": [], "costPerHourMoved": 10001}}""", "#/previous/costPerHourMoved", FaultCode.TooLarge },
        { """{"currency": "eur"}""", "#/currency", FaultCode.InvalidCurrency },
        { """{"timeZone": "Vienna"}""", "#/timeZone", FaultCode.UnknownTimeZone },
        { """{"planStart": "1850-01-01T00:00:00Z"}""", "#/planStart", FaultCode.DateOutOfRange },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task Broken_rule_is_422(string members, string pointer, string code)
    {
        var request = OneSaw([Json("""{"jobId": "J", "options": []}""")]);
        foreach (var (name, value) in Json(members))
            request[name] = value!.DeepClone();

        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Equal([$"{pointer} {code}"], problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["code"]}"));
        Assert.True(Pointers.Resolves(pointer, request));
    }

    /// <summary>Two circles, a job behind one of them, and a chain that is none: each circle is a fault once, at the job of it that is listed first.</summary>
    [Fact]
    public async Task Each_circle_of_jobs_is_told_once()
    {
        string[] after = ["", "2", "3", "1", "3", "7,4", "5", "6", "8"];
        var request = OneSaw(after.Select((ids, i) =>
        {
            var job = Json($$"""{"jobId": "{{i}}", "options": []}""");
            job["after"] = new JsonArray([.. ids.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(id => (JsonNode)id)]);
            return job;
        }));

        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Equal(
            ["#/jobs/1/after This job waits for itself: `1` after `2` after `3` after `1`.", "#/jobs/5/after This job waits for itself: `5` after `7` after `6` after `5`.", "#/jobs/8/after This job waits for itself: `8` after `8`."],
            problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["detail"]}"));
    }

    /// <summary>Each job follows the hundred before it: no circle, and no more work than there are pairs.</summary>
    [Fact]
    public async Task Long_chain_is_no_circle()
    {
        var request = OneSaw(Enumerable.Range(0, ScheduleLimits.Jobs).Select(i =>
        {
            var job = Json($$"""{"jobId": "{{i}}", "options": []}""");
            job["after"] = new JsonArray([.. Enumerable.Range(Math.Max(0, i - ScheduleLimits.Predecessors), Math.Min(i, ScheduleLimits.Predecessors)).Select(before => (JsonNode)$"{before}")]);
            return job;
        }));

        Assert.Equal("none", (string?)(await Answer(request))["status"]);
    }

    /// <summary>Titanium is cut attended, whatever the saw could do: all of its work lies in the shifts, and the answer says so.</summary>
    [Fact]
    public async Task Titanium_never_runs_unattended()
    {
        var request = OneSaw([Json("""{"jobId": "J", "options": [{"sawId": "s", "seconds": 100000, "steps": 1000, "grade": "Ti-6Al-4V", "mayRunUnattended": true}]}""")]);
        request["shop"]!["saws"]![0]!["unattended"] = JsonNode.Parse("""{"bars": 100, "cuts": 10000}""");

        var answer = await Answer(request);

        Assert.Equal("attended_only_grade", (string?)answer["warnings"]!.AsArray().Single()!["code"]);
        Assert.Equal(100_000, (int)answer["totals"]!["workSeconds"]!);
        Assert.Equal(0, (int)answer["totals"]!["unattendedSeconds"]!);
        Assert.All(Job(answer, "J")["work"]!.AsArray(), span =>
        {
            var (start, finish) = ((DateTimeOffset)span!["start"]!, (DateTimeOffset)span["finish"]!);
            Assert.True(start.Date == finish.Date && start.TimeOfDay >= TimeSpan.FromHours(6) && finish.TimeOfDay <= TimeSpan.FromHours(23), $"{start} to {finish}");
        });
    }

    [Fact]
    public async Task Too_many_steps_are_too_much_work()
    {
        var job = """{"jobId": "J0", "options": [{"sawId": "s", "seconds": 60, "steps": 100000}]}""";
        var request = OneSaw(Enumerable.Range(0, 21).Select(i => Json(job.Replace("J0", $"J{i}", StringComparison.Ordinal))));

        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Equal(FaultCode.TooMuchWork, (string?)problem["errors"]![0]!["code"]);
    }

    private Task<JsonObject> Answer(JsonObject request) => host.Post(Path, request.ToJsonString(), 200);

    private static IEnumerable<string> Times(JsonObject answer, string sawId) =>
        answer["jobs"]!.AsArray().Where(job => (string?)job!["sawId"] == sawId).OrderBy(job => (int)job!["sequence"]!).Select(job => $"{job!["jobId"]} {job["start"]} {job["finish"]}");

    private static JsonNode Job(JsonObject answer, string jobId) => answer["jobs"]!.AsArray().Single(job => (string?)job!["jobId"] == jobId)!;

    /// <summary>A saw that is attended all day, and one that never is.</summary>
    private static JsonObject OneSaw(IEnumerable<JsonObject> jobs)
    {
        var request = Json("""
            {
              "planStart": "2026-11-30T06:00:00Z",
              "jobs": [],
              "shop": {
                "saws": [
                  {"sawId": "s", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "bladeIds": ["b"], "calendarId": "all", "machineCostPerHour": 50},
                  {"sawId": "never", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "bladeIds": ["b"], "calendarId": "none"}
                ],
                "blades": [{"bladeId": "b", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6]}],
                "calendars": [
                  {"calendarId": "all", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "23:00"}]},
                  {"calendarId": "none", "shifts": []}
                ]
              }
            }
            """);
        request["jobs"] = new JsonArray([.. jobs]);
        return request;
    }

    private static JsonObject Json(string text) => JsonNode.Parse(text)!.AsObject();
}
