using System.Text.Json.Nodes;
using SawEngine.Api.Features.Plans;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>The example in inches and its answer, checked from their JSON by arithmetic of this file, and against the same day in millimeters.</summary>
[Collection(HostCollection.Name)]
public sealed class BookingInchPlanTests(ServiceHost host)
{
    private const string Path = "/v1/plans";

    private static readonly string Request = Repository.Read("docs", "examples", "booking-inch.json");
    private static readonly string Committed = Repository.Read("docs", "examples", "booking-inch-plan.json");

    private static JsonObject Asked => JsonNode.Parse(Request)!.AsObject();

    private static JsonObject Plan => JsonNode.Parse(Committed)!.AsObject();

    [Fact]
    public async Task Committed_answer_is_what_the_service_answers() =>
        Assert.Equal(Answers.WithoutTiming(Committed), Answers.WithoutTiming((await host.Post(Path, Request, 200)).ToJsonString()));

    [Fact]
    public async Task The_same_day_in_millimeters_has_the_same_answer()
    {
        var twin = MetricTwin.Of(Asked, typeof(PlanRequest));

        // Lengths of every kind are converted, fractions exactly: 11'-7 3/16" is 139.1875 in.
        Assert.Equal(139.1875m * 25.4m, (decimal)twin["orders"]![0]!["lines"]![0]!["length"]!);
        Assert.Equal(96.34375m * 25.4m, (decimal)twin["orders"]![2]!["lines"]![2]!["length"]!);
        Assert.Equal(61.9125m, (decimal)twin["sections"]![0]!["outline"]![3]!["x"]!);
        Assert.Equal(1.6002m, (decimal)twin["shop"]!["blades"]![3]!["kerf"]!);
        Assert.DoesNotContain("lengthText", twin.ToJsonString(), StringComparison.Ordinal);

        Assert.Empty(MetricTwin.Differences(Plan, await host.Post(Path, twin.ToJsonString(), 200), typeof(PlanResponse), isCosted: true));
    }

    [Fact]
    public void It_is_of_the_size_and_variety_of_a_day()
    {
        var mapping = PlanMapping.Of(PlanReading.Read(Request));
        var lines = mapping.Problem.Orders.SelectMany(order => order.Lines).ToList();
        Assert.Equal(4, mapping.Problem.Orders.Count);
        Assert.Equal(16, lines.Count);
        Assert.True(lines.Select(line => line.Section!.Shape).Distinct().Count() >= 8);
        Assert.True(lines.Select(line => line.Grade).Distinct().Count() >= 6);
        Assert.Contains(lines, line => line.Length.Nanometers % 396_875 == 0 && line.Length.Nanometers % (2 * 396_875) != 0);
        Assert.Equal(2, lines.Count(line => !line.SecondEnd.IsSquare));
        Assert.Equal([StockKind.Bar, StockKind.Remnant, StockKind.Purchasable], mapping.Problem.Stock.Select(item => item.Kind).Distinct().Order());
        Assert.Equal(3, mapping.Problem.Saws.Count);
        Assert.Empty(mapping.Warnings);
    }

    [Fact]
    public void Every_placeable_piece_is_placed_once_and_the_impossible_line_says_why()
    {
        Assert.Equal(["PR-2201/5 1 no_saw_holds_section"], Plan["unplaced"]!.AsArray().Select(row => $"{row!["orderId"]}/{row["lineId"]} {row["quantity"]} {row["reason"]}"));
        var placed = Plan["layouts"]!.AsArray().SelectMany(layout => layout!["cuts"]!.AsArray().Select(cut => (Line: $"{cut!["orderId"]}/{cut["lineId"]}", Repeat: (int)layout["repeat"]!)))
            .GroupBy(cut => cut.Line).ToDictionary(cuts => cuts.Key, cuts => cuts.Sum(cut => cut.Repeat));
        Assert.Equal(
            Lines().Where(line => line.Name != "PR-2201/5").Select(line => (line.Name, (int)line.Line["quantity"]!)).Order(),
            placed.Select(line => (line.Key, line.Value)).Order());
    }

    [Fact]
    public void Pieces_are_as_long_as_ordered_and_make_up_each_bar_with_trim_kerfs_and_remainder()
    {
        var stock = Asked["stock"]!.AsArray().ToDictionary(item => (string)item!["stockId"]!, item => Inches(item!));
        var ordered = Lines().ToDictionary(line => line.Name, line => Inches(line.Line));
        var sawn = 0;
        foreach (var layout in Plan["layouts"]!.AsArray())
        {
            var pieces = 0m;
            foreach (var cut in layout!["cuts"]!.AsArray())
            {
                var length = (decimal)cut!["end"]! - (decimal)cut["start"]!;
                Assert.Equal(ordered[$"{cut["orderId"]}/{cut["lineId"]}"], length);
                pieces += (decimal?)cut["centerlineLength"] ?? length;
                sawn++;
            }
            Assert.Equal(stock[(string)layout["stockId"]!], (decimal)layout["trimLength"]! + pieces + (decimal)layout["kerfLength"]! + (decimal)layout["remainder"]!["length"]!);
        }
        Assert.True(sawn > 50);
    }

    [Fact]
    public void Pieces_lie_a_kerf_apart_and_leave_the_tail()
    {
        var jobs = Plan["jobs"]!.AsArray().ToDictionary(job => (string)job!["jobId"]!, job => job!);
        var blades = Asked["shop"]!["blades"]!.AsArray().ToDictionary(blade => (string)blade!["bladeId"]!, blade => (decimal)blade!["kerf"]!);
        var tails = Asked["shop"]!["saws"]!.AsArray().ToDictionary(saw => (string)saw!["sawId"]!, saw => (decimal)saw!["tail"]!);
        foreach (var layout in Plan["layouts"]!.AsArray())
        {
            var job = jobs[(string)layout!["jobId"]!];
            Assert.True((decimal)layout["remainder"]!["length"]! >= tails[(string)job["sawId"]!], $"{layout["layoutId"]}");
            var cuts = layout["cuts"]!.AsArray();
            // Behind a miter the next piece may begin before the one before it ends.
            for (var i = 1; i < cuts.Count && cuts[i - 1]!["endCut"] is null; i++)
                Assert.True((decimal)cuts[i]!["start"]! - (decimal)cuts[i - 1]!["end"]! >= blades[(string)job["bladeId"]!], $"{layout["layoutId"]}");
        }
    }

    private static IEnumerable<(string Name, JsonObject Line)> Lines() =>
        Asked["orders"]!.AsArray().SelectMany(order => order!["lines"]!.AsArray().Select(line => ($"{order["orderId"]}/{line!["lineId"]}", line!.AsObject())));

    private static decimal Inches(JsonNode stated) => stated["length"] is { } length ? (decimal)length : MetricTwin.Millimeters((string)stated["lengthText"]!) / 25.4m;
}
