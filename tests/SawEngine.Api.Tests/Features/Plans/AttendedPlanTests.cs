using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>Plans on a saw that may run by itself, or in overtime. It is attended on weekdays from 06:00 to 14:00; the plan starts on a Monday at 06:00.</summary>
[Collection(HostCollection.Name)]
public sealed class AttendedPlanTests(ServiceHost host)
{
    /// <summary>More than a day of cutting: steel goes on by itself after 14:00, titanium and magnesium never do, whatever the saw could.</summary>
    [Theory]
    [InlineData("S235JR", false)]
    [InlineData("Ti-6Al-4V", true)]
    [InlineData("AZ31B", true)]
    public async Task Grades_that_burn_are_cut_attended(string grade, bool isAttendedOnly)
    {
        var plan = await Plan(grade, r => r["shop"]!["saws"]![0]!["unattended"] = JsonNode.Parse("""{"bars": 50, "cuts": 5000}"""));

        Assert.Equal("complete", (string?)plan["status"]);
        var spans = plan["jobs"]!.AsArray().SelectMany(job => job!["work"]!.AsArray()).Select(span => (Start: (DateTimeOffset)span!["start"]!, Finish: (DateTimeOffset)span["finish"]!)).ToList();
        Assert.True(spans.Sum(span => (span.Finish - span.Start).TotalHours) > 8, "more than a shift");
        Assert.Equal(isAttendedOnly, spans.TrueForAll(span => span.Start.Date == span.Finish.Date && span.Start.TimeOfDay >= TimeSpan.FromHours(6) && span.Finish.TimeOfDay <= TimeSpan.FromHours(14)));
    }

    /// <summary>All is done in overtime: an hour costs its extra price more, as labor, and nothing else changes.</summary>
    [Fact]
    public async Task Extra_price_of_overtime_is_labor_of_the_lines()
    {
        var (free, dear) = (await Plan("S235JR", r => InOvertime(r, 0)), await Plan("S235JR", r => InOvertime(r, 36)));

        var seconds = free["jobs"]!.AsArray().Sum(job => (decimal)job!["seconds"]!["setUp"]! + job["work"]!.AsArray().Sum(span => (decimal)((DateTimeOffset)span!["finish"]! - (DateTimeOffset)span["start"]!).TotalSeconds));
        Assert.True(seconds > 3600);
        Assert.Equal(Cost(free, "labor") + decimal.Round(seconds * 0.01m, 2, MidpointRounding.ToEven), Cost(dear, "labor"));
        foreach (var kind in new[] { "material", "machine", "blade", "handling" })
            Assert.Equal(Cost(free, kind), Cost(dear, kind));

        static void InOvertime(JsonNode request, decimal costPerHour)
        {
            var calendar = request["shop"]!["calendars"]![0]!;
            calendar["overtime"] = calendar["shifts"]!.DeepClone();
            foreach (var overtime in calendar["overtime"]!.AsArray())
                overtime!["costPerHour"] = costPerHour;
            calendar["shifts"] = new JsonArray();
        }
    }

    private async Task<JsonObject> Plan(string grade, Action<JsonNode> change)
    {
        var request = JsonNode.Parse($$"""
            {
              "planStart": "2026-11-30T06:00:00+01:00",
              "timeZone": "Europe/Vienna",
              "orders": [{"orderId": "SO-1", "lines": [{"lineId": "10", "section": "Round 50", "grade": "{{grade}}", "length": 50, "quantity": 800}]}],
              "stock": [{"stockId": "B", "kind": "bar", "section": "Round 50", "grade": "{{grade}}", "length": 3000, "quantity": 40, "cost": 100}],
              "shop": {
                "saws": [{"sawId": "saw-1", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 50, "calendarId": "day", "machineCostPerHour": 40}],
                "calendars": [{"calendarId": "day", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00"}]}],
                "rates": {"laborCostPerHour": 40}
              },
              "effort": "quick"
            }
            """)!;
        change(request);
        return await host.Post("/v1/plans", request.ToJsonString(), 200);
    }

    private static decimal Cost(JsonObject plan, string kind) => plan["orders"]!.AsArray().SelectMany(order => order!["lines"]!.AsArray()).Sum(line => (decimal)line!["cost"]![kind]!);
}
