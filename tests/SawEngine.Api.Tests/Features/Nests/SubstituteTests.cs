using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Nests;

/// <summary>Known answers by hand: two pieces of 2900 go on a bar of 6000.</summary>
[Collection(HostCollection.Name)]
public sealed class SubstituteTests(ServiceHost host)
{
    private const string Path = "/v1/nests";
    private const string Allowing = """{"pieceId":"P","grade":"S235JR","substitutes":["S275JR","1.0577"],"length":2900,"quantity":2}""";
    private const string Strict = """{"pieceId":"Q","grade":"S235JR","length":2900,"quantity":2}""";

    [Fact]
    public async Task Substitute_is_cut_at_its_own_cost_for_the_piece_that_allows_it_and_said_so()
    {
        var answer = await host.Post(Path, Body([Allowing, Strict], Bar("own", "S235JR", 1, 100), Bar("other", "S355J2", 2, 90)), 200);

        Assert.Equal("optimal", (string?)answer["status"]);
        Assert.Equal(190m, (decimal?)answer["objective"]!["value"]);
        Assert.Equal(["other S355J2: P P", "own S235JR: Q Q"], answer["layouts"]!.AsArray().Select(Text));
        AssertJson(
            """[{"code":"substitute_used","pointer":"#/pieces/0/substitutes/1","pieceId":"P","detail":"Pieces of `P` that are cut from S355J2 in place of S235JR: 2."}]""",
            answer["warnings"]);
    }

    [Fact]
    public async Task Own_grade_that_costs_less_is_cut_without_a_word()
    {
        var answer = await host.Post(Path, Body([Allowing], Bar("own", "S235JR", 1, 89), Bar("other", "S355J2", 2, 90)), 200);

        Assert.Equal(["own S235JR: P P"], answer["layouts"]!.AsArray().Select(Text));
        Assert.Empty(answer["warnings"]!.AsArray());
    }

    [Fact]
    public async Task Grade_that_no_piece_allows_is_never_cut()
    {
        var answer = await host.Post(Path, Body([Allowing, Strict], Bar("other", "C45", 9, 1), Bar("third", "S355J2", 1, 100)), 200);

        Assert.Equal("partial", (string?)answer["status"]);
        Assert.Equal(["third S355J2: P P"], answer["layouts"]!.AsArray().Select(Text));
        AssertJson("""[{"pieceId":"Q","quantity":2,"reason":"no_stock_of_section_and_grade"}]""", answer["unplaced"]);
    }

    [Fact]
    public async Task Section_has_no_substitute()
    {
        var answer = await host.Post(
            Path,
            """
            {"pieces":[{"pieceId":"P","section":"Round 50","grade":"S235JR","substitutes":["S355J2"],"length":2900,"quantity":2}],
             "stock":[{"stockId":"s","kind":"bar","section":"Round 60","grade":"S355J2","length":6000,"quantity":1},{"stockId":"t","kind":"bar","section":"Round 60","grade":"S235JR","length":6000,"quantity":1}],
             "cut":{"kerf":2}}
            """,
            200);

        Assert.Equal("no_stock_of_section_and_grade", (string?)answer["unplaced"]![0]!["reason"]);
    }

    [Fact]
    public async Task Inch_requests_have_substitutes_too()
    {
        var answer = await host.Post(
            Path,
            """
            {"lengthUnit":"in","pieces":[{"pieceId":"P","section":"HSS4X4X1/4","grade":"A500 Gr B","substitutes":["A500 Gr C"],"lengthText":"9'-6\"","quantity":2}],
             "stock":[{"stockId":"own","kind":"bar","section":"HSS4X4X1/4","grade":"A500 Gr B","length":100,"quantity":4},{"stockId":"other","kind":"bar","section":"HSS 4x4x1/4","grade":"A500 Gr C","lengthText":"20'","quantity":1}],
             "cut":{"kerf":0.0625}}
            """,
            200);

        Assert.Equal(["other A500 Gr C: P P"], answer["layouts"]!.AsArray().Select(Text));
        Assert.Equal("substitute_used", (string?)Assert.Single(answer["warnings"]!.AsArray())!["code"]);
    }

    [Fact]
    public async Task Own_grade_again_and_a_substitute_twice_change_nothing()
    {
        var once = await host.Post(Path, Body([Allowing], Bar("own", "S235JR", 1, 100), Bar("other", "S355J2", 2, 90)), 200);
        var again = await host.Post(
            Path, Body([Allowing.Replace("\"S275JR\"", "\"S275JR\",\"S235JR\",\"1.0038\"").Replace("\"1.0577\"", "\"1.0577\",\"S355J2\"")], Bar("own", "S235JR", 1, 100), Bar("other", "S355J2", 2, 90)), 200);

        Assert.Equal(once["layouts"]!.ToJsonString(), again["layouts"]!.ToJsonString());
        Assert.Equal("#/pieces/0/substitutes/3", (string?)Assert.Single(again["warnings"]!.AsArray())!["pointer"]);
    }

    [Fact]
    public async Task Order_of_substitutes_makes_no_difference()
    {
        var one = await host.Post(Path, Body([Allowing], Bar("other", "S355J2", 2, 90)), 200);
        var other = await host.Post(Path, Body([Allowing.Replace("\"S275JR\",\"1.0577\"", "\"1.0577\",\"S275JR\"")], Bar("other", "S355J2", 2, 90)), 200);

        Assert.Equal((string?)one["requestDigest"], (string?)other["requestDigest"]);
        Assert.Equal(one["layouts"]!.ToJsonString(), other["layouts"]!.ToJsonString());
    }

    [Fact]
    public async Task Substitute_that_names_several_conditions_is_the_hardest_with_a_warning()
    {
        var answer = await host.Post(
            Path,
            Body(["""{"pieceId":"P","grade":"C45","substitutes":["42CrMo4"],"length":2900,"quantity":2}"""], Bar("soft", "42CrMo4+A", 1, 1), Bar("hard", "42CrMo4+QT", 1, 90)),
            200);

        Assert.Equal(["hard 42CrMo4+QT: P P"], answer["layouts"]!.AsArray().Select(Text));
        Assert.Equal(
            [("ambiguous_grade", "#/pieces/0/substitutes/0"), ("substitute_used", "#/pieces/0/substitutes/0")],
            answer["warnings"]!.AsArray().Select(warning => ((string?)warning!["code"], (string?)warning["pointer"])));
    }

    [Fact]
    public async Task Stock_that_is_written_alike_is_not_named_where_a_substitute_is_there()
    {
        var answer = await host.Post(Path, Body(["""{"pieceId":"P","grade":"S355J2","substitutes":["S355J0"],"length":2900,"quantity":2}"""], Bar("other", "S355J0", 1, 90)), 200);

        Assert.Equal(["substitute_used"], answer["warnings"]!.AsArray().Select(warning => (string?)warning!["code"]));
    }

    [Fact]
    public async Task Line_of_higher_priority_takes_the_bar_of_its_own_grade_from_one_that_may_have_it_too()
    {
        var answer = await host.Post(Path, Body([Allowing, """{"pieceId":"R","grade":"S355J2","priority":1,"length":2900,"quantity":2}"""], Bar("other", "S355J2", 1, 90)), 200);

        AssertJson("""[{"pieceId":"P","quantity":2,"reason":"stock_used_by_higher_priority"}]""", answer["unplaced"]);
    }

    [Fact]
    public async Task Near_misses_and_other_nests_know_substitutes()
    {
        // Seven pieces take three bars and two pieces of a fourth; 5 mm shorter, three go on each of two, one on a third.
        static string Near(string grade) => Body(["""{"pieceId":"P","grade":"C45","substitutes":["S355J2"],"length":2005,"quantity":7}"""], Bar("s", grade, 9, 156))
            .Replace("\"cut\"", "\"alternatives\":[\"fewestLayouts\"],\"nearMisses\":{\"shorterBy\":12,\"fewerBy\":2},\"cut\"", StringComparison.Ordinal);

        var (own, substitute) = (await host.Post(Path, Near("C45"), 200), await host.Post(Path, Near("S355J2"), 200));

        Assert.NotEmpty(own["nearMisses"]!.AsArray());
        Assert.Equal(own["nearMisses"]!.ToJsonString(), substitute["nearMisses"]!.ToJsonString());
        Assert.Equal(own["alternatives"]!.ToJsonString().Replace("C45", "S355J2", StringComparison.Ordinal), substitute["alternatives"]!.ToJsonString());
    }

    [Fact]
    public async Task Mitered_pieces_are_turned_on_bars_of_a_substitute()
    {
        var answer = await host.Post(
            Path,
            """
            {"pieces":[{"pieceId":"P","section":"SHS 50x50x3 EN 10219","grade":"S235JRH","substitutes":["S355J2H"],"length":1000,"quantity":5,"lengthAt":"longSide","firstEnd":{"widthAngle":-45},"secondEnd":{"widthAngle":45}}],
             "stock":[{"stockId":"s","kind":"bar","section":"SHS 50x50x3 EN 10219","grade":"S355J2H","length":6000,"quantity":1}],"cut":{"kerf":2}}
            """,
            200);

        Assert.Equal("optimal", (string?)answer["status"]);
        Assert.Contains(answer["layouts"]![0]!["cuts"]!.AsArray(), cut => cut!["turn"] is not null);
    }

    [Fact]
    public async Task Edited_nest_may_use_what_its_pieces_allow_and_nothing_else()
    {
        var body = Body([Allowing, Strict], Bar("own", "S235JR", 1, 100), Bar("other", "S355J2", 2, 90));
        var nest = await host.Post(Path, body, 200);

        var clean = await Evaluated(body, nest["layouts"]!);
        var refused = await Evaluated(body.Replace(",\"substitutes\":[\"S275JR\",\"1.0577\"]", "", StringComparison.Ordinal), nest["layouts"]!);
        var swapped = JsonNode.Parse(nest["layouts"]!.ToJsonString().Replace("\"P\"", "\"x\"", StringComparison.Ordinal).Replace("\"Q\"", "\"P\"", StringComparison.Ordinal).Replace("\"x\"", "\"Q\"", StringComparison.Ordinal))!;
        var mixed = await Evaluated(body, swapped);

        Assert.Empty(clean["violations"]!.AsArray());
        Assert.Equal("substitute_used", (string?)Assert.Single(clean["warnings"]!.AsArray())!["code"]);
        Assert.Equal(190m, (decimal?)clean["value"]);
        foreach (var answer in new[] { refused, mixed })
        {
            Assert.Equal(
                [("wrong_grade", "#/layouts/0/cuts/0"), ("wrong_grade", "#/layouts/0/cuts/1")],
                answer["violations"]!.AsArray().Select(violation => ((string?)violation!["code"], (string?)violation["pointer"])));
        }
        Assert.Contains("ordered in `S235JR`", (string?)mixed["violations"]![0]!["detail"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pieces_that_allow_different_grades_are_not_alike_in_priority()
    {
        var body = Body([Allowing, """{"pieceId":"Q","grade":"S235JR","priority":1,"length":2900,"quantity":2}"""], Bar("other", "S355J2", 1, 90));

        var answer = await Evaluated(body, (await host.Post(Path, body, 200))["layouts"]!);

        Assert.Empty(answer["violations"]!.AsArray());
        Assert.Equal("Q", (string?)Assert.Single(answer["unplaced"]!.AsArray())!["pieceId"]);
    }

    private Task<JsonObject> Evaluated(string body, JsonNode layouts)
    {
        var request = JsonNode.Parse(body)!;
        request["layouts"] = layouts.DeepClone();
        return host.Post("/v1/nests/evaluations", request.ToJsonString(), 200);
    }

    private static string Text(JsonNode? layout) => $"{layout!["stockId"]} {layout["grade"]}: {string.Join(' ', layout["cuts"]!.AsArray().Select(cut => (string?)cut!["pieceId"]))}";

    private static string Bar(string stockId, string grade, int quantity, int cost) =>
        $$"""{"stockId":"{{stockId}}","kind":"bar","grade":"{{grade}}","length":6000,"quantity":{{quantity}},"cost":{{cost}}}""";

    private static string Body(string[] pieces, params string[] stock) => $$"""{"pieces":[{{string.Join(',', pieces)}}],"stock":[{{string.Join(',', stock)}}],"cut":{"kerf":2} }""";

    private static void AssertJson(string expected, JsonNode? actual) => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), actual), actual?.ToJsonString());
}
