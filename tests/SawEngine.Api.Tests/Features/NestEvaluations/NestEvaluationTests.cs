using System.Reflection;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Features.NestEvaluations;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Tests.Features.NestEvaluations;

[Collection(HostCollection.Name)]
public sealed class NestEvaluationTests(ServiceHost host)
{
    private const string Nests = "/v1/nests";
    private const string Path = "/v1/nests/evaluations";
    private const int RandomNests = 300;

    private const string Pieces = """[{"pieceId":"A","length":1000,"quantity":4},{"pieceId":"B","length":2000,"quantity":2}]""";
    private const string Stock = """[{"stockId":"S","kind":"bar","length":6000,"quantity":2},{"stockId":"R","kind":"remnant","length":3000}]""";
    private const string Cut = """{"kerf":2,"trim":10,"tail":50}""";

    /// <summary>What the document says that the code of a violation can be.</summary>
    private static readonly IReadOnlyList<string> KnownCodes = typeof(NestViolationJson).GetProperty(nameof(NestViolationJson.Code))!.GetCustomAttribute<KnownValuesAttribute>()!.Values;

    private static string Body(string layouts, string pieces = Pieces, string stock = Stock, string cut = Cut) =>
        $$"""{"pieces":{{pieces}},"stock":{{stock}},"cut":{{cut}},"effort":"quick","layouts":{{layouts}}}""";

    /// <summary>One layout of stock S.</summary>
    private static string Bar(string cuts, string more = "") => $$"""[{"layoutId":"L","stockId":"S","cuts":[{{cuts}}]{{more}}}]""";

    private static string At(string piece, decimal start, decimal end, string more = "") =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{{\"pieceId\":\"{piece}\",\"start\":{start},\"end\":{end}{more}}}");

    private static string OneStock(string more) => $$"""[{"stockId":"S","kind":"bar","length":6000,"quantity":2{{more}}}]""";

    private static string Zoned(string kind) =>
        $$"""[{"stockId":"S","kind":"remnant","length":6000,"zones":[{"from":1500,"to":1600,"kind":"{{kind}}"}]}]""";

    private static string Mitered(string section) => OnePiece($",\"section\":\"{section}\",\"secondEnd\":{{\"widthAngle\":30}}");

    /// <summary>Layouts of which one may leave a remnant.</summary>
    private static string Limited(params string[] layouts) => Body($"[{string.Join(',', layouts)}]")
        .Replace("\"effort\"", "\"remnants\":{\"keepFrom\":500,\"valueFraction\":0.5,\"mostNew\":1},\"effort\"", StringComparison.Ordinal);

    private static string Kept(string id, string kind) => $$$"""{"layoutId":"{{{id}}}","stockId":"S","cuts":[{{{A}}}],"remainder":{"kind":"{{{kind}}}"}}""";

    private static string OnePiece(string more) => $$"""[{"pieceId":"A","length":1000,"quantity":4{{more}}}]""";

    private const string A = """{"pieceId":"A"}""";
    private const string B = """{"pieceId":"B"}""";

    /// <summary>Edits in which just one rule is broken.</summary>
    public static TheoryData<string, string, string> Mutants => new()
    {
        { Body(Bar($"{At("A", 0, 1000)},{At("B", 900, 2900)}")), "#/layouts/0/cuts/1", NestRule.Overlap },
        { Body(Bar($"{At("A", 0, 1000)},{At("B", 1001, 3001)}")), "#/layouts/0/cuts/1", NestRule.Kerf },
        { Body(Bar($"{At("B", 0, 2000)},{At("A", 2002, 3002)},{At("A", 3003, 4003)}")), "#/layouts/0/cuts/2", NestRule.Kerf },
        { Body(Bar($"{At("A", 1002, 2002)},{At("A", 0, 1000)}")), "#/layouts/0/cuts/1", NestRule.CutOrder },
        { Body(Bar(At("A", 5500, 6500)), cut: """{"kerf":2}"""), "#/layouts/0/cuts/0", NestRule.OutsideBar },
        { Body(Bar($"{A},{At("A", 4960, 5960)}")), "#/layouts/0/cuts/1", NestRule.Tail },
        { Body(Bar($"{A},{B},{At("A", 3004, 4003)}")), "#/layouts/0/cuts/2", NestRule.PieceLength },
        { Body("""[{"layoutId":"L","stockId":"X","cuts":[{"pieceId":"A"}]}]"""), "#/layouts/0/stockId", NestRule.UnknownStock },
        { Body(Bar($"{A},{At("X", 1002, 1500)},{B}")), "#/layouts/0/cuts/1", NestRule.UnknownPiece },
        { Body(Bar($$"""{{A}},{"pieceId":"X"},{{B}}""")), "#/layouts/0/cuts/1", NestRule.UnknownPiece },
        { Body(Bar("")), "#/layouts/0/cuts", NestRule.EmptyLayout },
        { Body($$"""[{"layoutId":"1","stockId":"R","cuts":[{{A}}]},{"layoutId":"2","stockId":"S","cuts":[{{A}}]},{"layoutId":"3","stockId":"R","cuts":[{{B}}]}]"""), "#/layouts/2", NestRule.RemnantUsedTwice },
        { Body($$"""[{"layoutId":"1","stockId":"R","cuts":[{{A}}],"repeat":2}]"""), "#/layouts/0", NestRule.RemnantUsedTwice },
        { Body($$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}}]},{"layoutId":"2","stockId":"S","cuts":[{{A}}],"repeat":2}]"""), "#/layouts/1", NestRule.StockOverused },
        { Body($$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}},{{A}},{{A}}]},{"layoutId":"2","stockId":"R","cuts":[{{A}},{{A}}]}]"""), "#/layouts/1/cuts/1", NestRule.TooManyPieces },
        { Body(Bar($"{A},{B}"), Pieces.Replace("\"B\"", "\"B\",\"section\":\"Y\"").Replace("\"A\"", "\"A\",\"section\":\"X\""), OneStock(",\"section\":\"X\"")), "#/layouts/0/cuts/1", NestRule.Section },
        { Body(Bar($"{A},{B}"), Pieces.Replace("\"B\"", "\"B\",\"grade\":\"Y\"").Replace("\"A\"", "\"A\",\"grade\":\"X\""), OneStock(",\"grade\":\"X\"")), "#/layouts/0/cuts/1", NestRule.Grade },
        {
            Body(
                Bar($"{A},{B}"),
                Pieces.Replace("\"B\"", "\"B\",\"section\":\"IPE 300\",\"secondEnd\":{\"widthAngle\":30}").Replace("\"A\"", "\"A\",\"section\":\"IPE 200\""),
                OneStock(",\"section\":\"IPE 200\"")),
            "#/layouts/0/cuts/1", NestRule.Section
        },
        { Body(Bar(A), OnePiece(",\"certificate\":\"3.1\""), OneStock(",\"heat\":\"H1\"")), "#/layouts/0/cuts/0", NestRule.Certificate },
        { Body(Bar(A), OnePiece(",\"certificate\":\"3.1\""), OneStock(",\"certificate\":\"3.1\"")), "#/layouts/0/cuts/0", NestRule.LostHeat },
        { Body(Bar(A), OnePiece(",\"heatRule\":\"named\",\"heat\":\"H2\""), OneStock(",\"heat\":\"H1\"")), "#/layouts/0/cuts/0", NestRule.NamedHeat },
        { Body(Bar(A), OnePiece(",\"heatRule\":\"single\"")), "#/layouts/0/cuts/0", NestRule.HeatUnknown },
        {
            Body(
                $$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}},{{A}}]},{"layoutId":"2","stockId":"T","cuts":[{{A}},{{A}}]}]""",
                OnePiece(",\"heatRule\":\"single\""),
                """[{"stockId":"S","kind":"remnant","length":6000,"heat":"H1"},{"stockId":"T","kind":"remnant","length":6000,"heat":"H2"}]"""),
            "#/layouts/1/cuts/0", NestRule.HeatsMixed
        },
        { Body(Bar(At("A", 0, 1000)), stock: OneStock(",\"endCondition\":\"sheared\"")), "#/layouts/0/cuts/0", NestRule.RawStart },
        { Body(Bar(At("A", 5, 1005)), stock: OneStock(",\"endCondition\":\"sheared\"")), "#/layouts/0/cuts/0", NestRule.Trim },
        { Body(Bar(At("A", 4995, 5995)), stock: OneStock(",\"endCondition\":\"sheared\""), cut: """{"kerf":2,"trim":10}"""), "#/layouts/0/cuts/0", NestRule.RawEnd },
        { Body(Bar(A, ",\"trimLength\":5"), stock: OneStock(",\"endCondition\":\"sheared\"")), "#/layouts/0/trimLength", NestRule.Trim },
        { Body(Bar(A, ",\"kerfLength\":3")), "#/layouts/0", NestRule.Conservation },
        { Body(Bar(A, ",\"remainder\":{\"length\":4999}")), "#/layouts/0/remainder", NestRule.RemainderLength },
        { Body(Bar(A, ",\"remainder\":{\"kind\":\"remnant\"}")), "#/layouts/0/remainder", NestRule.RemainderKind },
        { Body(Bar(A, ",\"remainder\":{\"value\":10000000}")), "#/layouts/0/remainder", NestRule.RemainderValueHigh },
        { Body(Bar(A, ",\"heat\":\"H9\"")), "#/layouts/0/heat", NestRule.UnknownStock },
        { Body(Bar(A, ",\"section\":\"Z\"")), "#/layouts/0/section", NestRule.UnknownStock },
        { Body(Bar(A, ",\"owner\":\"O9\"")), "#/layouts/0/owner", NestRule.UnknownStock },
        { Body(Bar(A, ",\"plant\":\"Q9\"")), "#/layouts/0/plant", NestRule.UnknownStock },
        { Body(Bar($"{A},{B}"), Pieces.Replace("\"A\"", "\"A\",\"owner\":\"O1\""), OneStock(",\"owner\":\"O1\"")), "#/layouts/0/cuts/1", NestRule.Owner },
        { Body(Bar($"{A},{B}"), Pieces.Replace("\"B\"", "\"B\",\"plant\":\"Q1\""), OneStock(",\"plant\":\"Q2\"")), "#/layouts/0/cuts/1", NestRule.Plant },
        { Body(Bar($"{A},{B}"), stock: OneStock(",\"reservedFor\":[\"A\"]")), "#/layouts/0/cuts/1", NestRule.Reserved },
        { Body(Bar($"{At("A", 0, 1000)},{At("A", 1550, 2550)}"), stock: Zoned("defective")), "#/layouts/0/cuts/1", NestRule.PieceInZone },
        { Body(Bar($"{At("A", 0, 1000)},{At("A", 1650, 2650)}"), stock: Zoned("reserved")), "#/layouts/0/cuts/1", NestRule.ReservedZone },
        { Body(Bar($"{A},{At("B", 1006, 3006)}"), cut: """{"kerf":2,"thinnestSlice":5}"""), "#/layouts/0/cuts/1", NestRule.Slice },
        { Body(Bar($"{A},{B}"), cut: """{"kerf":2,"longestPiece":1999}"""), "#/layouts/0/cuts/1", NestRule.LongestPiece },
        { Body(Bar($"{A},{B}"), Pieces.Replace("2000", "1000").Replace("\"B\"", "\"B\",\"priority\":6")), "#/layouts/0/cuts/1", NestRule.Priority },
        { Body(Bar($"{A},{At("A", 1002.5m, 2002.9m)}"), OnePiece(",\"tolerance\":{\"plus\":1}")), "#/layouts/0/cuts/1", NestRule.PieceLength },
        { Body(Bar(A, ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":1}"), OnePiece(",\"section\":\"Square 50\"")), "#/layouts/0/bundle", NestRule.BundleTooLarge },
        {
            Body(Bar(A, ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":1}"), OnePiece(",\"section\":\"L 100x100x10\""), cut: """{"kerf":2,"bundle":{"mostWide":4}}"""),
            "#/layouts/0/bundle", NestRule.BundleSection
        },
        {
            Body(Bar(A, ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":1}"), OnePiece(",\"section\":\"Round 50\""), cut: """{"kerf":2,"bundle":{"mostWide":4}}"""),
            "#/layouts/0/bundle", NestRule.BundleHoldDown
        },
        {
            Body(Bar(A, ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":2}"), OnePiece(",\"section\":\"Square 50\""), cut: """{"kerf":2,"bundle":{"mostWide":4,"mostHigh":2}}"""),
            "#/layouts/0/bundle", NestRule.BundleSize
        },
        {
            Body(
                Bar(A, ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":1}"),
                OnePiece(""),
                OneStock(",\"certificate\":\"3.1\""),
                cut: """{"kerf":2,"bundle":{"mostWide":4}}"""),
            "#/layouts/0/bundle", NestRule.BundleHeats
        },
        {
            Body(Bar("""{"pieceId":"A"}""", ",\"repeat\":2,\"bundle\":{\"wide\":2,\"high\":1}"), Mitered("IPE 200"), cut: """{"kerf":2,"bundle":{"mostWide":4}}"""),
            "#/layouts/0/bundle", NestRule.BundleMiter
        },
        { Limited(Kept("L", "remnant"), Kept("M", "remnant")), "#/layouts/1/remainder", NestRule.TooManyRemnants },
        { Limited(Kept("L", "scrap"), Kept("M", "scrap")), "#/layouts/0/remainder", NestRule.RemainderKind },
        { Limited("""{"layoutId":"L","stockId":"S","repeat":2,"cuts":[{"pieceId":"A"}]}"""), "#/layouts/0", NestRule.RemainderKind },
        { Body(Bar("""{"pieceId":"A","turn":"over","endCut":{"widthAngle":30}}"""), Mitered("IPE 200")), "#/layouts/0/cuts/0", NestRule.Miter },
        { Body(Bar($$"""{{A}},{"pieceId":"A","turn":"endForEnd"}"""), Mitered("UPN 100")), "#/layouts/0/cuts/1", NestRule.Turn },
        { Body(Bar($$"""{{A}},{"pieceId":"A","centerlineLength":999}"""), Mitered("IPE 200")), "#/layouts/0/cuts/1", NestRule.PieceLength },
        {
            Body(
                Bar("""{"pieceId":"A","endCut":{"widthAngle":-30}}"""),
                OnePiece(",\"section\":\"IPE 200\",\"secondEnd\":{\"widthAngle\":30}")),
            "#/layouts/0/cuts/0", NestRule.Miter
        },
    };

    /// <summary>Which of the layouts is one too many depends on their order in the request; what each is does not.</summary>
    [Fact]
    public async Task Layouts_that_are_too_many_together_are_listed_whatever_their_order()
    {
        const string L = """{"layoutId":"L","stockId":"S","cuts":[{"pieceId":"B"},{"pieceId":"B"}]}""";
        const string M = """{"layoutId":"M","stockId":"S","cuts":[{"pieceId":"B"}]}""";

        var (there, back) = (await host.Post(Path, Body($"[{L},{M}]"), 200), await host.Post(Path, Body($"[{M},{L}]"), 200));

        Assert.Equal("#/layouts/1/cuts/0", (string?)Assert.Single(there["violations"]!.AsArray())!["pointer"]);
        Assert.Equal("#/layouts/1/cuts/1", (string?)Assert.Single(back["violations"]!.AsArray())!["pointer"]);
        Assert.Equal(["L", "M"], there["layouts"]!.AsArray().Select(layout => (string?)layout!["layoutId"]));
        Assert.Equal(there["layouts"]!.ToJsonString(), back["layouts"]!.ToJsonString());
    }

    [Theory]
    [MemberData(nameof(Mutants))]
    public async Task One_broken_rule_is_found_at_its_place_and_nothing_else(string body, string pointer, string code)
    {
        var answer = await host.Post(Path, body, 200);

        var violation = Assert.Single(answer["violations"]!.AsArray())!;
        Assert.Equal((pointer, code), ((string?)violation["pointer"], (string?)violation["code"]));
        Assert.False(string.IsNullOrEmpty((string?)violation["detail"]));
        Assert.Contains(code, KnownCodes);
        Assert.True(Pointers.Resolves(pointer, Pointers.Read(body)));
        Assert.False((bool?)answer["isClean"]);
    }

    [Theory]
    [InlineData("""{"kerf":0.063}""", 0, 10, 10.05, "Layout mine: 0.05 in between A and A; the kerf needs 0.063 in.")]
    [InlineData("""{"kerf":0.063}""", 0, 10, 9.5, "Layout mine: no material between A and A.")]
    [InlineData("""{"kerf":0.063,"thinnestSlice":0.25}""", 0, 10, 10.226, "Layout mine: a slice of 0.1 in between A and A; none is thinner than 0.25 in.")]
    [InlineData("""{"kerf":0.063}""", 0, 9.5, 10, "Layout mine: A, 9.5 in long; ordered is 10 in.")]
    [InlineData("""{"kerf":0.063,"tail":5}""", 0, 10, 106, "Layout mine: 3.937 in behind the last kerf; the tail needs 5 in.")]
    [InlineData("""{"kerf":0.063,"longestPiece":9}""", 0, 10, 12, "Layout mine: A, 10 in long; no piece is longer than 9 in.")]
    public async Task Violation_names_the_layout_and_says_what_is_found_and_what_is_required_in_the_unit_of_the_request(
        string cut, decimal start, decimal end, decimal next, string detail)
    {
        var answer = await host.Post(
            Path,
            $$"""
            {"lengthUnit":"in","pieces":[{"pieceId":"A","length":10,"quantity":2}],"stock":[{"stockId":"B","kind":"bar","length":120,"quantity":1}],"cut":{{cut}},"compare":false,
             "layouts":[{"layoutId":"mine","stockId":"B","cuts":[{{At("A", start, end)}},{{At("A", next, next + 10)}}]}]}
            """,
            200);

        Assert.Contains(detail, answer["violations"]!.AsArray().Select(violation => (string?)violation!["detail"]));
        Assert.DoesNotContain("nm", string.Concat(answer["violations"]!.AsArray().Select(violation => (string?)violation!["detail"])), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Violations_come_in_the_order_of_the_layouts_and_layouts_without_any_are_answered()
    {
        var answer = await host.Post(
            Path,
            Body($$"""[{"layoutId":"2","stockId":"S","cuts":[{"pieceId":"X"},{{At("A", 100, 1100)}},{{At("A", 1000, 2000)}}]},{"layoutId":"1","stockId":"R","cuts":[{{B}}]},{"layoutId":"0","stockId":"Y","cuts":[]}]"""),
            200);

        AssertJson(
            """[["#/layouts/0/cuts/0","unknown_piece"],["#/layouts/0/cuts/2","pieces_overlap"],["#/layouts/2/stockId","unknown_stock"]]""",
            new JsonArray([.. answer["violations"]!.AsArray().Select(v => new JsonArray(v!["pointer"]!.DeepClone(), v["code"]!.DeepClone()))]));
        Assert.Equal("1", (string?)Assert.Single(answer["layouts"]!.AsArray())!["layoutId"]);
        Assert.Equal(2, (int?)answer["totals"]!["barsUsed"]);
    }

    [Fact]
    public async Task Pieces_left_out_are_unplaced_and_break_no_rule()
    {
        var answer = await host.Post(Path, Body(Bar($"{A},{B}")), 200);

        Assert.True((bool?)answer["isClean"]);
        AssertJson("""[{"pieceId":"A","quantity":3,"reason":"not_in_layouts"},{"pieceId":"B","quantity":1,"reason":"not_in_layouts"}]""", answer["unplaced"]);
        Assert.Equal(6000m, (decimal?)answer["value"]);
    }

    /// <summary>By hand: behind the trim of 10 mm the pieces lie a kerf of 2 mm apart, the remainder begins a kerf behind the last; it is worth 0.5 of its share of 60.</summary>
    [Fact]
    public async Task Positions_left_out_follow_from_trim_and_kerf()
    {
        var body = Body(Bar($"{A},{B}"), stock: OneStock(",\"endCondition\":\"sheared\",\"cost\":60")).Replace("\"effort\"", "\"remnants\":{\"keepFrom\":500,\"valueFraction\":0.5},\"effort\"", StringComparison.Ordinal);
        var answer = await host.Post(Path, body, 200);

        AssertJson(
            """
            [{"layoutId":"L","sequence":1,"stockId":"S","repeat":1,"trimLength":10,"kerfLength":4,"cutCount":3,"cuts":[{"pieceId":"A","start":10,"end":1010},{"pieceId":"B","start":1012,"end":3012}],
              "remainder":{"length":2986,"kind":"remnant","value":14.93}}]
            """,
            answer["layouts"]);
        Assert.Equal(60m - 14.93m, (decimal?)answer["value"]);
    }

    [Fact]
    public async Task End_alone_and_start_alone_place_a_piece()
    {
        var answer = await host.Post(Path, Body(Bar("""{"pieceId":"A","end":1200},{"pieceId":"B","start":1500},{"pieceId":"A"}""")), 200);

        AssertJson("""[{"pieceId":"A","start":200,"end":1200},{"pieceId":"B","start":1500,"end":3500},{"pieceId":"A","start":3502,"end":4502}]""", answer["layouts"]![0]!["cuts"]);
    }

    [Fact]
    public async Task Example_is_compared_with_the_engines_own_nest()
    {
        var example = host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Path == Path).Example;
        var answer = await host.Post(Path, example, 200);
        var nest = JsonNode.Parse(example)!.AsObject();
        Assert.True(nest.Remove("layouts") && nest.Remove("compare"));
        var own = await host.Post(Nests, nest.ToJsonString(), 200);

        var violation = Assert.Single(answer["violations"]!.AsArray())!;
        Assert.Equal(("#/layouts/2/cuts/1", NestRule.Kerf), ((string?)violation["pointer"], (string?)violation["code"]));
        AssertJson("""[{"pieceId":"P3","quantity":5,"reason":"not_in_layouts"}]""", answer["unplaced"]);
        var comparison = answer["comparison"]!;
        Assert.True(JsonNode.DeepEquals(own["objective"], comparison["objective"]));
        Assert.Equal((int?)own["totals"]!["barsUsed"], (int?)comparison["barsUsed"]);
        Assert.Equal((decimal)answer["value"]! - (decimal)own["objective"]!["value"]!, (decimal?)comparison["difference"]);
        Assert.Equal(decimal.Round((decimal)answer["value"]! / (decimal)own["objective"]!["value"]!, 6, MidpointRounding.ToEven), (decimal?)comparison["ratio"]);
    }

    [Fact]
    public async Task Nothing_is_compared_where_it_is_not_wanted()
    {
        var answer = await host.Post(Path, Body(Bar(A)).Replace("\"effort\":\"quick\"", "\"compare\":false", StringComparison.Ordinal), 200);

        Assert.False(answer.ContainsKey("comparison"));
        Assert.True((bool?)answer["isClean"]);
    }

    /// <summary>As the engine writes it, with positions alone, and with the pieces in their order alone. Which remnants are kept under a limit no positions tell.</summary>
    [Fact]
    public async Task Nest_of_the_engine_is_clean_and_has_its_value_and_totals()
    {
        var (cuts, mitered, limited, brought) = (0, 0, 0, 0);
        for (var seed = 0; seed < RandomNests; seed++)
        {
            var random = new Random(seed);
            var request = RandomNest.Of(random, isCosted: random.Next(2) == 0);
            foreach (var item in request["stock"]!.AsArray())
                item!["nominalLength"] = random.Next(4) == 0 ? 500m : null;
            if (random.Next(2) == 0)
                request = MetricTwin.Of(request, typeof(NestRequest));
            var nest = await host.Post(Nests, request.ToJsonString(), 200);
            var layouts = nest["layouts"]!.AsArray();
            await AssertClean(nest, request, layouts, seed);
            var positions = await AssertClean(nest, request, Kept(layouts, "layoutId", "sequence", "stockId", "repeat", "bundle", "wide", "high", "cuts", "pieceId", "start", "end", "turn", "remainder", "kind"), seed);
            var order = await AssertClean(nest, request, Kept(layouts, "layoutId", "sequence", "stockId", "repeat", "bundle", "wide", "high", "cuts", "pieceId", "turn", "remainder", "kind"), seed);
            Assert.Equal((string?)positions["requestDigest"], (string?)order["requestDigest"]);
            cuts += layouts.Sum(layout => layout!["cuts"]!.AsArray().Count);
            mitered += layouts.Sum(layout => layout!["cuts"]!.AsArray().Count(cut => cut!["endCut"] is not null));
            limited += nest["warnings"]!.AsArray().Count(warning => (string?)warning!["code"] == WarningCode.RemnantLimitReached);
            brought += layouts.Count(layout => layout!["plant"] is { } plant && layout["cuts"]!.AsArray().Any(cut => IsForOtherPlant(request, cut!, (string)plant!)));
        }
        Assert.True(cuts > 2000 && mitered > 600 && limited > 20 && brought > 20, $"{cuts} cuts, {mitered} mitered, {limited} limited, {brought} brought");
    }

    /// <summary>Whatever the turns, pieces without positions break no rule but that they may reach too far; written with positions, as they are, they are the same.</summary>
    [Fact]
    public async Task Turned_pieces_lie_as_near_to_each_other_as_cutting_allows()
    {
        string[] tooFar = [NestRule.Tail, NestRule.OutsideBar, NestRule.RawEnd, NestRule.PieceInZone, NestRule.ReservedZone];
        var (turned, passes, cuts) = (0, 0, 0);
        for (var seed = 0; seed < RandomNests / 3; seed++)
        {
            var random = new Random(seed);
            var request = RandomNest.Of(random, isCosted: true);
            request["remnants"] = null;
            request["compare"] = false;
            var nest = await host.Post(Nests, Without(request, "compare").ToJsonString(), 200);
            request["layouts"] = Kept(nest["layouts"]!, "layoutId", "stockId", "repeat", "cuts", "pieceId");
            foreach (var (cut, laid) in Cuts(request).Zip(Cuts(nest)).Where(pair => pair.Second["startCut"] is not null || pair.Second["endCut"] is not null))
                cut["turn"] = new[] { "none", "endForEnd", "over", "endForEndOver" }[random.Next(4)];
            var answer = await host.Post(Path, request.ToJsonString(), 200);
            Assert.All(answer["violations"]!.AsArray(), violation => Assert.True(tooFar.Contains((string?)violation!["code"]), $"Seed {seed}: {violation} of {request.ToJsonString()}"));

            request["layouts"] = answer["layouts"]!.DeepClone();
            var again = await host.Post(Path, request.ToJsonString(), 200);
            Assert.True((bool?)again["isClean"], $"Seed {seed}: {again["violations"]!.ToJsonString()}");
            Assert.True(JsonNode.DeepEquals(answer["layouts"], again["layouts"]), $"Seed {seed}");
            turned += Cuts(again).Count(cut => cut["turn"] is not null);
            passes += again["layouts"]!.AsArray().Sum(layout => (int)layout!["cutCount"]!);
            cuts += Cuts(again).Count();
        }
        Assert.True(turned > 200 && passes > cuts, $"{turned} turned, {passes} passes, {cuts} cuts");

        static IEnumerable<JsonNode> Cuts(JsonObject nest) => nest["layouts"]!.AsArray().SelectMany(layout => layout!["cuts"]!.AsArray()).Select(cut => cut!);
    }

    /// <summary>
    /// By hand: an IPE 200 is 100 mm wide, so a face of 45 degrees reaches 100 mm along the bar and a kerf of 2 mm takes 2.8284 mm of it, each rounded on a
    /// grid of 0.0127 mm. Turned end for end the second piece begins with the face that the first ends with: they share one cut.
    /// </summary>
    [Fact]
    public async Task Piece_turned_end_for_end_shares_a_mitered_cut()
    {
        const string pieces = """[{"pieceId":"A","length":1000,"quantity":2,"section":"IPE 200","secondEnd":{"widthAngle":45}}]""";
        var turned = await host.Post(Path, Body(Bar("""{"pieceId":"A"},{"pieceId":"A","turn":"endForEnd"}"""), pieces), 200);
        var asOrdered = await host.Post(Path, Body(Bar($"{A},{A}"), pieces), 200);

        var second = turned["layouts"]![0]!["cuts"]![1]!;
        Assert.InRange((decimal)second["start"]!, 902.8284m, 902.8284m + 2 * 0.0127m);
        Assert.Equal((45m, "endForEnd", 950m), ((decimal?)second["startCut"]!["widthAngle"], (string?)second["turn"], decimal.Round((decimal)second["centerlineLength"]!, 1)));
        Assert.Equal(2, (int?)turned["layouts"]![0]!["cutCount"]);
        Assert.Equal(3, (int?)asOrdered["layouts"]![0]!["cutCount"]);
    }

    /// <summary>By hand: two bars of 60, each 3 to pull, 5 to bring for B alone, and 3 passes of 0.5, since nothing is cut off before the first piece.</summary>
    [Fact]
    public async Task Value_holds_pulling_bringing_and_cutting()
    {
        var answer = await host.Post(
            Path,
            Body(
                $$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}},{{A}},{{B}}]},{"layoutId":"2","stockId":"S","cuts":[{{A}},{{A}}]}]""",
                Pieces.Replace("\"B\"", "\"B\",\"plant\":\"Q1\"", StringComparison.Ordinal),
                OneStock(",\"cost\":60,\"pullCost\":3,\"plant\":\"Q2\",\"foreignPlantCost\":5"),
                """{"kerf":2,"tail":50,"costPerCut":0.5}"""),
            200);

        Assert.True((bool?)answer["isClean"]);
        Assert.Equal(2 * 63m + 5m + (3 + 2) * 0.5m, (decimal?)answer["value"]);
        Assert.Equal(5, (int?)answer["totals"]!["cutCount"]);
    }

    [Fact]
    public async Task Tolerated_pieces_are_laid_at_the_middle_of_their_tolerance()
    {
        var answer = await host.Post(Path, Body(Bar($"{A},{A}"), OnePiece(",\"tolerance\":{\"plus\":1}")), 200);

        AssertJson("""[{"pieceId":"A","start":0,"end":1000.5,"aimedLength":1000.5},{"pieceId":"A","start":1002.5,"end":2003,"aimedLength":1000.5}]""", answer["layouts"]![0]!["cuts"]);
    }

    [Fact]
    public async Task Accepted_numbers_under_and_over_are_no_violation()
    {
        var under = await host.Post(Path, Body(Bar($"{A},{A},{A}"), OnePiece(",\"under\":1")), 200);
        var over = await host.Post(Path, Body(Bar($"{A},{A},{A},{A},{A}"), OnePiece(",\"over\":1")), 200);
        var tooMany = await host.Post(Path, Body(Bar($"{A},{A},{A},{A},{A}"), OnePiece("")), 200);

        AssertJson("""[{"pieceId":"A","quantity":1,"reason":"under_quantity_accepted"}]""", under["unplaced"]);
        Assert.True((bool)under["isClean"]! && (bool)over["isClean"]!);
        Assert.Equal(NestRule.TooManyPieces, (string?)Assert.Single(tooMany["violations"]!.AsArray())!["code"]);
    }

    /// <summary>Of two bars that could leave a remnant the longer one gains more, so it is kept, unless the edit says otherwise.</summary>
    [Theory]
    [InlineData("", "", "scrap", "remnant")]
    [InlineData("remnant", "", "remnant", "scrap")]
    [InlineData("", "scrap", "remnant", "scrap")]
    [InlineData("remnant", "scrap", "remnant", "scrap")]
    public async Task Where_few_remnants_may_be_left_the_edit_says_which(string first, string second, string firstIs, string secondIs)
    {
        var answer = await host.Post(Path, Limited(Layout("1", B, first), Layout("2", A, second)), 200);

        Assert.True((bool?)answer["isClean"], answer["violations"]!.ToJsonString());
        Assert.Equal([firstIs, secondIs], answer["layouts"]!.AsArray().Select(layout => (string?)layout!["remainder"]!["kind"]));
        Assert.Contains(WarningCode.RemnantLimitReached, answer["warnings"]!.AsArray().Select(warning => (string?)warning!["code"]));

        static string Layout(string id, string cut, string kind) =>
            $"{{\"layoutId\":\"{id}\",\"stockId\":\"S\",\"cuts\":[{cut}]{(kind.Length > 0 ? $",\"remainder\":{{\"kind\":\"{kind}\"}}" : "")}}}";
    }

    [Fact]
    public async Task First_thousand_violations_are_listed_and_all_are_counted()
    {
        var answer = await host.Post(Path, Body(Bar(string.Join(',', Enumerable.Repeat("""{"pieceId":"X"}""", 1234)))), 200);

        Assert.Equal(1000, answer["violations"]!.AsArray().Count);
        Assert.Equal(1234, (int?)answer["violationCount"]);
        Assert.Equal("#/layouts/0/cuts/999", (string?)answer["violations"]![999]!["pointer"]);
        Assert.False((bool?)answer["isClean"]);
    }

    [Fact]
    public void Reason_of_pieces_left_out_is_documented() =>
        Assert.Contains("| `not_in_layouts` |", Repository.Read("docs", "reason-codes.md"), StringComparison.Ordinal);

    [Fact]
    public async Task Digest_tells_the_order_of_the_cuts_and_not_that_of_the_layouts()
    {
        var one = $$"""{"layoutId":"1","stockId":"S","cuts":[{{A}},{{B}}]}""";
        var other = $$"""{"layoutId":"2","stockId":"R","cuts":[{{B}}]}""";

        Assert.Equal(await Digest($"[{one},{other}]"), await Digest($"[{other},{one}]"));
        Assert.NotEqual(await Digest($"[{one}]"), await Digest($"[{one.Replace($"{A},{B}", $"{B},{A}", StringComparison.Ordinal)}]"));

        async Task<string?> Digest(string layouts) => (string?)(await host.Post(Path, Body(layouts), 200))["requestDigest"];
    }

    public static TheoryData<string, string, string> RuleFaults => new()
    {
        { Body($$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}}]},{"layoutId":"1","stockId":"S","cuts":[{{A}}]}]"""), "#/layouts/1/layoutId", FaultCode.DuplicateId },
        { Body($$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}}],"repeat":60000},{"layoutId":"2","stockId":"S","cuts":[],"repeat":60000}]"""), "#/layouts", FaultCode.TooMuchWork },
        { Body($$"""[{"layoutId":"1","stockId":"S","cuts":[{{A}},{{A}},{{A}}],"repeat":50000}]"""), "#/layouts", FaultCode.TooMuchWork },
        { Body("[]", pieces: """[{"pieceId":"p","length":1,"quantity":1},{"pieceId":"p","length":2,"quantity":1}]"""), "#/pieces/1/pieceId", FaultCode.DuplicateId },
        { Body("[]", stock: """[{"stockId":"s","kind":"bar","length":6000}]"""), "#/stock/0", FaultCode.QuantityRequired },
        { Body(Bar(At("A", -1, 999))), "#/layouts/0/cuts/0/start", FaultCode.TooSmall },
        { Body(Bar(At("A", 0.0000001m, 999))), "#/layouts/0/cuts/0/start", FaultCode.TooFine },
    };

    [Theory]
    [MemberData(nameof(RuleFaults))]
    public async Task Broken_rule_of_the_request_is_422(string body, string pointer, string code)
    {
        var problem = await host.Post(Path, body, 422);

        var fault = Assert.Single(problem["errors"]!.AsArray())!;
        Assert.Equal((pointer, code), ((string?)fault["pointer"], (string?)fault["code"]));
    }

    /// <summary>Pieces, kerfs and repeats at their bounds: every sum stays within its type, and the answer within its bounds.</summary>
    [Fact]
    public async Task Layouts_that_reach_far_beyond_every_bar_are_answered()
    {
        const string pieces = """[{"pieceId":"A","length":1000000,"quantity":100000,"section":"IPE 200","firstEnd":{"widthAngle":60,"heightAngle":-60},"secondEnd":{"widthAngle":-60,"heightAngle":60}}]""";
        const string stock = """[{"stockId":"S","kind":"purchasable","length":1000000,"endCondition":"rolled"}]""";
        var cuts = string.Join(',', Enumerable.Repeat(A, 10_000));
        var body = Body(Bar($$"""{"pieceId":"A","end":0},{{cuts}}""", ",\"repeat\":9,\"remainder\":{\"value\":10000000}"), pieces, stock, """{"kerf":1000000,"trim":1000000,"tail":1000000}""");
        var answer = await host.Post(Path, body.Replace("\"effort\"", "\"lengthUnit\":\"in\",\"effort\"", StringComparison.Ordinal), 200);

        Assert.False((bool?)answer["isClean"]);
        Assert.All(answer["totals"]!.AsObject(), total => Assert.True((decimal)total.Value! >= 0, total.ToString()));
        Assert.True((decimal)answer["value"]! >= 0);
    }

    private async Task<JsonObject> AssertClean(JsonObject nest, JsonObject request, JsonNode layouts, int seed)
    {
        var edited = request.DeepClone().AsObject();
        edited["layouts"] = layouts.DeepClone();
        var answer = await host.Post(Path, edited.ToJsonString(), 200);
        var words = $"Seed {seed}: {answer["violations"]!.ToJsonString()} of {edited.ToJsonString()}";
        Assert.True((bool)answer["isClean"]! && answer["violations"]!.AsArray().Count == 0, words);
        Assert.Equal((decimal?)nest["objective"]!["value"], (decimal?)answer["value"]);
        foreach (var same in new[] { "layouts", "totals", "warnings" })
            Assert.True(JsonNode.DeepEquals(nest[same], answer[same]), $"{words}: {answer[same]!.ToJsonString()} is not {nest[same]!.ToJsonString()}");
        Assert.Equal(
            nest["unplaced"]!.AsArray().Select(row => ((string?)row!["pieceId"], (int?)row["quantity"])),
            answer["unplaced"]!.AsArray().Select(row => ((string?)row!["pieceId"], (int?)row["quantity"])));
        Assert.Equal(0m, (decimal?)answer["comparison"]!["difference"]);
        return answer;
    }

    private static bool IsForOtherPlant(JsonObject request, JsonNode cut, string plant) =>
        (string?)request["pieces"]!.AsArray().Single(piece => (string?)piece!["pieceId"] == (string?)cut["pieceId"])!["plant"] is { } wanted && wanted != plant;

    private static JsonObject Without(JsonObject request, string name) => new(request.Where(member => member.Key != name).Select(member => KeyValuePair.Create(member.Key, member.Value?.DeepClone())));

    /// <summary>The value with the named members alone.</summary>
    private static JsonNode Kept(JsonNode node, params string[] names) => node switch
    {
        JsonObject o => new JsonObject(o.Where(member => names.Contains(member.Key)).Select(member => KeyValuePair.Create(member.Key, (JsonNode?)Kept(member.Value!, names)))),
        JsonArray a => new JsonArray([.. a.Select(item => Kept(item!, names))]),
        _ => node.DeepClone(),
    };

    private static void AssertJson(string expected, JsonNode? actual) =>
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), actual), actual?.ToJsonString() ?? "absent");
}
