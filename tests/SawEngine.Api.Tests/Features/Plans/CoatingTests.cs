using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Plans;

[Collection(HostCollection.Name)]
public sealed class CoatingTests(ServiceHost host)
{
    [Theory]
    [InlineData("zinc", "zinc_coating")]
    [InlineData("paint", "painted_stock")]
    [InlineData("none", null)]
    public async Task Job_that_cuts_coated_stock_carries_its_caution(string coating, string? code)
    {
        var request = JsonNode.Parse(Repository.Read("docs", "examples", "booking.json"))!.AsObject();
        foreach (var item in request["stock"]!.AsArray())
            item!["coating"] = coating;

        var plan = await host.Post("/v1/plans", request.ToJsonString(), 200);

        string[] kinds = ["zinc_coating", "painted_stock"];
        var found = plan["cautions"]!.AsArray().Where(caution => kinds.Contains((string)caution!["code"]!)).ToList();
        Assert.Equal(code is null ? [] : [code], found.Select(caution => (string)caution!["code"]!));
        if (code is not null)
            Assert.All(plan["jobs"]!.AsArray(), job => Assert.Contains((string)found[0]!["cautionId"]!, job!["cautionIds"]!.AsArray().Select(id => (string)id!)));
    }
}
