using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SawEngine.Api.Features.CuttingData;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.CuttingData;

/// <summary>Bad input, one row a fault.</summary>
[Collection(HostCollection.Name)]
public sealed class CuttingDataFaultTests(ServiceHost host)
{
    private sealed record FaultCase(string Name, Action<JsonNode> Change, int Status, string Pointer, string Code);

    private static readonly FaultCase[] Cases =
    [
        new("No cuts stated", r => r.AsObject().Remove("cuts"), 400, "#", "missing_member"),
        new("A misspelt member", r => Cut(r)["sawId"] = "swivel", 400, "#/cuts/0/sawId", "unknown_member"),
        new("A cut without a grade", r => Cut(r).AsObject().Remove("grade"), 400, "#/cuts/0", "missing_member"),
        new("A start, which nothing needs here", r => r["planStart"] = "2026-11-30T06:00:00+01:00", 400, "#/planStart", "unknown_member"),
        new("An empty list of cuts", r => r["cuts"] = new JsonArray(), 422, "#/cuts", "empty"),
        new("Too many cuts", r => r["cuts"] = Cuts(CuttingDataLimits.Cuts + 1), 422, "#/cuts", "too_many"),
        new("Too many cuts times saws", r => { r["cuts"] = Cuts(CuttingDataLimits.Cuts); r["shop"]!["saws"] = Saws(1 + CuttingDataLimits.CutsOnSaws / CuttingDataLimits.Cuts); }, 422, "#/cuts", "too_much_work"),
        new("An outline of many corners on many cuts", r => { r["cuts"] = Cuts(700, "star"); r["sections"]!.AsArray().Add(Star()); }, 422, "#/cuts", "too_much_work"),
        new("Two cuts of one id", r => Cut(r)["cutId"] = "a", 422, "#/cuts/1/cutId", "duplicate_id"),
        new("A cut without an id", r => Cut(r)["cutId"] = "", 422, "#/cuts/0/cutId", "empty"),
        new("No such cut", r => Cut(r)["quantity"] = 0, 422, "#/cuts/0/quantity", "too_small"),
        new("Very many such cuts", r => Cut(r)["quantity"] = 100_001, 422, "#/cuts/0/quantity", "too_large"),
        new("An angle over 60 degrees", r => Cut(r)["face"]!["widthAngle"] = 60.001m, 422, "#/cuts/0/face/widthAngle", "too_large"),
        new("A section that nobody knows", r => Cut(r)["section"] = "IPE 201", 422, "#/cuts/0/section", "unknown_section"),
        new("A grade that nobody knows", r => Cut(r)["grade"] = "S356J2", 422, "#/cuts/0/grade", "unknown_grade"),
        new("A saw that nobody knows", r => Cut(r)["sawIds"]![1] = "squre", 422, "#/cuts/0/sawIds/1", "unknown_saw"),
        new("A saw named twice", r => Cut(r)["sawIds"]![1] = "swivel", 422, "#/cuts/0/sawIds/1", "duplicate_id"),
        new("An empty list of saws", r => Cut(r)["sawIds"] = new JsonArray(), 422, "#/cuts/0/sawIds", "empty"),
        new("A blade that nobody knows", r => Cut(r)["bladeId"] = "4/5", 422, "#/cuts/0/bladeId", "unknown_blade"),
        new("A piece without a length", r => Cut(r)["piece"] = new JsonObject(), 422, "#/cuts/0/piece", "length_required"),
        new("A piece with two lengths", r => Cut(r)["piece"] = JsonNode.Parse("""{"length": 100, "lengthText": "4 in"}"""), 422, "#/cuts/0/piece/lengthText", "length_given_twice"),
        new("A tolerance as long as the piece", r => Cut(r)["piece"] = JsonNode.Parse("""{"length": 100, "tolerance": {"minus": 100}}"""), 422, "#/cuts/0/piece/tolerance/minus", "too_large"),
        new("A squareness of nothing", r => Cut(r)["squareness"] = 0, 422, "#/cuts/0/squareness", "must_be_positive"),
        new("A tilt over 60 degrees", r => r["shop"]!["saws"]![0]!["tiltRange"] = JsonNode.Parse("""{"toFirstEnd": 61, "toSecondEnd": 0}"""), 422, "#/shop/saws/0/tiltRange/toFirstEnd", "too_large"),
        new("A head that is canted too far", r => r["shop"]!["saws"]![0]!["cantDegrees"] = -45.001m, 422, "#/shop/saws/0/cantDegrees", "too_small"),
        new("A bar feed that errs by a meter", r => r["shop"]!["saws"]![0]!["accuracy"] = JsonNode.Parse("""{"indexBiasPerStroke": -1001}"""), 422, "#/shop/saws/0/accuracy/indexBiasPerStroke", "too_small"),
        new("Too many blades to compare", r => { r["compareBlades"] = true; r["cuts"] = Cuts(386); }, 422, "#/cuts", "too_much_work"),
        new("Two sections of one id", r => r["sections"]!.AsArray().Add(r["sections"]![0]!.DeepClone()), 422, "#/sections/2/sectionId", "duplicate_id"),
        new("A section that is none", r => r["sections"]![0]!.AsObject().Remove("width"), 422, "#/sections/0", "missing"),
        new("Two grades of one id", r => r["grades"]!.AsArray().Add(r["grades"]![0]!.DeepClone()), 422, "#/grades/2/gradeId", "duplicate_id"),
        new("A grade like two things", r => r["grades"]![0]!["group"] = "tool steel", 422, "#/grades/0", "like_grade_or_group"),
        new("A section whose contact widths add up to another area", r => Profile(r)["areaMm2"] = 3031, 422, "#/sections/1/areaMm2", "area_disagrees"),
        new("A section without area", r => Profile(r)["areaMm2"] = 0, 422, "#/sections/1/areaMm2", "too_small"),
        new("A section turned to another area", r => Profile(r)["contactWidthsTurned"]![3]!["width"] = 40, 422, "#/sections/1/contactWidthsTurned", "area_disagrees"),
        new("A section turned to another height", r => Profile(r)["contactWidthsTurned"]![3]!["depth"] = 79, 422, "#/sections/1/contactWidthsTurned/3/depth", "extent_disagrees"),
        new("A contact width beyond the width", r => Profile(r)["contactWidths"]![1]!["width"] = 81, 422, "#/sections/1/contactWidths/1/width", "too_large"),
        new("A negative contact width", r => Profile(r)["contactWidths"]![0]!["width"] = -1, 422, "#/sections/1/contactWidths/0/width", "too_small"),
        new("Contact widths that begin below the top", r => Profile(r)["contactWidths"]![0]!["depth"] = 1, 422, "#/sections/1/contactWidths/0/depth", "depths_not_ascending"),
        new("Contact widths finer than the grid", r => Profile(r)["contactWidths"]![0]!["width"] = 40.0000001m, 422, "#/sections/1/contactWidths/0/width", "too_fine"),
        new("Contact widths of no runs", r => Profile(r)["contactWidths"]![0]!["runs"] = 0, 422, "#/sections/1/contactWidths/0/runs", "too_small"),
        new("Contact widths of many runs", r => Profile(r)["contactWidths"]![0]!["runs"] = 101, 422, "#/sections/1/contactWidths/0/runs", "too_large"),
        new("Contact widths at one depth", r => Profile(r)["contactWidths"]!.AsArray().RemoveAt(1), 422, "#/sections/1/contactWidths", "empty"),
        new("A contact width without a depth", r => Profile(r)["contactWidths"]![0]!.AsObject().Remove("depth"), 400, "#/sections/1/contactWidths/0", "missing_member"),
        new("Contact widths beside an outline", r => Profile(r)["outline"] = JsonNode.Parse("""[{"x": 0, "y": 0}, {"x": 9, "y": 0}, {"x": 9, "y": 9}]"""), 422, "#/sections/1/outline", "not_used_by_shape"),
        new("Contact widths without the width", r => Profile(r).AsObject().Remove("width"), 422, "#/sections/1", "missing"),
        new("Contact widths of a flat", r => { r["sections"]![0]!["contactWidths"] = Profile(r)["contactWidths"]!.DeepClone(); }, 422, "#/sections/0/contactWidths", "not_used_by_shape"),
        new("Many contact widths on many cuts", r => { r["cuts"] = Cuts(700, "my profile"); Profile(r)["contactWidths"] = Widths(100); Profile(r).AsObject().Remove("contactWidthsTurned"); Profile(r).AsObject().Remove("areaMm2"); }, 422, "#/cuts", "too_much_work"),
        new("A grade of its own without a hardness", r => Own(r).Remove("hardnessHb"), 422, "#/grades/1", "value_required"),
        new("A grade of its own without a blade speed", r => Own(r).Remove("bladeSpeedMPerMin"), 422, "#/grades/1", "value_required"),
        new("A grade of its own without a cutting rate", r => Own(r).Remove("cuttingRateCm2PerMin"), 422, "#/grades/1", "value_required"),
        new("A grade of its own without a unit power", r => Own(r).Remove("unitPowerKwPerCm3PerMin"), 422, "#/grades/1", "value_required"),
        new("A grade of its own without a blade life", r => Own(r).Remove("bladeLifeM2"), 422, "#/grades/1", "value_required"),
        new("A grade of its own and no group without a blade life", r => { Own(r).Remove("group"); Own(r).Remove("bladeLifeM2"); }, 422, "#/grades/1", "value_required"),
        new("A grade of a group that nobody knows", r => Own(r)["group"] = "grafite", 422, "#/grades/1/group", "unknown_group"),
        new("A coolant rule that nobody knows", r => Own(r)["coolant"] = "forbidden", 400, "#/grades/1/coolant", "unknown_value"),
        new("A saw's blade that is not listed", r => r["shop"]!["saws"]![0]!["bladeIds"]![1] = "4/6", 422, "#/shop/saws/0/bladeIds/1", "unknown_blade"),
    ];

    public static TheoryData<string> Names => [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Fault_is_reported_where_it_is(string name)
    {
        var tried = Cases.Single(c => c.Name == name);
        var request = CuttingDataBody.Full();
        tried.Change(request);

        var problem = await host.Post(CuttingDataBody.Url, request.ToJsonString(), tried.Status);

        var fault = Assert.Single(problem["errors"]!.AsArray())!;
        Assert.Equal((tried.Pointer, tried.Code), ((string?)fault["pointer"], (string?)fault["code"]));
        Assert.True(Pointers.Resolves(tried.Pointer, request));
    }

    [Fact]
    public async Task Usual_blade_of_a_saw_that_lists_none_may_be_asked_for()
    {
        var request = CuttingDataBody.Of("Round 50", "1045", """, "bladeId": "27x0.9-4/6", "sawIds": ["square"]""");

        var result = (await host.Post(CuttingDataBody.Url, request.ToJsonString(), 200))["results"]![0]!;

        Assert.Equal("27x0.9-4/6", (string?)result["bladeId"]);
        Assert.Equal([4m, 6m], result["teethPerInch"]!.AsArray().Select(teeth => (decimal)teeth!));
    }

    /// <summary>Every number is set to values that overflow, vanish or lie beside every grid: a refusal or an answer, never an exception.</summary>
    [Fact]
    public void No_number_can_crash_the_calculation()
    {
        var operation = new CuttingDataOperation();
        foreach (var source in new[] { CuttingDataBody.Full(), JsonNode.Parse(operation.Example)!.AsObject() })
        {
            foreach (var path in NumbersOf(source, []))
            {
                foreach (var value in new[] { 0m, -1m, 1e-10m, 0.0127m, 60m, 1e6m, decimal.MaxValue / 10, decimal.MinValue / 10, 1234567.1234567m })
                {
                    var request = source.DeepClone();
                    Set(request, path, value);
                    Assert.NotNull(operation.Run(Encoding.UTF8.GetBytes(request.ToJsonString()), Preferences.None, CancellationToken.None));
                }
            }
        }
    }

    [Fact]
    public void Largest_requests_in_bounds_are_answered()
    {
        var request = CuttingDataBody.Full();
        request["cuts"] = Cuts(70, "star");
        request["sections"]!.AsArray().Add(Star());
        Assert.IsType<Answered>(new CuttingDataOperation().Run(Encoding.UTF8.GetBytes(request.ToJsonString()), Preferences.None, CancellationToken.None));

        request["cuts"] = Cuts(CuttingDataLimits.Cuts);
        request["shop"]!["saws"] = Saws(CuttingDataLimits.CutsOnSaws / CuttingDataLimits.Cuts);
        Assert.IsType<Answered>(new CuttingDataOperation().Run(Encoding.UTF8.GetBytes(request.ToJsonString()), Preferences.None, CancellationToken.None));
    }

    private static IEnumerable<object[]> NumbersOf(JsonNode? node, object[] path) => node switch
    {
        JsonObject members => members.SelectMany(member => NumbersOf(member.Value, [.. path, member.Key])),
        JsonArray items => items.SelectMany((item, i) => NumbersOf(item, [.. path, i])),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number => [path],
        _ => [],
    };

    private static void Set(JsonNode root, object[] path, decimal value)
    {
        var parent = path[..^1].Aggregate(root, (node, step) => step is int i ? node[i]! : node[(string)step]!);
        if (path[^1] is int index)
            parent[index] = value;
        else
            parent[(string)path[^1]] = value;
    }

    [Fact]
    public async Task Grade_that_is_like_nothing_has_a_fault_for_every_value_that_it_leaves_out()
    {
        var request = CuttingDataBody.Full();
        request["grades"]![1] = JsonNode.Parse("""{"gradeId": "my graphite", "densityKgPerM3": 1820}""");

        var faults = (await host.Post(CuttingDataBody.Url, request.ToJsonString(), 422))["errors"]!.AsArray();

        Assert.All(faults, fault => Assert.Equal(("#/grades/1", "value_required"), ((string?)fault!["pointer"], (string?)fault["code"])));
        foreach (var member in new[] { "hardnessHb", "bladeSpeedMPerMin", "cuttingRateCm2PerMin", "unitPowerKwPerCm3PerMin", "bladeLifeM2" })
            Assert.Single(faults, fault => ((string)fault!["detail"]!).Contains(member, StringComparison.Ordinal));
        Assert.Equal(5, faults.Count);
    }

    private static JsonNode Profile(JsonNode request) => request["sections"]![1]!;

    private static JsonObject Own(JsonNode request) => request["grades"]![1]!.AsObject();

    private static JsonArray Widths(int count) => new([.. Enumerable.Range(0, count).Select(i => JsonNode.Parse($$"""{"depth": {{i}}, "width": 40}"""))]);

    private static JsonNode Cut(JsonNode request) => request["cuts"]![0]!;

    private static JsonArray Cuts(int count, string section = "Round 50") =>
        new([.. Enumerable.Range(0, count).Select(i => JsonNode.Parse($$"""{"cutId": "{{i}}", "section": "{{section}}", "grade": "1045"}"""))]);

    private static JsonArray Saws(int count) => new([.. Enumerable.Range(0, count).Select(i => JsonNode.Parse(
        $$"""{"sawId": "{{i}}", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 80, "calendarId": "early"}"""))]);

    /// <summary>A star of 160 corners, 200 mm across, on the grid of a micrometer.</summary>
    private static JsonObject Star() => new JsonObject
    {
        ["sectionId"] = "star",
        ["shape"] = "custom",
        ["outline"] = new JsonArray([.. Enumerable.Range(0, 160).Select(i => Corner(i % 2 == 0 ? 100 : 60, Math.Tau * i / 160))]),
    };

    private static JsonObject Corner(double radius, double angle) => new JsonObject
    {
        ["x"] = Math.Round((decimal)(radius * Math.Cos(angle)), 3),
        ["y"] = Math.Round((decimal)(radius * Math.Sin(angle)), 3),
    };
}
