using System.Text.Json.Nodes;
using static SawEngine.Api.Tests.Features.CuttingData.CuttingDataBody;

namespace SawEngine.Api.Tests.Features.CuttingData;

/// <summary>Inclined cuts, cycle, accuracy and blade, as a caller gets them.</summary>
[Collection(HostCollection.Name)]
public sealed class CutQualityTests(ServiceHost host)
{
    /// <summary>By hand: A sqrt(1 + tan² 45 + tan² 45) = 17 320.508 mm² of 10 000; the saw tilts by atan(cos 45) = 35.26 degrees after its swivel.</summary>
    [Fact]
    public async Task Compound_miter_is_cut_by_a_saw_that_tilts()
    {
        const string cut = """, "face": {"heightAngle": 45, "widthAngle": 45}, "sawIds": ["swivel"]""";
        var refused = await host.Post(Url, Of("Square 100", "1045", cut).ToJsonString(), 200);
        Assert.Equal("compound_miter_not_possible", (string?)refused["notPossible"]![0]!["reason"]);

        var request = Of("Square 100", "1045", cut);
        Saw(request)["tiltRange"] = JsonNode.Parse("""{"toFirstEnd": 40, "toSecondEnd": 40}""");
        Assert.Equal(17320.508m, (decimal)Only(await host.Post(Url, request.ToJsonString(), 200))["areaMm2"]!);

        Saw(request)["tiltRange"] = JsonNode.Parse("""{"toFirstEnd": 35, "toSecondEnd": 35}""");
        Assert.Equal("miter_beyond_saw", (string?)(await host.Post(Url, request.ToJsonString(), 200))["notPossible"]![0]!["reason"]);
    }

    [Fact]
    public async Task Canted_head_travels_farther_at_the_same_rate()
    {
        var request = Of("Square 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"]""");
        var level = Only(await host.Post(Url, request.ToJsonString(), 200));
        Saw(request)["cantDegrees"] = 5;
        var canted = Only(await host.Post(Url, request.ToJsonString(), 200));
        Assert.Equal((decimal)level["areaMm2"]!, (decimal)canted["areaMm2"]!);
        // The head travels 100 + 100 tan 5 = 108.749 mm in the time of the cut.
        Assert.Equal(108.749, (double)canted["bladeFeedMmPerMin"]! * (double)canted["secondsPerCut"]! / 60, 0.15);
        Assert.Equal(100, (double)level["bladeFeedMmPerMin"]! * (double)level["secondsPerCut"]! / 60, 0.15);
    }

    /// <summary>1201.6 mm of index are three strokes of 500 mm; sqrt(3 x 0.05² + 0.05²) = 0.1 mm, on the grid of 1.27 µm 0.10033.</summary>
    [Fact]
    public async Task Cycle_unfolds_and_the_length_is_held_or_not()
    {
        var request = Of("Round 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"], "piece": {"length": 1200, "tolerance": {"plus": 0.1, "minus": 0.1}}""");
        var result = Only(await host.Post(Url, request.ToJsonString(), 200));
        var cycle = result["cycleSeconds"]!.AsObject();
        Assert.Equal(3, (int)cycle["strokes"]!);
        Assert.Equal((decimal)cycle["total"]!, new[] { "index", "clamp", "approach", "cut", "unload" }.Sum(part => (decimal)cycle[part]!));
        Assert.Equal((decimal)result["secondsPerCut"]!, (decimal)cycle["cut"]!);
        var accuracy = result["lengthAccuracy"]!;
        Assert.Equal((0.10033m, 0.1m, false), ((decimal)accuracy["largestError"]!, (decimal)accuracy["allowed"]!, (bool)accuracy["isHeld"]!));
        Assert.Equal(["oneStroke", "stop", "machiningAllowance"], accuracy["cures"]!.AsArray().Select(cure => (string)cure!));

        Saw(request)["barFeedStroke"] = 1500;
        Assert.True((bool)Only(await host.Post(Url, request.ToJsonString(), 200))["lengthAccuracy"]!["isHeld"]!);
    }

    [Fact]
    public async Task Ordered_squareness_holds_the_feed_back()
    {
        var free = Only(await host.Post(Url, Of("Square 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"]""").ToJsonString(), 200));
        var square = Only(await host.Post(Url, Of("Square 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"], "squareness": 0.15""").ToJsonString(), 200));
        Assert.Equal((0.29972m, null), ((decimal)free["outOfSquare"]!, (bool?)free["holdsSquareness"]));
        Assert.Equal(("squareness", true), ((string?)square["limitedBy"], (bool)square["holdsSquareness"]!));
        Assert.InRange((decimal)square["secondsPerCut"]! / (decimal)free["secondsPerCut"]!, 1.995m, 2.005m);
    }

    /// <summary>E t/D = 207 000 MPa x 1.1/450 = 506 MPa; six cuts of 100 cm² are the 0.06 m² of breaking in.</summary>
    [Fact]
    public async Task Stress_over_the_wheels_and_breaking_in_stand_beside_the_cut()
    {
        var request = Of("Square 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"]""");
        Saw(request)["wheelDiameter"] = 450;
        var result = Only(await host.Post(Url, request.ToJsonString(), 200));
        Assert.Equal((506m, 409.1m), ((decimal)result["bendingStressMpa"]!, (decimal)result["wheelDiameterPerThickness"]!));
        Assert.Equal((6, 0.5m), ((int)result["breakIn"]!["cuts"]!, (decimal)result["breakIn"]!["feedFactor"]!));
        Assert.InRange((decimal)result["breakIn"]!["secondsPerCut"]! / (decimal)result["secondsPerCut"]!, 1.995m, 2.005m);
    }

    [Fact]
    public async Task All_blades_of_all_saws_are_compared_on_request()
    {
        var request = Of("SHS 100x100x5 EN 10219", "S355J2");
        var best = await host.Post(Url, request.ToJsonString(), 200);
        request["compareBlades"] = true;
        var all = await host.Post(Url, request.ToJsonString(), 200);
        var pairs = all["results"]!.AsArray().Concat(all["notPossible"]!.AsArray()).Select(row => ((string?)row!["sawId"], (string?)row["bladeId"])).ToList();
        Assert.Equal(13, pairs.Distinct().Count());
        Assert.Equal(13, pairs.Count);
        Assert.Equal(Enumerable.Range(1, all["results"]!.AsArray().Count), all["results"]!.AsArray().Select(row => (int)row!["rank"]!));
        Assert.All(best["results"]!.AsArray(), row => Assert.Contains(all["results"]!.AsArray(), other =>
            (string?)other!["sawId"] == (string?)row!["sawId"] && (string?)other["bladeId"] == (string?)row["bladeId"] && (decimal)other["secondsPerCut"]! == (decimal)row["secondsPerCut"]!));
    }

    /// <summary>The middle of +4 is aimed at: 499 + 1.6 mm take two strokes of 500 mm.</summary>
    [Fact]
    public async Task Length_that_is_aimed_at_decides_the_strokes()
    {
        var result = Only(await host.Post(Url, Of("Round 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"], "piece": {"length": 497, "tolerance": {"plus": 4}}""").ToJsonString(), 200));
        Assert.Equal(2, (int)result["cycleSeconds"]!["strokes"]!);
    }

    [Theory]
    [InlineData("longestPiece", 700, "piece_too_long", "The piece is 800 mm long; saw swivel takes 700 mm at most.")]
    [InlineData("shortestPiece", 900, "piece_too_short", "The piece is 800 mm long; saw swivel cuts none under 900 mm.")]
    public async Task Piece_that_the_saw_does_not_take_says_why(string member, int limit, string reason, string detail)
    {
        var request = Of("Round 100", "1045", """, "sawIds": ["swivel"], "piece": {"length": 800}""");
        Saw(request)[member] = limit;
        var refusal = Assert.Single((await host.Post(Url, request.ToJsonString(), 200))["notPossible"]!.AsArray())!;
        Assert.Equal((reason, detail), ((string?)refusal["reason"], (string?)refusal["detail"]));
    }

    [Fact]
    public async Task What_goes_for_all_blades_of_a_saw_is_refused_once()
    {
        var request = Of("Round 300", "1045", """, "sawIds": ["square"]""");
        request["compareBlades"] = true;
        var refusal = Assert.Single((await host.Post(Url, request.ToJsonString(), 200))["notPossible"]!.AsArray())!;
        Assert.Equal(("section_exceeds_capacity", null), ((string?)refusal["reason"], (string?)refusal["bladeId"]));
    }

    [Fact]
    public async Task Cuts_left_follow_from_the_remaining_life()
    {
        var request = Of("Round 100", "1045", """, "bladeId": "3/4", "sawIds": ["swivel"]""");
        request["shop"]!["blades"]![1]!["remainingLife"] = 0.5;
        var result = Only(await host.Post(Url, request.ToJsonString(), 200));
        Assert.Equal((827, 413), ((int)result["cutsPerBlade"]!, (int)result["cutsLeft"]!));
    }

    [Fact]
    public async Task Accuracy_is_the_same_in_inches()
    {
        var metric = Of("Square 100", "1045", """, "bladeId": "2/3", "sawIds": ["swivel"], "squareness": 0.127, "piece": {"length": 1270, "tolerance": {"plus": 0.127, "minus": 0.127}}""");
        Saw(metric)["accuracy"] = JsonNode.Parse("""{"indexErrorPerStroke": 0.0508, "indexBiasPerStroke": -0.00508, "scaleErrorPpm": 20, "kerfError": 0.0254, "squareness": 0.002}""");
        Saw(metric)["barFeedStroke"] = 508;
        foreach (var blade in metric["shop"]!["blades"]!.AsArray())
            (blade!["width"], blade["thickness"], blade["kerf"]) = (31.75m, 1.0668m, 1.6002m);
        var inches = MetricTwinOf(metric);
        var (one, other) = (Only(await host.Post(Url, metric.ToJsonString(), 200)), Only(await host.Post(Url, inches.ToJsonString(), 200)));
        Assert.Equal((decimal)one["outOfSquare"]!, (decimal)other["outOfSquare"]! * 25.4m);
        foreach (var name in new[] { "largestError", "systematicError", "allowed" })
            Assert.Equal((decimal)one["lengthAccuracy"]![name]!, (decimal)other["lengthAccuracy"]![name]! * 25.4m);
        Assert.Equal((decimal)one["secondsPerCut"]!, (decimal)other["secondsPerCut"]!);
        Assert.Equal(one["cycleSeconds"]!.ToJsonString(), other["cycleSeconds"]!.ToJsonString());
    }

    private static JsonObject MetricTwinOf(JsonObject metric)
    {
        var inches = metric.DeepClone().AsObject();
        inches["lengthUnit"] = "in";
        var cut = inches["cuts"]![0]!;
        (cut["squareness"], cut["piece"]) = (0.005m, JsonNode.Parse("""{"lengthText": "50\"", "tolerance": {"plus": 0.005, "minus": 0.005}}"""));
        foreach (var saw in inches["shop"]!["saws"]!.AsArray())
            (saw!["capacity"], saw["tail"]) = (JsonNode.Parse("""{"round": 16, "width": 18, "height": 16}"""), 4);
        Saw(inches)["accuracy"] = JsonNode.Parse("""{"indexErrorPerStroke": 0.002, "indexBiasPerStroke": -0.0002, "scaleErrorPpm": 20, "kerfError": 0.001, "squareness": 0.002}""");
        Saw(inches)["barFeedStroke"] = 20;
        foreach (var blade in inches["shop"]!["blades"]!.AsArray())
            (blade!["width"], blade["thickness"], blade["kerf"]) = (1.25m, 0.042m, 0.063m);
        return inches;
    }

    private static JsonNode Saw(JsonObject request) => request["shop"]!["saws"]![0]!;

    private static JsonNode Only(JsonObject answer)
    {
        Assert.True(answer["results"]!.AsArray().Count == 1, answer.ToJsonString());
        return answer["results"]![0]!;
    }
}
