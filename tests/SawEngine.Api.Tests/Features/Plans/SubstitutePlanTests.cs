using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Tests.Features.Plans;

[Collection(HostCollection.Name)]
public sealed class SubstitutePlanTests(ServiceHost host)
{
    private const string OurSteel = """{"gradeId": "our steel", "densityKgPerM3": 7850, "likeGrade": "42CrMo4+QT", "hardnessHb": 300}""";

    [Theory]
    [InlineData("42CrMo4+QT")]
    [InlineData("our steel")]
    public async Task Bars_of_a_substitute_are_cut_by_its_own_cutting_data_and_the_line_is_told(string grade)
    {
        var request = Example("/v1/plans");
        request["orders"] = JsonNode.Parse(Orders(grade));
        var plan = await host.Post("/v1/plans", WithStock(request, grade).ToJsonString(), 200);
        request["orders"]![0]!["lines"]![0]!["substitutes"] = new JsonArray();
        var strict = await host.Post("/v1/plans", request.ToJsonString(), 200);

        Assert.Equal("complete", (string?)plan["status"]);
        Assert.Equal([grade], plan["layouts"]!.AsArray().Select(layout => (string?)layout!["grade"]).Distinct());
        var job = Assert.Single(plan["jobs"]!.AsArray())!;
        Assert.Equal(grade, (string?)job["grade"]);
        // 46.5 m/min in 102 mm of the pre-hardened grade, 67.1 of C45 (grades.json); a saw that is slower than either limits both.
        Assert.InRange((decimal)job["cutting"]!["bladeSpeedMPerMin"]!, 30m, 60m);
        var nest = Assert.Single(plan["nests"]!.AsArray())!;
        Assert.Equal(["C45", grade], nest["joinedGrades"]!.AsArray().Prepend(nest["grade"]).Select(name => (string?)name));
        var warning = Assert.Single(plan["warnings"]!.AsArray(), one => (string?)one!["code"] == "substitute_used")!;
        Assert.Equal(("#/orders/0/lines/0/substitutes/0", "SO-1", "10"), ((string?)warning["pointer"], (string?)warning["orderId"], (string?)warning["lineId"]));
        Assert.Equal($"Pieces of `10` that are cut from {grade} in place of C45: 4.", (string?)warning["detail"]);

        Assert.Equal("none", (string?)strict["status"]);
        Assert.DoesNotContain(strict["warnings"]!.AsArray(), one => (string?)one!["code"] == "substitute_used");
        Assert.Null(strict["nests"]![0]!["joinedGrades"]);
    }

    [Fact]
    public async Task Estimate_prices_the_substitute_and_says_so()
    {
        var request = Example("/v1/estimates");
        request["order"] = JsonNode.Parse(Orders("42CrMo4+QT"))![0]!.DeepClone();
        request.Remove("priceBreaks");
        var estimate = await host.Post("/v1/estimates", WithStock(request, "42CrMo4+QT").ToJsonString(), 200);

        Assert.Equal("""[{"stockId":"other","quantity":2}]""", estimate["stockUsed"]!.ToJsonString());
        Assert.Equal("#/order/lines/0/substitutes/0", (string?)Assert.Single(estimate["warnings"]!.AsArray(), one => (string?)one!["code"] == "substitute_used")!["pointer"]);
    }

    [Fact]
    public async Task Ambiguous_substitute_is_warned_of_where_it_stands()
    {
        var request = Example("/v1/plans");
        request["orders"] = JsonNode.Parse(Orders("42CrMo4"));
        var plan = await host.Post("/v1/plans", WithStock(request, "42CrMo4+QT").ToJsonString(), 200);

        Assert.Equal("complete", (string?)plan["status"]);
        Assert.Equal("#/orders/0/lines/0/substitutes/0", (string?)Assert.Single(plan["warnings"]!.AsArray(), one => (string?)one!["code"] == "ambiguous_grade")!["pointer"]);
    }

    private static string Orders(string substitute) =>
        $$"""[{"orderId":"SO-1","lines":[{"lineId":"10","section":"Round 50","grade":"C45","substitutes":["{{substitute}}"],"length":2900,"quantity":4}]}]""";

    private static JsonObject WithStock(JsonObject request, string grade)
    {
        request["grades"] = new JsonArray(JsonNode.Parse(OurSteel));
        request["stock"] = new JsonArray(new JsonObject { ["stockId"] = "other", ["kind"] = "bar", ["section"] = "Round 50", ["grade"] = grade, ["length"] = 6000, ["quantity"] = 3, ["cost"] = 180 });
        return request;
    }

    private JsonObject Example(string path) =>
        JsonNode.Parse(host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Path == path).Example)!.AsObject();
}
