using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Nests;

/// <summary>Bad input, one row a fault.</summary>
[Collection(HostCollection.Name)]
public sealed class NestFaultTests(ServiceHost host)
{
    private const string Path = "/v1/nests";

    private static string Body(
        string pieces = """[{"pieceId":"p","length":1000,"quantity":1}]""",
        string stock = """[{"stockId":"s","kind":"bar","length":6000,"quantity":1}]""",
        string cut = """{"kerf":2}""",
        string more = "") => $$"""{"pieces":{{pieces}},"stock":{{stock}},"cut":{{cut}}{{more}}}""";

    private static string Piece(string more) => Body(pieces: $$"""[{"pieceId":"p","length":1000,"quantity":1{{more}}}]""");

    private static string Substituted(string grade, string substitutes) => Body(
        pieces: $$"""[{"pieceId":"p","length":1000,"quantity":1,"grade":"{{grade}}","substitutes":[{{substitutes}}]}]""",
        stock: """[{"stockId":"s","kind":"bar","length":6000,"quantity":1,"grade":"S235JR"}]""");

    private static string Length(string length) => Body(pieces: $$"""[{"pieceId":"p","length":{{length}},"quantity":1}]""");

    private static string LengthText(string length, string text) =>
        Body(pieces: $$"""[{"pieceId":"p","length":{{length}},"lengthText":{{text}},"quantity":1}]""");

    private static string Quantity(string quantity) => Body(pieces: $$"""[{"pieceId":"p","length":1000,"quantity":{{quantity}}}]""");

    private static string Stock(string more) => Body(stock: $$"""[{"stockId":"s","kind":"bar","length":6000,"quantity":1{{more}}}]""");

    public static TheoryData<string, string, string> ShapeFaults => new()
    {
        { "", "#", FaultCode.InvalidJson },
        { "{", "#", FaultCode.InvalidJson },
        { "{} {}", "#", FaultCode.InvalidJson },
        { "{\"a\":1,}", "#", FaultCode.InvalidJson },
        { "// comment\n{}", "#", FaultCode.InvalidJson },
        { Length("NaN"), "#", FaultCode.InvalidJson },
        { Length("01"), "#", FaultCode.InvalidJson },
        { "null", "#", FaultCode.WrongType },
        { "[]", "#", FaultCode.WrongType },
        { "\"text\"", "#", FaultCode.WrongType },
        { "{}", "#", FaultCode.MissingMember },
        { new string('[', 17) + new string(']', 17), "#", FaultCode.TooDeep },
        { new string('[', 100_000), "#", FaultCode.TooDeep },
        { Body(more: ""","schemaVersion":"2.0" """), "#/schemaVersion", FaultCode.UnsupportedSchemaVersion },
        { Body(more: ""","schemaVersion":"1" """), "#/schemaVersion", FaultCode.UnsupportedSchemaVersion },
        { Body(more: ""","schemaVersion":"\ud800" """), "#/schemaVersion", FaultCode.InvalidCharacter },
        { Body(more: ""","\ud800":1"""), "#", FaultCode.InvalidCharacter },
        { Body(more: ""","schemaVersion":1.0"""), "#/schemaVersion", FaultCode.WrongType },
        { Body(more: ""","kerff":1"""), "#/kerff", FaultCode.UnknownMember },
        { Body(more: ""","Effort":"quick" """), "#/Effort", FaultCode.UnknownMember },
        { Body(more: ""","a/b~c d%":1"""), "#/a~1b~0c%20d%25", FaultCode.UnknownMember },
        { Body(more: ""","effort":"Quick" """), "#/effort", FaultCode.UnknownValue },
        { Body(more: ""","effort":"fast" """), "#/effort", FaultCode.UnknownValue },
        { Body(more: ""","effort":1"""), "#/effort", FaultCode.WrongType },
        { Body(more: ""","effort":"\ud800" """), "#/effort", FaultCode.InvalidCharacter },
        { Body(more: ""","lengthUnit":"cm" """), "#/lengthUnit", FaultCode.UnknownValue },
        { Body(more: ""","cut":{"kerf":2}"""), "#/cut", FaultCode.DoubledMember },
        { Body(cut: "{}"), "#/cut", FaultCode.MissingMember },
        { Body(cut: """{"kerf":2,"bundle":{"mostHigh":2}}"""), "#/cut/bundle", FaultCode.MissingMember },
        { Body(cut: "null"), "#/cut", FaultCode.NullNotAllowed },
        { Body(cut: "[]"), "#/cut", FaultCode.WrongType },
        { Body(cut: """{"kerf":"2"}"""), "#/cut/kerf", FaultCode.WrongType },
        { Body(cut: """{"kerf":true}"""), "#/cut/kerf", FaultCode.WrongType },
        { Body(pieces: "null"), "#/pieces", FaultCode.NullNotAllowed },
        { Body(pieces: "{}"), "#/pieces", FaultCode.WrongType },
        { Body(pieces: "[null]"), "#/pieces/0", FaultCode.NullNotAllowed },
        { Body(pieces: "[{}]"), "#/pieces/0", FaultCode.MissingMember },
        { Body(pieces: "[7]"), "#/pieces/0", FaultCode.WrongType },
        { Length("1e400"), "#/pieces/0/length", FaultCode.OutOfRange },
        { Length("-1e400"), "#/pieces/0/length", FaultCode.OutOfRange },
        { Length("1e99999999999999999999"), "#/pieces/0/length", FaultCode.OutOfRange },
        { Length("1e-300"), "#/pieces/0/length", FaultCode.TooSmallToRead },
        { Length("1e-99999999999999999999"), "#/pieces/0/length", FaultCode.TooSmallToRead },
        { Length("1.0000000000000000000000000001"), "#/pieces/0/length", FaultCode.TooManyDigits },
        { LengthText("1", "7"), "#/pieces/0/lengthText", FaultCode.WrongType },
        { LengthText("null", $"\"{new string('1', 41)}\""), "#/pieces/0/lengthText", FaultCode.TooLong },
        { Quantity("1.5"), "#/pieces/0/quantity", FaultCode.NotAnInteger },
        { Quantity("1e-1"), "#/pieces/0/quantity", FaultCode.NotAnInteger },
        { Quantity("3000000000"), "#/pieces/0/quantity", FaultCode.OutOfRange },
        { Quantity("1e400"), "#/pieces/0/quantity", FaultCode.OutOfRange },
        { Quantity("\"1\""), "#/pieces/0/quantity", FaultCode.WrongType },
        { Piece($",\"section\":\"{new string('x', 201)}\""), "#/pieces/0/section", FaultCode.TooLong },
        { Piece($",\"heat\":\"{new string('x', 65)}\""), "#/pieces/0/heat", FaultCode.TooLong },
        { Piece(""","section":"a\u0000" """), "#/pieces/0/section", FaultCode.InvalidCharacter },
        { Piece(""","section":"a\u202e" """), "#/pieces/0/section", FaultCode.InvalidCharacter },
        { Piece(""","section":"\udc00" """), "#/pieces/0/section", FaultCode.InvalidCharacter },
        { Piece(""","\ud800":1"""), "#/pieces/0", FaultCode.InvalidCharacter },
        { Piece(""","certificate":"31" """), "#/pieces/0/certificate", FaultCode.UnknownValue },
        { Piece(""","firstEnd":{"angle":30}"""), "#/pieces/0/firstEnd/angle", FaultCode.UnknownMember },
        { Stock(""","attributes":{"a":1}"""), "#/stock/0/attributes/a", FaultCode.WrongType },
        { Stock(""","attributes":{"a":"1","a":"2"}"""), "#/stock/0/attributes/a", FaultCode.DoubledMember },
        { Stock(""","attributes":[]"""), "#/stock/0/attributes", FaultCode.WrongType },
    };

    public static TheoryData<string, string, string> RuleFaults => new()
    {
        { Body(pieces: "[]"), "#/pieces", FaultCode.Empty },
        { Body(pieces: """[{"pieceId":"","length":1000,"quantity":1}]"""), "#/pieces/0/pieceId", FaultCode.Empty },
        { Length("0"), "#/pieces/0/length", FaultCode.MustBePositive },
        { Length("-0"), "#/pieces/0/length", FaultCode.MustBePositive },
        { Length("0e400"), "#/pieces/0/length", FaultCode.MustBePositive },
        { Length("-5"), "#/pieces/0/length", FaultCode.MustBePositive },
        { Length("0.0000001"), "#/pieces/0/length", FaultCode.TooFine },
        { Length("1000000.000001"), "#/pieces/0/length", FaultCode.TooLarge },
        { Length("null"), "#/pieces/0", FaultCode.LengthRequired },
        { LengthText("1", "\"1'\""), "#/pieces/0/lengthText", FaultCode.LengthGivenTwice },
        { LengthText("1", "\"x\""), "#/pieces/0/lengthText", FaultCode.LengthGivenTwice },
        { LengthText("null", "\"1\""), "#/pieces/0/lengthText", FaultCode.InvalidLengthText },
        { LengthText("null", "\"\""), "#/pieces/0/lengthText", FaultCode.InvalidLengthText },
        { LengthText("null", "\"0'\""), "#/pieces/0/lengthText", FaultCode.MustBePositive },
        { LengthText("null", "\"3281'\""), "#/pieces/0/lengthText", FaultCode.TooLarge },
        { Body(stock: """[{"stockId":"s","kind":"bar","quantity":1}]"""), "#/stock/0", FaultCode.LengthRequired },
        { Body(stock: """[{"stockId":"s","kind":"bar","quantity":1,"lengthText":"20'","length":240}]"""), "#/stock/0/lengthText", FaultCode.LengthGivenTwice },
        { Body(stock: """[{"stockId":"s","kind":"bar","quantity":1,"lengthText":"20"}]"""), "#/stock/0/lengthText", FaultCode.InvalidLengthText },
        { Length("7e28"), "#/pieces/0/length", FaultCode.TooLarge },
        { Body(more: ""","lengthUnit":"in" """, cut: """{"kerf":0.000001}"""), "#/cut/kerf", FaultCode.TooFine },
        { Body(cut: """{"kerf":-1}"""), "#/cut/kerf", FaultCode.TooSmall },
        { Body(cut: """{"kerf":1,"trim":-1}"""), "#/cut/trim", FaultCode.TooSmall },
        { Body(cut: """{"kerf":1,"tail":-1}"""), "#/cut/tail", FaultCode.TooSmall },
        { Quantity("0"), "#/pieces/0/quantity", FaultCode.TooSmall },
        { Quantity("100001"), "#/pieces/0/quantity", FaultCode.TooLarge },
        { Body(pieces: """[{"pieceId":"p","length":1,"quantity":60000},{"pieceId":"q","length":1,"quantity":60000}]"""), "#/pieces", FaultCode.TooMuchWork },
        { Body(pieces: $"[{string.Join(',', Enumerable.Range(0, 2001).Select(i => $$"""{"pieceId":"{{i}}","length":1,"quantity":1}"""))}]"), "#/pieces", FaultCode.TooMany },
        { Body(pieces: """[{"pieceId":"p","length":1,"quantity":1},{"pieceId":"p","length":2,"quantity":1}]"""), "#/pieces/1/pieceId", FaultCode.DuplicateId },
        { Body(stock: """[{"stockId":"s","kind":"remnant","length":1},{"stockId":"s","kind":"remnant","length":1}]"""), "#/stock/1/stockId", FaultCode.DuplicateId },
        { Body(stock: """[{"stockId":"s","kind":"remnant","length":1,"cost":1},{"stockId":"t","kind":"remnant","length":1}]"""), "#/stock/1", FaultCode.CostOnAllOrNone },
        { Body(stock: """[{"stockId":"s","kind":"bar","length":6000}]"""), "#/stock/0", FaultCode.QuantityRequired },
        { Body(stock: """[{"stockId":"s","kind":"remnant","length":6000,"quantity":2}]"""), "#/stock/0/quantity", FaultCode.RemnantIsSingle },
        { Stock(""","cost":-1"""), "#/stock/0/cost", FaultCode.TooSmall },
        { Stock(""","cost":0.0000001"""), "#/stock/0/cost", FaultCode.TooFine },
        { Stock(""","cost":10000001"""), "#/stock/0/cost", FaultCode.TooLarge },
        { Stock($$""","attributes":{{{string.Join(',', Enumerable.Range(0, 33).Select(i => $"\"{i}\":\"\""))}}}"""), "#/stock/0/attributes", FaultCode.TooMany },
        { Piece(""","heatRule":"named" """), "#/pieces/0", FaultCode.HeatRequired },
        { Piece(""","heat":"H1" """), "#/pieces/0/heat", FaultCode.HeatNotUsed },
        { Piece(""","firstEnd":{"widthAngle":30}"""), "#/pieces/0", FaultCode.SectionRequired },
        { Piece(""","firstEnd":{"widthAngle":61},"section":"IPE 200" """), "#/pieces/0/firstEnd/widthAngle", FaultCode.TooLarge },
        { Piece(""","firstEnd":{"widthAngle":30.0001},"section":"IPE 200" """), "#/pieces/0/firstEnd/widthAngle", FaultCode.TooFine },
        { Piece(""","firstEnd":{"widthAngle":30},"section":"IPE 2000" """), "#/pieces/0/section", FaultCode.UnknownSection },
        { Body(pieces: """[{"pieceId":"p","length":1,"quantity":1,"section":"A"},{"pieceId":"q","length":1,"quantity":1,"section":"B"}]"""), "#/stock/0", FaultCode.SectionRequired },
        { Body(pieces: """[{"pieceId":"p","length":1,"quantity":1,"grade":"A"},{"pieceId":"q","length":1,"quantity":1,"grade":"B"}]"""), "#/stock/0", FaultCode.GradeRequired },
        { Substituted("S235JR", "\"S355J3\""), "#/pieces/0/substitutes/0", FaultCode.UnknownGrade },
        { Substituted("S235JR", "\"S355J2\",\"\""), "#/pieces/0/substitutes/1", FaultCode.UnknownGrade },
        { Substituted("steel of our own", "\"S355J2\""), "#/pieces/0/grade", FaultCode.UnknownGrade },
        { Substituted("S235JR", string.Join(',', Enumerable.Repeat("\"S355J2\"", Limits.Substitutes + 1))), "#/pieces/0/substitutes", FaultCode.TooMany },
        { Piece(""","substitutes":["S355J2"]"""), "#/pieces/0", FaultCode.GradeRequired },
        { Piece(""","grade":"S235JR","substitutes":["S355J2"]"""), "#/stock/0", FaultCode.GradeRequired },
        { Body(more: ""","timeLimitSeconds":0"""), "#/timeLimitSeconds", FaultCode.MustBePositive },
        { Body(more: ""","timeLimitSeconds":61"""), "#/timeLimitSeconds", FaultCode.TooLarge },
        { Body(more: ""","remnants":{"keepFrom":600,"valueFraction":1,"classes":[{"from":600,"valueFraction":1}]}"""), "#/remnants/classes/0/from", FaultCode.ClassesNotAscending },
        { Body(more: ""","remnants":{"keepFrom":1,"valueFraction":1,"mostNew":-1}"""), "#/remnants/mostNew", FaultCode.TooSmall },
        { Body(more: ""","remnants":{"keepFrom":1,"valueFraction":1,"handlingCost":100000.1}"""), "#/remnants/handlingCost", FaultCode.TooLarge },
        { Piece(""","tolerance":{"minus":1000}"""), "#/pieces/0/tolerance/minus", FaultCode.TooLarge },
        { Piece(""","tolerance":{"plus":-1}"""), "#/pieces/0/tolerance/plus", FaultCode.TooSmall },
        { Piece(""","tolerance":{"plus":0.000001}"""), "#/pieces/0/tolerance", FaultCode.TooFine },
        { Piece(""","priority":0"""), "#/pieces/0/priority", FaultCode.TooSmall },
        { Piece(""","under":1"""), "#/pieces/0/under", FaultCode.TooLarge },
        { Piece(""","over":100000"""), "#/pieces", FaultCode.TooMuchWork },
        { Stock(""","reservedFor":[]"""), "#/stock/0/reservedFor", FaultCode.Empty },
        { Stock(""","owner":"" """), "#/stock/0/owner", FaultCode.Empty },
        { Stock(""","foreignPlantCost":-1"""), "#/stock/0/foreignPlantCost", FaultCode.TooSmall },
        { Stock(""","zones":[{"from":10,"to":10,"kind":"defective"}]"""), "#/stock/0/zones/0", FaultCode.ZonesNotAscending },
        { Stock(""","zones":[{"from":10,"to":20,"kind":"defective"},{"from":19,"to":30,"kind":"reserved"}]"""), "#/stock/0/zones/1", FaultCode.ZonesNotAscending },
        { Stock(""","zones":[{"from":10,"to":6000.1,"kind":"reserved"}]"""), "#/stock/0/zones/0/to", FaultCode.TooLarge },
        { Body(stock: """[{"stockId":"s","kind":"bar","length":6000,"quantity":2,"zones":[{"from":1,"to":2,"kind":"defective"}]}]"""), "#/stock/0/zones", FaultCode.ZonesOfOneBar },
        { Stock(""","nominalLength":5999"""), "#/stock/0/nominalLength", FaultCode.TooSmall },
        { Stock(""","pullCost":-1"""), "#/stock/0/pullCost", FaultCode.TooSmall },
        { Body(cut: """{"kerf":2,"bundle":{"mostWide":21}}"""), "#/cut/bundle/mostWide", FaultCode.TooLarge },
        { Body(cut: """{"kerf":2,"bundle":{"mostWide":2,"mostHigh":0}}"""), "#/cut/bundle/mostHigh", FaultCode.TooSmall },
        { Body(cut: """{"kerf":2,"bundle":{"mostWide":2,"mostHigh":2,"holdDown":false}}"""), "#/cut/bundle/holdDown", FaultCode.HoldDownRequired },
        { Body(cut: """{"kerf":2,"shortestPiece":100,"longestPiece":99}"""), "#/cut/longestPiece", FaultCode.MinAboveMax },
        { Body(cut: """{"kerf":2,"longestPiece":0}"""), "#/cut/longestPiece", FaultCode.MustBePositive },
        { Body(cut: """{"kerf":2,"thinnestSlice":-1}"""), "#/cut/thinnestSlice", FaultCode.TooSmall },
        { Body(cut: """{"kerf":2,"costPerCut":0.0000001}"""), "#/cut/costPerCut", FaultCode.TooFine },
        { Body(more: ""","remnants":{"keepFrom":1,"valueFraction":1.01}"""), "#/remnants/valueFraction", FaultCode.TooLarge },
    };

    [Theory]
    [MemberData(nameof(ShapeFaults))]
    public Task Fault_of_shape_is_400(string body, string pointer, string code) => AssertFault(body, 400, "urn:sawengine:problem:invalid-shape", pointer, code);

    [Theory]
    [MemberData(nameof(RuleFaults))]
    public Task Broken_rule_is_422(string body, string pointer, string code) => AssertFault(body, 422, "urn:sawengine:problem:broken-rules", pointer, code);

    [Fact]
    public async Task Bytes_that_are_not_utf8_are_400()
    {
        byte[] body = [.. Encoding.UTF8.GetBytes("""{"pieces":" """), 0xFF, .. Encoding.UTF8.GetBytes("\"}")];
        using var response = await host.Client.PostAsync(Path, ServiceHost.Json(body));

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains(FaultCode.InvalidUtf8, await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\uFEFF", "")]
    [InlineData("", ",\"schemaVersion\":\"1.9\"")]
    [InlineData("", ",\"schemaVersion\":\"1\\u002e0\",\"\\u0065ffort\":\"quick\"")]
    [InlineData("", ",\"schemaVersion\":null,\"lengthUnit\":null,\"effort\":null,\"remnants\":null,\"timeLimitSeconds\":null")]
    public async Task Byte_order_mark_minor_versions_and_nulls_of_optional_members_are_read(string before, string more) =>
        await host.Post(Path, before + Body(more: more), 200);

    [Theory]
    [InlineData("5.0")]
    [InlineData("5e0")]
    [InlineData("0.5E1")]
    public async Task Whole_numbers_may_be_written_with_point_or_exponent(string quantity) => await host.Post(Path, Quantity(quantity), 200);

    [Fact]
    public async Task All_faults_of_shape_are_reported_at_once_in_the_order_of_the_body()
    {
        var problem = await host.Post(Path, """{"pieces":[{"pieceId":1,"length":"2","quantity":1.5},null],"stock":{},"cut":{"kerf":1e400,"x":1},"effort":"Quick"}""", 400);

        Assert.Equal(
            ["#/pieces/0/pieceId", "#/pieces/0/length", "#/pieces/0/quantity", "#/pieces/1", "#/stock", "#/cut/kerf", "#/cut/x", "#/effort"],
            problem["errors"]!.AsArray().Select(fault => (string?)fault!["pointer"]));
        Assert.Equal(8, (int?)problem["errorCount"]);
    }

    [Fact]
    public async Task At_most_a_hundred_faults_are_listed_and_all_are_counted()
    {
        var problem = await host.Post(Path, Body(pieces: $"[{string.Join(',', Enumerable.Repeat("null", 1234))}]"), 400);

        Assert.Equal(100, problem["errors"]!.AsArray().Count);
        Assert.Equal(1234, (int?)problem["errorCount"]);
    }

    [Theory]
    [InlineData(",\"kerff\":1", "effort", false)]
    [InlineData(",\"efort\":\"quick\"", "effort", true)]
    [InlineData(",\"LengthUnit\":\"mm\"", "lengthUnit", true)]
    public async Task Unknown_member_names_the_nearest_known_one(string more, string nearest, bool named)
    {
        var problem = await host.Post(Path, Body(more: more), 400);

        Assert.Equal(named, ((string?)problem["errors"]![0]!["detail"])!.Contains($"Did you mean `{nearest}`?", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Missing_member_is_named()
    {
        var problem = await host.Post(Path, Body(pieces: """[{"pieceId":"p","length":1}]"""), 400);

        Assert.Equal("`quantity` is missing.", (string?)problem["errors"]![0]!["detail"]);
    }

    [Fact]
    public async Task Problems_name_no_types_of_the_code()
    {
        foreach (var body in ShapeFaults.Concat(RuleFaults).Select(row => (string)row[0]).Where(body => body.Length < 2000))
        {
            using var response = await host.Post(Path, body);
            var problem = await response.Content.ReadAsStringAsync();
            Assert.DoesNotMatch("System\\.|SawEngine\\.|NestRequest|PieceJson|Exception|   at ", problem);
        }
    }

    /// <summary>Any member of the example, replaced by any odd value, is answered or refused with pointers that resolve.</summary>
    [Fact]
    public void Junk_anywhere_is_never_a_fault_of_the_service()
    {
        string[] junk =
        [
            "null", "0", "-1", "1e400", "1e-300", "0.0000001", "1000000", "99999999", "\"\"", "\"x\"", "\"remnant\"", "[]", "{}", "[null]", "[[]]", "true", "\"\\ud800\"", "1.5",
            "{\"widthAngle\":45}", "\"IPE 200\"", "\"3'-4 5/64\\\"\"",
        ];
        var example = host.Services.GetService(typeof(IReadOnlyList<Operations.Operation>)) is IReadOnlyList<Operations.Operation> operations ? operations[0].Example : "";
        var places = Places(JsonNode.Parse(example)!, "").ToList();
        var place = Gen.Int[0, places.Count - 1].Select(i => places[i]);
        var value = Gen.Int[0, junk.Length - 1].Select(i => junk[i]);
        Gen.Select(place, place, value, value).Sample(
            (first, second, one, other) => AssertSound(With(With(example, first, one), second, other)),
            iter: 500, threads: 2);
    }

    /// <summary>Values on the bounds of what may be stated, in any combination, are calculated without overflow.</summary>
    [Fact]
    public void Extreme_values_are_answered()
    {
        var length = Gen.OneOf(Gen.Const("1000000"), Gen.Const("0.000005"), Gen.Const("999999.999995"), Gen.Const("250000"));
        var lengthOrZero = Gen.OneOf(Gen.Const("0"), length);
        var quantity = Gen.OneOf(Gen.Const("1"), Gen.Const("5000"), Gen.Const("7"));
        var cost = Gen.OneOf(Gen.Const("0"), Gen.Const("10000000"), Gen.Const("0.000001"));
        var unit = Gen.OneOf(Gen.Const("mm"), Gen.Const("in"));
        var pieces = Gen.Select(length, quantity, length, quantity).Select((l, q, m, r) =>
            $$"""[{"pieceId":"p","length":{{l}},"quantity":{{q}}},{"pieceId":"q","length":{{m}},"quantity":{{r}},"section":"IPE 200","secondEnd":{"widthAngle":-60,"heightAngle":60} }]""");
        var stock = Gen.Select(length, quantity, cost, length, cost).Select((l, q, c, m, d) =>
            $$"""[{"stockId":"s","kind":"bar","length":{{l}},"quantity":{{q}},"cost":{{c}},"endCondition":"rolled"},{"stockId":"t","kind":"purchasable","length":{{m}},"cost":{{d}} }]""");
        var cut = Gen.Select(lengthOrZero, lengthOrZero, lengthOrZero).Select((k, t, e) => $$"""{"kerf":{{k}},"trim":{{t}},"tail":{{e}} }""");
        var rules = Gen.Select(lengthOrZero, Gen.OneOf(Gen.Const("0"), Gen.Const("1"), Gen.Const("0.9999999999999999999999999999"))).Select((k, v) =>
            $$"""{"keepFrom":{{k}},"valueFraction":{{v}} }""");
        Gen.Select(unit, pieces, stock, cut, rules).Sample(
            (u, p, s, c, r) => Answered($$"""{"effort":"quick","lengthUnit":"{{u}}","pieces":{{p}},"stock":{{s}},"cut":{{c}},"remnants":{{r}} }"""),
            iter: 40, threads: 2);
    }

    private void Answered(string body)
    {
        using var response = host.Post(Path, body).GetAwaiter().GetResult();
        var text = response.Content.ReadAsStringAsync().GetAwaiter().GetResult();
        Assert.True(response.IsSuccessStatusCode, $"{(int)response.StatusCode} for {body}: {text}");
        Assert.DoesNotContain("not_verified", text, StringComparison.Ordinal);
    }

    private void AssertSound(string body)
    {
        using var response = host.Post(Path, body).GetAwaiter().GetResult();
        var text = response.Content.ReadAsStringAsync().GetAwaiter().GetResult();
        Assert.True((int)response.StatusCode is 200 or 400 or 422, $"{(int)response.StatusCode} for {body}: {text}");
        if ((int)response.StatusCode != 200)
            Assert.All(JsonNode.Parse(text)!["errors"]!.AsArray(), fault => Assert.True(Pointers.Resolves((string)fault!["pointer"]!, Pointers.Read(body)), $"{fault} in {body}"));
    }

    private static IEnumerable<string> Places(JsonNode node, string at) => node switch
    {
        JsonObject o => o.SelectMany(member => Places(member.Value!, $"{at}/{member.Key}").Prepend($"{at}/{member.Key}")),
        JsonArray a => a.SelectMany((item, i) => Places(item!, $"{at}/{i}").Prepend($"{at}/{i}")),
        _ => [],
    };

    /// <summary>The body with the value at a place replaced; unchanged where the place is gone.</summary>
    private static string With(string body, string place, string value)
    {
        const string marker = "\"\u2042\"";
        var root = JsonNode.Parse(body.Replace("\\ud800", "\u2043", StringComparison.Ordinal).Replace("1e400", "12345678901234567", StringComparison.Ordinal))!;
        var node = root;
        var steps = place.Split('/')[1..];
        foreach (var step in steps[..^1])
        {
            node = node is JsonObject o ? o[step] : node is JsonArray a && int.TryParse(step, out var i) && i < a.Count ? a[i] : null;
            if (node is null)
                return body;
        }
        if (node is JsonObject owner && owner.ContainsKey(steps[^1]))
            owner[steps[^1]] = "\u2042";
        else if (node is JsonArray list && int.TryParse(steps[^1], out var index) && index < list.Count)
            list[index] = "\u2042";
        else
            return body;
        var options = new System.Text.Json.JsonSerializerOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        return root.ToJsonString(options)
            .Replace(marker, value, StringComparison.Ordinal)
            .Replace("\u2043", "\\ud800", StringComparison.Ordinal)
            .Replace("12345678901234567", "1e400", StringComparison.Ordinal);
    }

    private async Task AssertFault(string body, int status, string type, string pointer, string code)
    {
        var problem = await host.Post(Path, body, status);

        Assert.Equal(type, (string?)problem["type"]);
        var faults = problem["errors"]!.AsArray();
        Assert.True(faults.Any(f => (string?)f!["pointer"] == pointer && (string?)f["code"] == code), faults.ToJsonString());
        if (Pointers.Read(body) is { } parsed)
            Assert.All(faults, f => Assert.True(Pointers.Resolves((string)f!["pointer"]!, parsed), f.ToJsonString()));
    }
}
