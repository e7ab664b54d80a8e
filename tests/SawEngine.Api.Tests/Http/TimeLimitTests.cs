using System.Text.Json.Nodes;
using SawEngine.Api.Tests.Features.Plans;

namespace SawEngine.Api.Tests.Http;

/// <summary>Where the clock ends a part of the work, the answer says so: without a limit it could be another.</summary>
public sealed class TimeLimitTests
{
    private const string Nest = """{"pieces":[{"pieceId":"p","length":1000,"quantity":3}],"stock":[{"stockId":"s","kind":"purchasable","length":6000}],"cut":{"kerf":0},"timeLimitSeconds":0.05""";

    [Theory]
    [InlineData(""","nearMisses":{"fewerBy":1}""", "timeLimit")]
    [InlineData(""","alternatives":["fewestBars"]""", "timeLimit")]
    [InlineData("", "proof")]
    public async Task Nest_says_that_the_search_beside_it_was_cut_short(string choices, string stoppedBy)
    {
        var solved = 0;
        Assert.Equal(stoppedBy, (string?)(await Answer("/v1/nests", Nest + choices + "}", cancellation =>
        {
            if (Interlocked.Increment(ref solved) > 1)
                cancellation.WaitHandle.WaitOne();
        }))["stoppedBy"]);
    }

    [Fact]
    public async Task Plan_says_that_it_was_cut_short()
    {
        var body = PlanExample.With(request => request["timeLimitSeconds"] = 0.05m);
        Assert.Equal("timeLimit", (string?)(await Answer("/v1/plans", body.ToJsonString(), cancellation => cancellation.WaitHandle.WaitOne()))["stoppedBy"]);
    }

    private static async Task<JsonNode> Answer(string path, string body, Action<CancellationToken> work)
    {
        await using var server = new KestrelServer(new NesterDouble(work));
        using var content = ServiceHost.Json(body);
        using var response = await server.Client.PostAsync(new Uri(path, UriKind.Relative), content);
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }
}
