namespace SawEngine.Api.Tests.Features.Nests;

/// <summary>Alternatives and near misses over HTTP; known answers by hand.</summary>
[Collection(HostCollection.Name)]
public sealed class NestChoicesTests(ServiceHost host)
{
    private const string Path = "/v1/nests";

    [Fact]
    public async Task Alternatives_stand_beside_the_cheapest_nest_where_they_are_better_in_their_kind()
    {
        var answer = await host.Post(
            Path,
            """
            {"pieces":[{"pieceId":"p","length":3000,"quantity":2}],
             "stock":[{"stockId":"long","kind":"bar","length":6000,"quantity":1,"cost":60},{"stockId":"short","kind":"bar","length":3000,"quantity":2,"cost":29}],
             "cut":{"kerf":0},"alternatives":["fewestNewRemnants","fewestBars"]}
            """,
            200);

        Assert.Equal(58m, (decimal?)answer["objective"]!["value"]);
        var alternative = Assert.Single(answer["alternatives"]!.AsArray())!;
        Assert.Equal("fewestBars", (string?)alternative["kind"]);
        Assert.Equal(60m, (decimal?)alternative["objective"]!["value"]);
        Assert.Equal("long", (string?)alternative["layouts"]![0]!["stockId"]);
        Assert.Equal(1, (int?)alternative["totals"]!["barsUsed"]);
    }

    [Fact]
    public async Task Near_misses_say_what_would_save_a_bar()
    {
        var answer = await host.Post(
            Path,
            """
            {"pieces":[{"pieceId":"p","length":2010,"quantity":7}],"stock":[{"stockId":"s","kind":"purchasable","length":6000}],
             "cut":{"kerf":0},"nearMisses":{"shorterBy":20,"fewerBy":2}}
            """,
            200);

        // Two on a bar take four bars. 10 mm shorter, three on a bar take three; one piece fewer takes three, too.
        var misses = answer["nearMisses"]!.AsArray().Select(miss => miss!).ToList();
        Assert.Equal(["shorter", "fewer"], misses.Select(miss => (string?)miss["change"]));
        Assert.All(misses, miss => Assert.Equal((1, 6000m), ((int)miss["barsSaved"]!, (decimal)miss["valueSaved"]!)));
        // Four eighths, rounded down to 9.9949, do not do; five eighths of 20 are 12.5, rounded down on 0.0127 once.
        Assert.Equal(12.4968m, (decimal?)misses[0]["shorterBy"]);
        Assert.Equal(1, (int?)misses[1]["fewerBy"]);
    }

    [Fact]
    public async Task Nothing_is_listed_that_was_not_asked_for()
    {
        var answer = (await host.Post(
            Path, """{"pieces":[{"pieceId":"p","length":2010,"quantity":7}],"stock":[{"stockId":"s","kind":"purchasable","length":6000}],"cut":{"kerf":0}}""", 200)).AsObject();
        Assert.False(answer.ContainsKey("alternatives"));
        Assert.False(answer.ContainsKey("nearMisses"));
    }

    [Fact]
    public async Task Kinds_that_are_not_known_are_refused()
    {
        var problem = await host.Post(
            Path, """{"pieces":[{"pieceId":"p","length":2010,"quantity":7}],"stock":[],"cut":{"kerf":0},"alternatives":["prettiest"]}""", 400);
        Assert.Equal("#/alternatives/0", (string?)problem["errors"]![0]!["pointer"]);
    }
}
