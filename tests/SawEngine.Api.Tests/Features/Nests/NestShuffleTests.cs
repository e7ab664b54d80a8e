using System.Text.Json;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Nests;

/// <summary>Requests with all that nesting knows: lists are sets, their order says nothing.</summary>
[Collection(HostCollection.Name)]
public sealed class NestShuffleTests(ServiceHost host)
{
    private const string Path = "/v1/nests";
    private static readonly string[] Sections = ["SHS 100x100x5 EN 10219", "UPN 100", "L 50x50x5"];
    private static readonly string[] Heats = ["H1", "H2"];
    private static readonly string[] Documents = ["2.2", "3.1"];

    [Fact]
    public async Task Shuffled_lists_give_the_same_answer()
    {
        var placed = 0;
        for (var seed = 0; seed < 50; seed++)
        {
            var random = new Random(seed);
            var request = Request(random);
            var answer = await host.Post(Path, request.ToJsonString(), 200);
            foreach (var list in new[] { "pieces", "stock" })
                request[list] = Shuffled(request[list]!.AsArray(), random);
            var shuffled = await host.Post(Path, request.ToJsonString(), 200);
            Assert.Equal(Answers.WithoutTiming(answer.ToJsonString()), Answers.WithoutTiming(shuffled.ToJsonString()));
            placed += answer["layouts"]!.AsArray().Count > 1 ? 1 : 0;
        }
        // Order matters only where there are several layouts.
        Assert.True(placed > 25, $"{placed} with several layouts");
    }

    private static JsonArray Shuffled(JsonArray list, Random random)
    {
        var items = list.Select(item => item!.DeepClone()).ToArray();
        random.Shuffle(items);
        return new(items);
    }

    private static JsonObject Request(Random random)
    {
        var section = Sections[random.Next(Sections.Length)];
        return new()
        {
            ["pieces"] = new JsonArray([.. Enumerable.Range(0, random.Next(3, 10)).Select(i => Piece(random, i, section))]),
            ["stock"] = new JsonArray([.. Enumerable.Range(0, random.Next(3, 8)).Select(i => Stock(random, i, section))]),
            ["cut"] = Parsed(new { kerf = 1.6, trim = random.Next(3) * 5, tail = random.Next(2) * 80, thinnestSlice = 2, costPerCut = random.Next(3) }),
            ["remnants"] = Parsed(new { keepFrom = 600, valueFraction = 0.5, classes = new[] { new { from = 2000, valueFraction = 0.8 } }, handlingCost = random.Next(3) }),
            ["effort"] = "quick",
        };
    }

    private static JsonNode Piece(Random random, int i, string section)
    {
        var heatRule = random.Next(6) switch { 0 => "single", 1 => "named", _ => "any" };
        return Parsed(new
        {
            pieceId = $"P{i}",
            section,
            grade = "S355J2H",
            length = 400 + random.Next(20_000) / 10m,
            quantity = random.Next(1, 12),
            priority = random.Next(1, 4),
            heatRule,
            heat = heatRule == "named" ? Heats[random.Next(Heats.Length)] : null,
            lengthAt = random.Next(2) == 0 ? "overall" : "centerline",
            firstEnd = new { heightAngle = random.Next(5) == 0 ? 30 : 0, widthAngle = random.Next(3) * 15 },
            secondEnd = new { heightAngle = 0, widthAngle = random.Next(3) * 15 },
            tolerance = new { plus = random.Next(3), minus = 0 },
            plant = random.Next(3) == 0 ? "north" : null,
        });
    }

    private static JsonNode Stock(Random random, int i, string section)
    {
        var kind = random.Next(3) switch { 0 => "remnant", 1 => "bar", _ => "purchasable" };
        return Parsed(new
        {
            stockId = $"S{i}",
            kind,
            section,
            grade = "S355J2H",
            length = kind == "remnant" ? 1_000 + random.Next(3_000) : 6_000 + 500 * random.Next(3),
            quantity = kind switch { "remnant" => 1, "bar" => random.Next(1, 5), _ => (int?)null },
            endCondition = random.Next(2) == 0 ? "sawn" : "sheared",
            cost = 20 + random.Next(100),
            pullCost = random.Next(3),
            heat = Heats[random.Next(Heats.Length)],
            certificate = Documents[random.Next(Documents.Length)],
            plant = random.Next(3) == 0 ? "south" : null,
            foreignPlantCost = random.Next(2) == 0 ? 5 : (int?)null,
        });
    }

    private static JsonNode Parsed<T>(T value) => JsonSerializer.SerializeToNode(value, Options)!;

    private static readonly JsonSerializerOptions Options = new() { DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull };
}
