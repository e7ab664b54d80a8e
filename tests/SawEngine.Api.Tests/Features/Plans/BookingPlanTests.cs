using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.CommandLine;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>The answer to the example, checked from its JSON alone by arithmetic of this file.</summary>
[Collection(HostCollection.Name)]
public sealed class BookingPlanTests(ServiceHost host)
{
    private const string Path = "/v1/plans";

    private static readonly string Request = Repository.Read("docs", "examples", "booking.json");
    private static readonly string Committed = Repository.Read("docs", "examples", "booking-plan.json");

    private static JsonObject Asked => JsonNode.Parse(Request)!.AsObject();

    private static JsonObject Plan => JsonNode.Parse(Committed)!.AsObject();

    [Fact]
    public async Task Committed_answer_is_what_the_service_answers() =>
        Assert.Equal(Answers.WithoutTiming(Committed), Answers.WithoutTiming((await host.Post(Path, Request, 200)).ToJsonString()));

    [Fact]
    public async Task Command_line_gives_the_same_bytes()
    {
        using var input = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(Request));
        using var output = new MemoryStream();
        var commands = Commands.All(host.Services.GetRequiredService<IReadOnlyList<Operation>>());
        var code = await Commands.Run(Commands.Find(["plan", "-"], commands)!, ["plan", "-"], new(input, output, TextWriter.Null), CancellationToken.None);

        Assert.Equal(0, code);
        Assert.Equal(Answers.WithoutTiming(Committed), Answers.WithoutTiming(System.Text.Encoding.UTF8.GetString(output.ToArray())));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Shuffled_lists_give_the_same_answer(int seed)
    {
        var shuffled = Shuffled(Asked, new Random(seed)).ToJsonString();

        Assert.NotEqual(Asked.ToJsonString(), shuffled);
        Assert.Equal(Answers.WithoutTiming(Committed), Answers.WithoutTiming((await host.Post(Path, shuffled, 200)).ToJsonString()));
    }

    [Fact]
    public void Every_placeable_piece_is_placed_once_and_the_two_impossible_lines_say_why()
    {
        Assert.Equal("partial", (string?)Plan["status"]);
        Assert.Equal(
            ["SO-4103/50 2 longer_than_every_bar", "SO-4104/20 2 no_saw_holds_section"],
            Plan["unplaced"]!.AsArray().Select(row => $"{row!["orderId"]}/{row["lineId"]} {row["quantity"]} {row["reason"]}"));
        var placed = Plan["layouts"]!.AsArray().SelectMany(layout => layout!["cuts"]!.AsArray().Select(cut => (Line: $"{cut!["orderId"]}/{cut["lineId"]}", Repeat: (int)layout["repeat"]!)))
            .GroupBy(cut => cut.Line).ToDictionary(cuts => cuts.Key, cuts => cuts.Sum(cut => cut.Repeat));
        var placeable = 0;
        foreach (var (order, line) in Lines())
        {
            var name = $"{order["orderId"]}/{line["lineId"]}";
            if (name is "SO-4103/50" or "SO-4104/20")
                continue;
            Assert.Equal((name, (int)line["quantity"]!), (name, placed[name]));
            placeable += (int)line["quantity"]!;
        }
        Assert.Equal(placeable, placed.Values.Sum());
        Assert.True(placeable > 100);
    }

    [Fact]
    public void Trim_pieces_kerfs_and_remainder_make_up_each_bar()
    {
        var stock = Asked["stock"]!.AsArray().ToDictionary(item => (string)item!["stockId"]!, item => item!);
        foreach (var layout in Plan["layouts"]!.AsArray())
        {
            var cuts = layout!["cuts"]!.AsArray();
            var pieces = cuts.Sum(cut => (decimal?)cut!["centerlineLength"] ?? (decimal)cut["end"]! - (decimal)cut["start"]!);
            var bar = (decimal)stock[(string)layout["stockId"]!]["length"]!;
            Assert.Equal(bar, (decimal)layout["trimLength"]! + pieces + (decimal)layout["kerfLength"]! + (decimal)layout["remainder"]!["length"]!);
        }
    }

    [Fact]
    public void Pieces_lie_a_kerf_of_their_blade_apart_and_leave_the_tail_of_their_saw()
    {
        var jobs = Plan["jobs"]!.AsArray().ToDictionary(job => (string)job!["jobId"]!, job => job!);
        var blades = Asked["shop"]!["blades"]!.AsArray().ToDictionary(blade => (string)blade!["bladeId"]!, blade => (decimal)blade!["kerf"]!);
        var tails = Asked["shop"]!["saws"]!.AsArray().ToDictionary(saw => (string)saw!["sawId"]!, saw => (decimal)saw!["tail"]!);
        foreach (var layout in Plan["layouts"]!.AsArray())
        {
            var job = jobs[(string)layout!["jobId"]!];
            var kerf = blades[(string)job["bladeId"]!];
            Assert.Contains((string)job["sawId"]!, layout["sawIds"]!.AsArray().Select(saw => (string)saw!));
            Assert.True((decimal)layout["remainder"]!["length"]! >= tails[(string)job["sawId"]!], $"{layout["layoutId"]}");
            var cuts = layout["cuts"]!.AsArray();
            // Facing miters overlap along the bar: MiterTests hold them against plane geometry.
            for (var i = 1; i < cuts.Count; i++)
            {
                if (cuts[i]!["startCut"] is null && cuts[i - 1]!["endCut"] is null)
                    Assert.True((decimal)cuts[i]!["start"]! - (decimal)cuts[i - 1]!["end"]! >= kerf, $"{layout["layoutId"]}");
            }
        }
    }

    [Fact]
    public void Certified_and_single_heat_lines_keep_their_heat()
    {
        var layouts = Plan["layouts"]!.AsArray();
        foreach (var (order, line) in Lines().Where(line => line.Line["heatRule"] is not null || line.Line["certificate"] is not null))
        {
            var own = layouts.Where(layout => layout!["cuts"]!.AsArray().Any(cut => (string)cut!["orderId"]! == (string)order["orderId"]! && (string)cut["lineId"]! == (string)line["lineId"]!)).ToList();
            Assert.NotEmpty(own);
            Assert.All(own, layout => Assert.NotNull(layout!["heat"]));
            if (line["certificate"] is { } ordered)
                Assert.All(own, layout => Assert.True(string.CompareOrdinal((string)layout!["certificate"]!, (string)ordered!) >= 0));
            if ((string?)line["heatRule"] == "single")
                Assert.Single(own.Select(layout => (string)layout!["heat"]!).Distinct());
        }
    }

    [Fact]
    public void Bars_that_are_cut_together_are_as_many_as_the_saw_clamps()
    {
        var clamped = Asked["shop"]!["saws"]!.AsArray().Where(saw => saw!["bundle"] is not null).ToDictionary(saw => (string)saw!["sawId"]!, saw => saw!["bundle"]!);
        var jobs = Plan["jobs"]!.AsArray().ToDictionary(job => (string)job!["jobId"]!, job => job!);
        var together = Plan["layouts"]!.AsArray().Where(layout => layout!["bundle"] is not null).ToList();
        Assert.NotEmpty(together);
        foreach (var layout in together)
        {
            var (wide, high, repeat) = ((int)layout!["bundle"]!["wide"]!, (int)layout["bundle"]!["high"]!, (int)layout["repeat"]!);
            var job = jobs[(string)layout["jobId"]!];
            var most = clamped[(string)job["sawId"]!];
            Assert.True(wide * high is > 1 && wide * high <= repeat && wide <= (int)most["mostWide"]! && high <= (int)most["mostHigh"]!, $"{layout["layoutId"]}");
            Assert.Equal((repeat + wide * high - 1) / (wide * high), (int)layout["cycles"]!);
            var faces = layout["cuts"]!.AsArray().SelectMany(cut => new[] { cut!["startCut"]?.ToJsonString(), cut["endCut"]?.ToJsonString() }).Distinct();
            Assert.True(wide == 1 || faces.Count() == 1, $"{layout["layoutId"]}");
            Assert.True((int)job["bundle"]!["wide"]! * (int)job["bundle"]!["high"]! >= wide * high);
        }
        Assert.Equal(together.Select(layout => (string)layout!["jobId"]!).Distinct().Order(StringComparer.Ordinal), jobs.Values.Where(job => job["bundle"] is not null).Select(job => (string)job["jobId"]!).Order(StringComparer.Ordinal));
    }

    /// <summary>The property holds on this day; where jobs come in another order it need not.</summary>
    [Fact]
    public async Task The_day_costs_no_more_the_more_bars_may_be_cut_together()
    {
        var costs = new List<decimal>();
        foreach (var bundle in new[] { null, """{"mostWide":2}""", """{"mostWide":3,"mostHigh":2}""", """{"mostWide":6,"mostHigh":4}""" })
        {
            var day = Asked;
            foreach (var saw in day["shop"]!["saws"]!.AsArray())
                saw!["bundle"] = bundle is null ? null : JsonNode.Parse(bundle);
            var plan = await host.Post(Path, day.ToJsonString(), 200);
            Assert.Equal(305, (int)plan["totals"]!["piecesPlanned"]!);
            costs.Add((decimal)plan["totals"]!["cost"]!);
        }
        Assert.Equal(costs.OrderDescending(), costs);
        Assert.True(costs[^1] < costs[0]);
    }

    [Fact]
    public void Work_on_a_saw_does_not_overlap_and_lies_within_its_shifts()
    {
        foreach (var saw in Plan["jobs"]!.AsArray().GroupBy(job => (string)job!["sawId"]!))
        {
            var early = saw.Key == "beam-saw";
            var spans = saw.SelectMany(job => job!["work"]!.AsArray().Concat(job["setUps"]!.AsArray())).Select(span => (Start: Time(span!["start"]), Finish: Time(span["finish"])))
                .OrderBy(span => span.Start).ToList();
            for (var i = 0; i < spans.Count; i++)
            {
                Assert.True(i == 0 || spans[i].Start >= spans[i - 1].Finish, $"{saw.Key} at {spans[i].Start}");
                Assert.True(Within(spans[i], "06:00", early ? "14:30" : "22:00"), $"{saw.Key} at {spans[i].Start}");
                Assert.True(Clear(spans[i], "09:30", "09:45") && Clear(spans[i], early ? "12:00" : "18:00", early ? "12:30" : "18:30"), $"{saw.Key} at {spans[i].Start}");
            }
        }
    }

    [Fact]
    public void Costs_add_up_to_the_cent()
    {
        foreach (var order in Plan["orders"]!.AsArray())
        {
            foreach (var cost in order!["lines"]!.AsArray().Select(line => line!["cost"]!.AsObject()))
                Assert.Equal((decimal)cost["total"]!, cost.Where(kind => kind.Key != "total").Sum(kind => (decimal)kind.Value!));
            Assert.Equal((decimal)order["cost"]!, order["lines"]!.AsArray().Sum(line => (decimal)line!["cost"]!["total"]!));
        }
        Assert.Equal((decimal)Plan["totals"]!["cost"]!, Plan["orders"]!.AsArray().Sum(order => (decimal)order!["cost"]!));
    }

    [Fact]
    public void Material_is_what_the_bars_cost_less_what_goes_back()
    {
        var stock = Asked["stock"]!.AsArray().ToDictionary(item => (string)item!["stockId"]!, item => item!);
        var consumed = Plan["layouts"]!.AsArray().Sum(layout => (int)layout!["repeat"]! * ((decimal)stock[(string)layout["stockId"]!]["cost"]! - (decimal)layout["remainder"]!["value"]!));
        var material = Plan["orders"]!.AsArray().SelectMany(order => order!["lines"]!.AsArray()).Sum(line => (decimal)line!["cost"]!["material"]!);

        // Values of remainders are written to the cent; each may differ by half of one.
        Assert.InRange(material - consumed, -0.005m * (Plan["layouts"]!.AsArray().Count + 1), 0.005m * (Plan["layouts"]!.AsArray().Count + 1));
    }

    [Fact]
    public void Claims_are_the_bars_that_are_cut_and_no_more_than_there_are()
    {
        var used = Plan["layouts"]!.AsArray().GroupBy(layout => (string)layout!["stockId"]!).ToDictionary(item => item.Key, item => item.Sum(layout => (int)layout!["repeat"]!));
        var claims = Plan["claims"]!.AsArray().ToDictionary(claim => (string)claim!["stockId"]!, claim => (int)claim!["quantity"]!);
        Assert.Equal(used.OrderBy(item => item.Key, StringComparer.Ordinal), claims.OrderBy(item => item.Key, StringComparer.Ordinal));
        foreach (var item in Asked["stock"]!.AsArray())
        {
            if (claims.TryGetValue((string)item!["stockId"]!, out var claimed) && (string)item["kind"]! != "purchasable")
                Assert.True(claimed <= ((int?)item["quantity"] ?? 1), $"{item["stockId"]}");
        }
    }

    [Fact]
    public void Seconds_of_a_job_add_up_and_match_its_times()
    {
        foreach (var job in Plan["jobs"]!.AsArray())
        {
            var seconds = job!["seconds"]!.AsObject();
            Assert.Equal((decimal)seconds["total"]!, seconds.Where(part => part.Key != "total").Sum(part => (decimal)part.Value!));
            var scheduled = job["work"]!.AsArray().Sum(span => (decimal)(Time(span!["finish"]) - Time(span["start"])).TotalSeconds);
            Assert.InRange(scheduled - ((decimal)seconds["total"]! - (decimal)seconds["setUp"]!), 0m, job["work"]!.AsArray().Count);
        }
    }

    [Fact]
    public void Every_job_carries_cautions_that_are_explained()
    {
        var known = Plan["cautions"]!.AsArray().ToDictionary(caution => (string)caution!["cautionId"]!, caution => caution!);
        Assert.All(Plan["jobs"]!.AsArray(), job => Assert.NotEmpty(job!["cautionIds"]!.AsArray()));
        Assert.All(Plan["jobs"]!.AsArray().SelectMany(job => job!["cautionIds"]!.AsArray()), id => Assert.NotEmpty((string)known[(string)id!]["reference"]!));
    }

    private static IEnumerable<(JsonObject Order, JsonObject Line)> Lines() =>
        Asked["orders"]!.AsArray().SelectMany(order => order!["lines"]!.AsArray().Select(line => (order.AsObject(), line!.AsObject())));

    private static DateTimeOffset Time(JsonNode? text) => DateTimeOffset.Parse((string)text!, CultureInfo.InvariantCulture);

    private static bool Within((DateTimeOffset Start, DateTimeOffset Finish) span, string from, string to) =>
        span.Start.TimeOfDay >= Of(from) && span.Finish.TimeOfDay <= Of(to) && span.Start.Date == span.Finish.Date;

    private static bool Clear((DateTimeOffset Start, DateTimeOffset Finish) span, string from, string to) =>
        span.Finish.TimeOfDay <= Of(from) || span.Start.TimeOfDay >= Of(to);

    private static TimeSpan Of(string clock) => TimeSpan.Parse(clock, CultureInfo.InvariantCulture);

    private static JsonNode Shuffled(JsonNode node, Random random)
    {
        switch (node)
        {
            case JsonObject members:
                return new JsonObject(members.Select(member => KeyValuePair.Create(member.Key, member.Value is { } value ? (JsonNode?)Shuffled(value, random) : null)));
            case JsonArray items when items.All(item => item is JsonObject):
                var shuffled = items.Select(item => Shuffled(item!, random)).ToArray();
                random.Shuffle(shuffled);
                return new JsonArray(shuffled);
            default:
                return node.DeepClone();
        }
    }
}
