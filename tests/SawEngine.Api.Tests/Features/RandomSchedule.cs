using System.Globalization;
using System.Text.Json.Nodes;
using CsCheck;

namespace SawEngine.Api.Tests.Features;

/// <summary>Random requests for schedules by seed, in which everything that a shop and its jobs can say occurs now and then.</summary>
internal sealed class RandomSchedule(int seed)
{
    private static readonly string[] Sections = ["Round 50", "IPE 200", "Flat 80x12"];
    private static readonly string[] Groups = ["carbon steel", "stainless steel"];
    private static readonly string[] Grades = ["C45", "S355J2", "Ti-6Al-4V", "AZ31B"];
    private static readonly string[] Blades = ["b1", "b2"];
    private static readonly string[] Saws = ["s1", "s2", "s3"];

    private readonly PCG _random = new(1, (ulong)seed);
    private DateTimeOffset _start;

    /// <summary>The request.</summary>
    public JsonObject Request()
    {
        var start = Pick(["2026-10-24T05:30:00+02:00", "2026-10-30T06:00:00-04:00", "2027-03-26T06:00:00+01:00"]);
        _start = DateTimeOffset.Parse(start, CultureInfo.InvariantCulture);
        var jobs = Enumerable.Range(0, 3 + Below(8)).Select(Job).ToList();
        var request = new JsonObject
        {
            ["timeZone"] = Pick(["Europe/Vienna", "America/New_York"]),
            ["planStart"] = start,
            ["jobs"] = new JsonArray([.. jobs]),
            ["shop"] = Shop(),
            ["effort"] = "quick",
        };
        if (Chance(3))
            request["weights"] = new JsonObject { ["tardiness"] = Below(3), ["work"] = 1, ["setUps"] = Below(4) / 2m, ["overtime"] = 1 };
        if (Chance(3))
            request["makespanCostPerHour"] = Below(50);
        if (Chance(3))
            request["previous"] = Previous(jobs.Count);
        return request;
    }

    private JsonObject Job(int index)
    {
        var (splits, steps) = (Chance(5), 1 + Below(20));
        var job = new JsonObject { ["jobId"] = Id(index), ["options"] = new JsonArray([.. Saws.Where(_ => Chance(2)).DefaultIfEmpty("s1").Select(saw => Option(saw, splits ? steps : 1 + Below(20)))]) };
        if (Chance(2))
            (job["due"], job["costPerHourLate"]) = (At(Below(72)), Below(60));
        if (Chance(4))
            job["release"] = At(Below(30));
        if (Chance(4) && index > 0)
            job["after"] = new JsonArray(Id(Below(index)));
        if (Chance(8))
            job["frozen"] = new JsonObject { ["sawId"] = (string?)job["options"]![0]!["sawId"], ["start"] = At(3 * index) };
        if (splits)
            job["mostParts"] = 2;
        return job;
    }

    private JsonObject Option(string saw, int steps)
    {
        var option = new JsonObject { ["sawId"] = saw, ["seconds"] = 60 * steps + Below(14_000), ["steps"] = steps, ["section"] = Pick(Sections), ["gradeGroup"] = Pick(Groups) };
        if (Chance(3))
            (option["bladeId"], option["bladeLifeShare"]) = (Pick(Blades), Below(200) / 100m);
        if (Chance(4))
            option["angleDegrees"] = 15 * Below(4);
        if (Chance(3))
            (option["grade"], option["mayRunUnattended"]) = (Pick(Grades), true);
        if (Chance(8))
            option["mayPause"] = false;
        return option;
    }

    private JsonObject Shop()
    {
        var shop = new JsonObject
        {
            ["saws"] = new JsonArray([.. Saws.Select(Saw)]),
            ["blades"] = new JsonArray([.. Blades.Select(blade => JsonNode.Parse($$"""{"bladeId": "{{blade}}", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6], "remainingLife": 0.{{1 + Below(9)}}}"""))]),
            ["calendars"] = JsonNode.Parse("""
                [
                  {
                    "calendarId": "day",
                    "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "09:00", "end": "09:30"}]}],
                    "overtime": [{"days": ["SA"], "start": "06:00", "end": "12:00", "costPerHour": 20}]
                  },
                  {"calendarId": "night", "shifts": [], "recurringShifts": [{"firstDay": "2026-10-19", "start": "22:00", "minutes": 480, "recurrence": ["RRULE:FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA"]}]}
                ]
                """),
            ["rates"] = new JsonObject { ["laborCostPerHour"] = 40 },
        };
        if (Chance(3))
            shop["operators"] = JsonNode.Parse("""[{"operatorId": "ann", "calendarId": "day", "sawIds": ["s1", "s2"]}, {"operatorId": "bob", "calendarId": "day", "sawIds": ["s1", "s2"], "mostSaws": 1}]""");
        if (Chance(3))
            shop["walkingSeconds"] = 60;
        return shop;
    }

    private JsonObject Saw(string sawId)
    {
        var saw = JsonNode.Parse($$"""{"sawId": "{{sawId}}", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "bladeIds": ["b1", "b2"], "machineCostPerHour": {{30 + Below(30)}}}""")!.AsObject();
        saw["calendarId"] = sawId == "s3" && Chance(2) ? "night" : "day";
        if (Chance(2))
            saw["mountedBladeId"] = Pick(Blades);
        if (Chance(3))
            saw["shelf"] = JsonNode.Parse("""[{"bladeId": "b1", "remainingLife": 0.35}, {"bladeId": "b2", "remainingLife": 0.8}]""");
        if (Chance(2))
            (saw["initialSection"], saw["initialGradeGroup"], saw["initialAngleDegrees"]) = (Pick(Sections), Pick(Groups), 0);
        if (Chance(3))
            saw["unattended"] = JsonNode.Parse("""{"bars": 2, "cuts": 15, "hours": 6}""");
        if (Chance(4))
            saw["setUpBeside"] = new JsonArray("gradeGroup");
        if (Chance(4))
            saw["setUpChanges"] = JsonNode.Parse("""[{"kind": "section", "from": "Round 50", "to": "IPE 200", "seconds": 100}, {"kind": "gradeGroup", "to": "stainless steel", "seconds": 900}]""");
        if (Chance(4))
            saw["maintenance"] = JsonNode.Parse("""[{"firstDay": "2026-10-26", "start": "10:00", "minutes": 60, "recurrence": ["RRULE:FREQ=DAILY"]}]""");
        return saw;
    }

    private JsonObject Previous(int jobs) => new()
    {
        ["jobs"] = new JsonArray([.. Enumerable.Range(0, jobs).Where(_ => Chance(2)).Select(i => new JsonObject { ["jobId"] = Id(i), ["sawId"] = Pick(Saws), ["start"] = At(Below(60)) })]),
        ["costPerHourMoved"] = Below(5),
        ["costPerSawChange"] = Below(20),
    };

    private static string Id(int index) => $"J{index:00}";

    /// <summary>Hours after the start of the plan.</summary>
    private string At(int hours) => _start.AddHours(hours).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    private string Pick(string[] values) => values[Below(values.Length)];

    private int Below(int most) => (int)_random.Next((uint)most);

    private bool Chance(int oneIn) => Below(oneIn) == 0;
}
