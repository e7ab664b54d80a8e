using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>The day of the example with a saw that is down for two days: what becomes late, why, and what would cure it.</summary>
[Collection(HostCollection.Name)]
public sealed class SawDownTests(ServiceHost host)
{
    [Fact]
    public async Task Saw_that_is_down_makes_an_order_late_and_the_answer_says_why_and_what_would_cure_it()
    {
        Assert.All((await PlanOf(_ => { }))["orders"]!.AsArray(), order => Assert.Null(order!["lateness"]));

        var down = await PlanOf(saw => saw["downtimes"] = new JsonArray(
            new JsonObject { ["start"] = "2026-11-30T06:00:00+01:00", ["end"] = "2026-12-02T06:00:00+01:00", ["reason"] = "drive repair" }));
        var late = down["orders"]!.AsArray().Where(order => order!["lateness"] is not null).ToList();

        // SO-4101 is promised for the second day at two in the afternoon.
        var order = Assert.Single(late)!;
        var (lateness, job) = (order["lateness"]!, JobOf(down, order));
        Assert.Equal(("SO-4101", "bar-saw"), (order["orderId"]!.GetValue<string>(), job["sawId"]!.GetValue<string>()));
        Assert.True(order["lateHours"]!.GetValue<decimal>() >= 16, "It is not done before the saw is back at six in the morning of the third day.");
        Assert.Equal(order["lateHours"]!.GetValue<decimal>() * 40m, lateness["cost"]!.GetValue<decimal>(), 2);

        // The causes add up to the hours from the start of the plan to the job's end. Of the 48 hours two shifts less their breaks, 15 and a quarter on each day, are lost.
        var hours = (job["finish"]!.GetValue<DateTimeOffset>() - new DateTimeOffset(2026, 11, 30, 6, 0, 0, TimeSpan.FromHours(1))).TotalHours;
        var causes = lateness["causes"]!.AsArray().ToDictionary(cause => cause!["kind"]!.GetValue<string>(), cause => cause!["hours"]!.GetValue<double>());
        Assert.Equal(hours, causes.Values.Sum(), 3);
        Assert.Equal((30.5, 17.5), (causes["sawDown"], causes["notAttended"]));

        var cure = Assert.Single(lateness["cures"]!.AsArray())!;
        Assert.Equal(("sawNotDown", "bar-saw", 0m), (cure["kind"]!.GetValue<string>(), cure["sawId"]!.GetValue<string>(), cure["lateHours"]!.GetValue<decimal>()));
    }

    private static JsonNode JobOf(JsonObject plan, JsonNode order) =>
        plan["jobs"]!.AsArray().Single(job => job!["jobId"]!.GetValue<string>() == order["lateness"]!["jobId"]!.GetValue<string>())!;

    private async Task<JsonObject> PlanOf(Action<JsonObject> change)
    {
        var request = JsonNode.Parse(Repository.Read("docs", "examples", "booking.json"))!.AsObject();
        change(request["shop"]!["saws"]!.AsArray().Single(saw => saw!["sawId"]!.GetValue<string>() == "bar-saw")!.AsObject());
        return await host.Post("/v1/plans", request.ToJsonString(), 200);
    }
}
