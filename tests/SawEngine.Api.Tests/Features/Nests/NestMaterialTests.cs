using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Nests;

/// <summary>Section and grade stand for the same material however they are written, as in a plan.</summary>
[Collection(HostCollection.Name)]
public sealed class NestMaterialTests(ServiceHost host)
{
    private const string Path = "/v1/nests";

    [Theory]
    [InlineData("HSS 4x4x1/4", "A500 B", "HSS4X4X1/4", "A500 B")]
    [InlineData("W12X26", "A 36", "W12X26", "A36")]
    [InlineData("HEB 200", "S235JR", "heb200", "1.0038")]
    [InlineData("rail of our own", "steel of our own", "rail of our own", "steel of our own")]
    public async Task Same_material_is_one_however_it_is_written(string section, string grade, string ofStock, string gradeOfStock)
    {
        var answer = await host.Post(Path, Body(section, grade, ofStock, gradeOfStock), 200);

        Assert.Equal("optimal", (string?)answer["status"]);
        Assert.Empty(answer["warnings"]!.AsArray());
        var layout = Assert.Single(answer["layouts"]!.AsArray())!;
        Assert.Equal((ofStock, gradeOfStock), ((string?)layout["section"], (string?)layout["grade"]));
    }

    [Theory]
    [InlineData("HSS4X4X3/8", "A36", "section", "HSS4X4X1/4")]
    [InlineData("HSS4X4X1/4", "A53", "grade", "A36")]
    [InlineData("HSS4X4X1/4 long", "A36", "section", "HSS4X4X1/4")]
    public async Task Stock_that_is_written_much_alike_is_named(string section, string grade, string member, string nearest)
    {
        var answer = await host.Post(Path, Body(section, grade, "HSS4X4X1/4", "A36"), 200);

        Assert.Equal("no_stock_of_section_and_grade", (string?)answer["unplaced"]![0]!["reason"]);
        var warning = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal("similar_stock_not_used", (string?)warning["code"]);
        Assert.Equal($"#/pieces/0/{member}", (string?)warning["pointer"]);
        Assert.Contains($"`{nearest}`", (string?)warning["detail"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stock_that_is_written_otherwise_is_not_named() =>
        Assert.Empty((await host.Post(Path, Body("Round 50", "A36", "HSS4X4X1/4", "A36"), 200))["warnings"]!.AsArray());

    [Fact]
    public async Task Ambiguous_grade_is_read_as_the_hardest_with_a_warning_where_it_stands()
    {
        var answer = await host.Post(Path, Body("Round 50", "4140", "Round 50", "4140HT"), 200);

        Assert.Equal("optimal", (string?)answer["status"]);
        var warning = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal(("ambiguous_grade", "#/pieces/0/grade"), ((string?)warning["code"], (string?)warning["pointer"]));
        Assert.Contains("read as the hardest, 4140 pre-hard;", (string?)warning["detail"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Section_may_be_left_out_where_all_are_the_same_however_written()
    {
        var answer = await host.Post(
            Path,
            """
            {"pieces":[{"pieceId":"a","length":100,"quantity":1,"section":"HEB 200"},{"pieceId":"b","length":100,"quantity":1}],
             "stock":[{"stockId":"s","kind":"bar","length":1000,"quantity":1,"section":"HEB200"}],"cut":{"kerf":2}}
            """,
            200);

        Assert.Equal("optimal", (string?)answer["status"]);
    }

    [Fact]
    public async Task Evaluation_takes_the_same_material_however_it_is_written()
    {
        var body = JsonNode.Parse(Body("HSS 4x4x1/4", "A 36", "HSS4X4X1/4", "A36"))!;
        body["layouts"] = JsonNode.Parse("""[{"layoutId":"L","stockId":"s","section":"hss4x4x1/4","grade":"a36","cuts":[{"pieceId":"p"}]}]""");

        var answer = await host.Post("/v1/nests/evaluations", body.ToJsonString(), 200);

        Assert.Empty(answer["violations"]!.AsArray());
    }

    private static string Body(string section, string grade, string ofStock, string gradeOfStock) =>
        $$"""
        {"pieces":[{"pieceId":"p","length":1000,"quantity":1,"section":"{{section}}","grade":"{{grade}}"}],
         "stock":[{"stockId":"s","kind":"bar","length":6000,"quantity":1,"section":"{{ofStock}}","grade":"{{gradeOfStock}}"}],"cut":{"kerf":2} }
        """;
}
