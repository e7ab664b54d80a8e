using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Estimates;

[Collection(HostCollection.Name)]
public sealed class EstimateTests(ServiceHost host)
{
    private const string Path = "/v1/estimates";

    private JsonObject Example() =>
        JsonNode.Parse(host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Path == Path).Example)!.AsObject();

    /// <summary>By hand: ten pieces of one bar that costs 148; nothing is kept, so all of it is charged; one loading, one remainder, one change of section and chips.</summary>
    [Fact]
    public async Task One_bar_is_as_by_hand()
    {
        var answer = await Answer(TenPieces());

        var seconds = answer["totals"]!["seconds"]!;
        Assert.Equal(100, (decimal)seconds["load"]!);
        Assert.Equal(10 * 12, (decimal)seconds["unload"]!);
        Assert.Equal(10 * (5 + 4 + 3), (decimal)seconds["cycle"]!);
        Assert.Equal(30, (decimal)seconds["remainder"]!);
        Assert.Equal(300 + 200, (decimal)seconds["setUp"]!);
        var total = (decimal)seconds["total"]!;
        Assert.Equal(100 + 120 + 120 + 30 + 500 + (decimal)seconds["cut"]!, total);
        var cost = answer["lines"]![0]!["cost"]!;
        Assert.Equal(148m, (decimal)cost["material"]!);
        Assert.InRange((decimal)cost["machine"]! - total * 72 / 3600, -0.005m, 0.005m);
        Assert.InRange((decimal)cost["labor"]! - total * 42 / 3600, -0.005m, 0.005m);
        Assert.Equal(2.5m, (decimal)cost["handling"]!);
        Assert.Equal(148m + (decimal)cost["machine"]! + (decimal)cost["labor"]! + (decimal)cost["blade"]! + 2.5m, (decimal)cost["total"]!);
        Assert.Equal("""[{"stockId":"bar","quantity":1}]""", answer["stockUsed"]!.ToJsonString());
    }

    /// <summary>300 s for the section and 200 s for chips, unless the saw is set up for them, or from a section from which it takes 120 s.</summary>
    [Theory]
    [InlineData("Rd 50", "medium-carbon steel", 0)]
    [InlineData("ipe200", "medium-carbon steel", 120)]
    [InlineData("IPE 240", "medium-carbon steel", 300)]
    [InlineData("Round 50", "stainless steel", 200)]
    public async Task Set_up_starts_from_what_the_saw_is_set_up_for(string section, string group, int seconds)
    {
        var request = TenPieces();
        var saw = request["shop"]!["saws"]![0]!;
        (saw["initialSection"], saw["initialGradeGroup"]) = (section, group);
        saw["setUpChanges"] = JsonNode.Parse("""[{"kind": "section", "from": "IPE 200", "to": "RD50", "seconds": 120}]""");

        Assert.Equal(seconds, (decimal)(await Answer(request))["totals"]!["seconds"]!["setUp"]!);
    }

    /// <summary>An estimate takes the saws to be free and attended all the time, whoever attends them.</summary>
    [Fact]
    public async Task Calendars_operators_and_cranes_change_nothing()
    {
        var (plain, request) = (await Answer(TenPieces()), TenPieces());
        var shop = request["shop"]!;
        shop["operators"] = JsonNode.Parse("""[{"operatorId": "ann", "calendarId": "c"}]""");
        shop["cranes"] = JsonNode.Parse("""[{"craneId": "north"}]""");
        shop["calendars"]![0]!["overtime"] = JsonNode.Parse("""[{"days": ["MO"], "start": "06:00", "end": "14:00", "costPerHour": 99}]""");
        shop["saws"]![0]!["unattended"] = JsonNode.Parse("""{"bars": 0, "cuts": 0}""");
        shop["saws"]![0]!["maintenance"] = JsonNode.Parse("""[{"firstDay": "1990-01-01", "start": "00:00", "minutes": 1440, "recurrence": ["RRULE:FREQ=DAILY"]}]""");
        var answer = await Answer(request);

        Assert.True(JsonNode.DeepEquals(plain["totals"], answer["totals"]));
        Assert.True(JsonNode.DeepEquals(plain["lines"], answer["lines"]));
    }

    [Fact]
    public async Task Lines_add_up_to_the_order()
    {
        var answer = await Answer(Example());

        var lines = answer["lines"]!.AsArray();
        Assert.Equal(2, lines.Count);
        Assert.Equal((decimal)answer["totals"]!["cost"]!, lines.Sum(line => (decimal)line!["cost"]!["total"]!));
        Assert.Equal((decimal)answer["totals"]!["seconds"]!["total"]!, lines.Sum(line => (decimal)line!["seconds"]!), 1);
        Assert.Equal((int)answer["totals"]!["piecesPlanned"]!, lines.Sum(line => (int)line!["planned"]!));
        Assert.Equal("B7", (string?)lines[1]!["attributes"]!["mark"]);
    }

    [Fact]
    public async Task Price_break_is_the_line_on_its_own_at_that_quantity()
    {
        var whole = await Answer(Example());
        foreach (var quantity in new[] { 1, 10, 50 })
        {
            var request = Example();
            request["order"]!["lines"]!.AsArray().RemoveAt(1);
            request["order"]!["lines"]![0]!["quantity"] = quantity;
            request.Remove("priceBreaks");
            var alone = (await Answer(request))["lines"]![0]!;
            var stated = whole["lines"]![0]!["priceBreaks"]!.AsArray().Single(one => (int)one!["quantity"]! == quantity)!;
            foreach (var member in new[] { "planned", "seconds", "cost", "costPerPiece" })
                Assert.Equal(alone[member]!.ToJsonString(), stated[member]!.ToJsonString());
        }
    }

    [Fact]
    public async Task Calendars_promises_and_lead_times_do_not_matter()
    {
        var request = Example();
        request["order"]!["due"] = "1990-01-01T00:00:00Z";
        request["order"]!["release"] = "2150-01-01T00:00:00Z";
        request["order"]!["costPerHourLate"] = 100;
        request["shop"]!["calendars"]![0]!["shifts"] = new JsonArray();
        var (one, other) = (await Answer(Example()), await Answer(request));

        foreach (var member in new[] { "totals", "lines", "stockUsed", "unplaced" })
            Assert.Equal(one[member]!.ToJsonString(), other[member]!.ToJsonString());
    }

    [Fact]
    public async Task Order_of_lists_does_not_matter()
    {
        var turned = Example();
        foreach (var list in new[] { turned["order"]!["lines"]!.AsArray(), turned["stock"]!.AsArray(), turned["shop"]!["saws"]!.AsArray() })
        {
            var items = list.Select(item => item!.DeepClone()).Reverse().ToList();
            list.Clear();
            items.ForEach(list.Add);
        }

        Assert.Equal(
            Answers.WithoutTiming((await Answer(Example())).ToJsonString()),
            Answers.WithoutTiming((await Answer(turned)).ToJsonString()));
    }

    [Theory]
    [InlineData("length", "9000", "longer_than_every_bar")]
    [InlineData("section", "\"Round 900\"", "no_saw_holds_section")]
    [InlineData("certificate", "\"3.2\"", "no_stock_with_certificate")]
    public async Task What_cannot_be_cut_is_listed_with_the_reason(string member, string value, string reason)
    {
        var request = TenPieces();
        request["order"]!["lines"]![0]![member] = JsonNode.Parse(value);

        var answer = await Answer(request);

        Assert.Equal("none", (string?)answer["status"]);
        Assert.Equal([$"Q 1 10 {reason}"], answer["unplaced"]!.AsArray().Select(row => $"{row!["orderId"]} {row["lineId"]} {row["quantity"]} {row["reason"]}"));
        Assert.Null(answer["lines"]![0]!["costPerPiece"]);
    }

    [Theory]
    [InlineData("""{"priceBreaks": [1, 10, 10]}""", "#/priceBreaks/2", FaultCode.QuantitiesNotAscending)]
    [InlineData("""{"priceBreaks": [1, 0]}""", "#/priceBreaks/1", FaultCode.TooSmall)]
    [InlineData("""{"priceBreaks": [50000, 60000]}""", "#/order/lines", FaultCode.TooMuchWork)]
    [InlineData("""{"currency": "Eur"}""", "#/currency", FaultCode.InvalidCurrency)]
    [InlineData("""{"order": {"orderId": "Q", "lines": [{"lineId": "1", "section": "Rund 50", "grade": "C45", "length": 1, "quantity": 1}]}}""", "#/order/lines/0/section", FaultCode.UnknownSection)]
    public async Task Broken_rule_is_422(string members, string pointer, string code)
    {
        var request = TenPieces();
        foreach (var (name, value) in JsonNode.Parse(members)!.AsObject())
            request[name] = value!.DeepClone();

        var problem = await host.Post(Path, request.ToJsonString(), 422);

        Assert.Contains($"{pointer} {code}", problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"]} {fault["code"]}"));
        Assert.All(problem["errors"]!.AsArray(), fault => Assert.True(Pointers.Resolves((string)fault!["pointer"]!, request)));
    }

    /// <summary>The longest bar by the shortest strokes, each the longest time: far beyond all shifts, and no more than a reason.</summary>
    [Theory]
    [InlineData("mm")]
    [InlineData("in")]
    public async Task Times_beyond_all_calendars_are_a_reason(string unit)
    {
        var request = TenPieces();
        request["lengthUnit"] = unit;
        request["order"]!["lines"]![0]!["length"] = 900000;
        request["stock"]![0]!["length"] = 1000000;
        foreach (var (member, value) in new[] { ("barFeedStroke", 1), ("loadLimitKg", 1000000) })
            request["shop"]!["saws"]![0]![member] = value;
        foreach (var member in request["shop"]!["saws"]![0]!["times"]!.AsObject().Select(time => time.Key).ToList())
            request["shop"]!["saws"]![0]!["times"]![member] = 86400;

        var answer = await Answer(request);

        Assert.Equal("none", (string?)answer["status"]);
        Assert.NotEmpty(answer["unplaced"]!.AsArray());
    }

    [Fact]
    public async Task Time_limit_leaves_price_breaks_out()
    {
        var request = Example();
        request["timeLimitSeconds"] = 0.000001m;

        var answer = await Answer(request);

        Assert.Equal("timeLimit", (string?)answer["stoppedBy"]);
        Assert.Empty(answer["lines"]![0]!["priceBreaks"]!.AsArray());
    }

    private Task<JsonObject> Answer(JsonObject request) => host.Post(Path, request.ToJsonString(), 200);

    private static JsonObject TenPieces() => JsonNode.Parse("""
        {
          "order": {"orderId": "Q", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 500, "quantity": 10}]},
          "stock": [{"stockId": "bar", "kind": "purchasable", "section": "Round 50", "grade": "C45", "length": 6000, "cost": 148, "leadDays": 5}],
          "shop": {
            "saws": [
              {
                "sawId": "s", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "barFeedStroke": 600, "bladeIds": ["b"], "mountedBladeId": "b", "calendarId": "c",
                "machineCostPerHour": 72,
                "times": {
                  "loadSecondsPerBar": 100, "indexSecondsPerStroke": 5, "clampSecondsPerCut": 4, "approachSecondsPerCut": 3, "unloadSecondsPerPiece": 12,
                  "remainderSecondsPerBar": 30, "sectionSetUpSeconds": 300, "gradeGroupSetUpSeconds": 200
                }
              }
            ],
            "blades": [{"bladeId": "b", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6], "cost": 95}],
            "calendars": [{"calendarId": "c", "shifts": []}],
            "rates": {"laborCostPerHour": 42, "handlingCostPerBar": 2.5}
          }
        }
        """)!.AsObject();
}
