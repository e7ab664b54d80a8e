using System.Globalization;
using System.Text.Json.Nodes;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Features.Plans;

namespace SawEngine.Api.Tests.Features;

/// <summary>Random requests whose lengths lie on the grid of both units (0.000005 in = 0.000127 mm) have the same answer in both.</summary>
[Collection(HostCollection.Name)]
public sealed class MetricTwinTests(ServiceHost host)
{
    private const decimal Grid = 0.000005m;
    private const int Nests = 150;
    private const int Plans = 25;

    private static readonly string Booking = Repository.Read("docs", "examples", "booking-inch.json");

    [Fact]
    public async Task Nests_are_the_same_in_both_units()
    {
        var cuts = new List<JsonNode>();
        for (var seed = 0; seed < Nests; seed++)
        {
            var random = new Random(seed);
            var isCosted = random.Next(2) == 0;
            cuts.AddRange(await AssertTwins("/v1/nests", Nest(random, isCosted), typeof(NestRequest), typeof(NestResponse), isCosted, seed));
        }
        Assert.True(cuts.Count > 1000);
        Assert.True(cuts.Count(cut => cut["endCut"] is not null) > 300);
    }

    [Fact]
    public async Task Plans_are_the_same_in_both_units()
    {
        var cuts = new List<JsonNode>();
        for (var seed = 0; seed < Plans; seed++)
        {
            var random = new Random(seed);
            var isCosted = random.Next(2) == 0;
            cuts.AddRange(await AssertTwins("/v1/plans", Plan(random, isCosted), typeof(PlanRequest), typeof(PlanResponse), isCosted, seed));
        }
        Assert.True(cuts.Count > 500);
        Assert.True(cuts.Count(cut => cut["endCut"] is not null) > 50);
    }

    /// <summary>The comparison sees a length that is off by the finest step, a reason that differs, a twin that is missing and one too many.</summary>
    [Fact]
    public async Task Differences_are_seen()
    {
        var inches = JsonNode.Parse(Repository.Read("docs", "examples", "booking-inch-plan.json"))!.AsObject();
        var millimeters = await host.Post("/v1/plans", MetricTwin.Of(JsonNode.Parse(Booking)!.AsObject(), typeof(PlanRequest)).ToJsonString(), 200);
        AssertSeen("#/layouts/0/cuts/0/end", answer => answer["layouts"]![0]!["cuts"]![0]!["end"] = (decimal)answer["layouts"]![0]!["cuts"]![0]!["end"]! + 0.000001m);
        AssertSeen("#/unplaced/0/reason", answer => answer["unplaced"]![0]!["reason"] = "no_stock");
        AssertSeen("#/jobs/0/sequence", answer => answer["jobs"]![0]!.AsObject().Remove("sequence"));
        AssertSeen("#/jobs/0/cutting/powerHp", answer => answer["jobs"]![0]!["cutting"]!["powerHp"] = 1);
        Assert.Empty(MetricTwin.Differences(inches, millimeters, typeof(PlanResponse), isCosted: true));

        inches["jobs"]![0]!["cutting"]!.AsObject().Remove("powerHp");
        Assert.Single(MetricTwin.Differences(inches, millimeters, typeof(PlanResponse), isCosted: true));

        void AssertSeen(string pointer, Action<JsonNode> change)
        {
            var changed = millimeters.DeepClone().AsObject();
            change(changed);
            Assert.StartsWith(pointer + ":", Assert.Single(MetricTwin.Differences(inches, changed, typeof(PlanResponse), isCosted: true)), StringComparison.Ordinal);
        }
    }

    /// <summary>The cuts of the answer.</summary>
    private async Task<IEnumerable<JsonNode>> AssertTwins(string path, JsonObject request, Type asked, Type answered, bool isCosted, int seed)
    {
        var inches = await host.Post(path, request.ToJsonString(), 200);
        var millimeters = await host.Post(path, MetricTwin.Of(request, asked).ToJsonString(), 200);
        var differences = MetricTwin.Differences(inches, millimeters, answered, isCosted);
        Assert.True(differences.Count == 0, $"Seed {seed}: {string.Join("; ", differences)}");
        return inches["layouts"]!.AsArray().SelectMany(layout => layout!["cuts"]!.AsArray()).Select(cut => cut!);
    }

    private static JsonObject Nest(Random random, bool isCosted) => new()
    {
        ["lengthUnit"] = "in",
        ["pieces"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 9)).Select(i => Piece(random, i))]),
        ["stock"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 8)).Select(i => Stock(random, i, isCosted))]),
        ["cut"] = new JsonObject { ["kerf"] = OnGrid(random, 0m, 0.2m), ["trim"] = OnGrid(random, 0m, 2m), ["tail"] = OnGrid(random, 0m, 5m), ["costPerCut"] = isCosted ? random.Next(3) : 0, ["bundle"] = random.Next(2) == 0 ? null : Bundle(random) },
        ["remnants"] = random.Next(3) == 0 ? null : new JsonObject { ["keepFrom"] = OnGrid(random, 0m, 40m), ["valueFraction"] = random.Next(101) / 100m },
        ["effort"] = "quick",
    };

    private static JsonObject Bundle(Random random) =>
        new() { ["mostWide"] = random.Next(1, 5), ["mostHigh"] = random.Next(1, 4), ["largestWidth"] = OnGrid(random, 6m, 40m), ["largestHeight"] = OnGrid(random, 6m, 20m) };

    private static JsonObject Piece(Random random, int i) => Stated(random, OnGrid(random, 20m, 130m), new()
    {
        ["pieceId"] = $"P{i}",
        ["section"] = "W8X31",
        ["quantity"] = random.Next(1, 9),
        ["tolerance"] = random.Next(3) == 0 ? new JsonObject { ["plus"] = 2 * OnGrid(random, 0m, 0.1m), ["minus"] = 2 * OnGrid(random, 0m, 0.05m) } : null,
        ["lengthAt"] = new[] { "overall", "longSide", "shortSide", "centerline" }[random.Next(4)],
        ["secondEnd"] = random.Next(3) == 0 ? new JsonObject { ["widthAngle"] = random.Next(-45_000, 45_001) / 1000m } : null,
    });

    private static JsonObject Stock(Random random, int i, bool isCosted)
    {
        var kind = new[] { "bar", "remnant", "purchasable" }[random.Next(3)];
        return Stated(random, kind == "remnant" ? OnGrid(random, 24m, 200m) : 240m + 240m * random.Next(2), new()
        {
            ["stockId"] = $"S{i}",
            ["kind"] = kind,
            ["section"] = "W8X31",
            ["quantity"] = kind == "bar" ? random.Next(0, 5) : null,
            ["endCondition"] = new[] { "sawn", "sheared", "flameCut", "rolled" }[random.Next(4)],
            ["cost"] = isCosted ? random.Next(1, 100_000) / 100m : null,
        });
    }

    /// <summary>The day of the example with some of its lines, other lengths, kerfs, tails, trims, remnant rules and capacities, and with or without costs.</summary>
    private static JsonObject Plan(Random random, bool isCosted)
    {
        var day = JsonNode.Parse(Booking)!.AsObject();
        foreach (var order in day["orders"]!.AsArray())
        {
            foreach (var line in order!["lines"]!.AsArray())
                Restate(random, line!.AsObject(), OnGrid(random, 8m, 110m));
            for (var lines = order["lines"]!.AsArray(); lines.Count > 2;)
                lines.RemoveAt(random.Next(lines.Count));
        }
        foreach (var item in day["stock"]!.AsArray().Select(item => item!.AsObject()))
        {
            Restate(random, item, (string)item["kind"]! == "remnant" ? OnGrid(random, 20m, 150m) : OnGrid(random, 200m, 480m));
            if (!isCosted)
                item.Remove("cost");
        }
        var shop = day["shop"]!;
        foreach (var saw in shop["saws"]!.AsArray().Select(saw => saw!.AsObject()))
        {
            saw["tail"] = OnGrid(random, 0m, 6m);
            foreach (var side in new[] { "round", "width", "height" })
                saw["capacity"]![side] = OnGrid(random, 8m, 20m);
            saw["bundle"] = random.Next(4) == 0 ? null : Bundle(random);
            if (random.Next(2) == 0)
                saw.Remove("barFeedStroke");
            if (random.Next(4) == 0 && saw.Remove("bladeIds"))
                saw.Remove("mountedBladeId");
        }
        foreach (var blade in shop["blades"]!.AsArray())
            blade!["kerf"] = OnGrid(random, (decimal)blade["thickness"]!, 0.1m);
        shop["trim"] = new JsonObject { ["sheared"] = OnGrid(random, 0m, 1m), ["rolled"] = OnGrid(random, 0m, 2m) };
        shop["remnants"]!["keepFrom"] = OnGrid(random, 0m, 40m);
        return day;
    }

    private static void Restate(Random random, JsonObject stated, decimal inches)
    {
        stated.Remove("length");
        stated.Remove("lengthText");
        Stated(random, inches, stated);
    }

    /// <summary>The length as a number, or, to the 64th, as text.</summary>
    private static JsonObject Stated(Random random, decimal inches, JsonObject stated)
    {
        if (random.Next(2) == 0)
        {
            stated["length"] = inches;
            return stated;
        }
        var sixtyFourths = (int)(inches * 64);
        stated["lengthText"] = random.Next(2) == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sixtyFourths / 768}'-{sixtyFourths / 64 % 12} {sixtyFourths % 64}/64\"")
            : string.Create(CultureInfo.InvariantCulture, $"{sixtyFourths / 64} {sixtyFourths % 64}/64 in");
        return stated;
    }

    private static decimal OnGrid(Random random, decimal least, decimal most) => least + Grid * random.NextInt64((long)((most - least) / Grid) + 1);
}
