using System.Text.Json.Nodes;
using static SawEngine.Api.Tests.Features.CuttingData.CuttingDataBody;

namespace SawEngine.Api.Tests.Features.CuttingData;

[Collection(HostCollection.Name)]
public sealed class CuttingDataTests(ServiceHost host)
{
    /// <summary>
    /// Machinery's Handbook, 31st ed., p. 1245: bimetal, with coolant, 4 in width of cut, in ft/min; 0.88 of it at 8 in, 1.10 at 1.25 in.
    /// </summary>
    [Theory]
    [InlineData("1045", "Round 4 in", 220)]
    [InlineData("1018", "Round 4 in", 300)]
    [InlineData("4140 annealed", "Square 4 in", 250)]
    [InlineData("304", "Round 4 in", 120)]
    [InlineData("Ti-6Al-4V", "Round 4 in", 70)]
    [InlineData("1045", "Round 8 in", 193.6)]
    [InlineData("1045", "Round 1.25 in", 242)]
    public async Task Blade_speed_is_the_handbooks(string grade, string section, double feetPerMinute)
    {
        var request = Of(section, grade, """, "sawIds": ["swivel"]""");
        InInches(request);

        var result = Only(await host.Post(Url, request.ToJsonString(), 200));

        Assert.InRange((double)result["bladeSpeedFtPerMin"]!, feetPerMinute * 0.99, feetPerMinute * 1.01);
        Assert.Equal((double)result["bladeSpeedMPerMin"]! / 0.3048, (double)result["bladeSpeedFtPerMin"]!, 0.051);
    }

    /// <summary>Area-rate method, by definition: a round of 100 mm at 45 cm2/min takes 1.7453 min, and 6.5 m2 of life are 827 such cuts.</summary>
    [Fact]
    public async Task Time_and_blade_life_follow_from_area_and_rate()
    {
        // The grade's rate is that at 102 mm; the listed factor of the width brings it to 45 cm2/min.
        var request = Of("Round 100", "mine", """, "bladeId": "3/4", "sawIds": ["swivel"], "quantity": 828""");
        request["grades"] = JsonNode.Parse($$"""
            [{"gradeId": "mine", "densityKgPerM3": 7850, "likeGrade": "1045", "bladeSpeedMPerMin": 80, "cuttingRateCm2PerMin": {{decimal.Round(45m / 1.0023m, 9)}}}]
            """);

        var result = Only(await host.Post(Url, request.ToJsonString(), 200));

        Assert.Equal(1.0023m, (decimal)Assert.Single(result["factors"]!.AsArray())!["value"]!);
        Assert.Equal("gradeRate", (string?)result["limitedBy"]);
        Assert.InRange((decimal)result["secondsPerCut"]!, 60m * 1.7453m * 0.999m, 60m * 1.7453m * 1.001m + 0.1m);
        Assert.Equal(7853.982m, (decimal)result["areaMm2"]!);
        Assert.InRange((decimal)result["bladeLifeShare"]!, 7853.98m / 6.5e6m, 7853.99m / 6.5e6m);
        Assert.Equal(827, (int)result["cutsPerBlade"]!);
        Assert.Equal(2, (int)result["bladesNeeded"]!);
        Assert.Equal("caller", (string?)result["bladeLifeM2"]!["confidence"]);
    }

    /// <summary>
    /// By hand: eight squares of 20 mm, four wide, are 80 mm of cut, so 1.10 - 0.10 x (80/25.4 - 1.25)/2.75 = 1.0309 of the speed at 102 mm (Machinery's Handbook,
    /// 31st ed., p. 1245); 45 cm2/min x 1.0309 x 0.8 = 37.11 cm2/min, and 32 cm2 take 51.73 s.
    /// </summary>
    [Fact]
    public async Task Bundle_is_cut_by_its_area_and_width()
    {
        var request = Of("Square 20", "mine", """, "bladeId": "3/4", "sawIds": ["swivel"], "bundle": {"wide": 4, "high": 2}""");
        request["grades"] = JsonNode.Parse("""[{"gradeId": "mine", "densityKgPerM3": 7850, "likeGrade": "1045", "bladeSpeedMPerMin": 80, "cuttingRateCm2PerMin": 45}]""");

        var answer = await host.Post(Url, request.ToJsonString(), 200);
        var result = Only(answer);

        Assert.Equal("""{"wide":4,"high":2}""", result["bundle"]!.ToJsonString());
        Assert.Equal(3200m, (decimal)result["areaMm2"]!);
        Assert.Equal(51.8m, (decimal)result["secondsPerCut"]!);
        Assert.Equal(["width_of_cut 1.0309", "bundle 0.8"], result["factors"]!.AsArray().Select(factor => $"{factor!["name"]} {factor["value"]}"));
        Assert.Contains("cut_bundle", answer["cautions"]!.AsArray().Select(caution => (string?)caution!["code"]));
    }

    [Theory]
    [InlineData("Square 20", "swivel", 5, 1, "bundle_exceeds_saw")]
    [InlineData("Square 20", "square", 2, 1, "bundle_exceeds_saw")]
    [InlineData("Square 120", "swivel", 4, 1, "bundle_exceeds_capacity")]
    [InlineData("Round 50", "swivel", 2, 2, "section_not_bundled")]
    [InlineData("L 80x80x8", "swivel", 2, 1, "section_not_bundled")]
    public async Task Bundle_that_a_saw_does_not_take_says_why(string section, string saw, int wide, int high, string code)
    {
        var answer = await host.Post(Url, Of(section, "1045", $$""", "sawIds": ["{{saw}}"], "bundle": {"wide": {{wide}}, "high": {{high}} }""").ToJsonString(), 200);

        Assert.Equal("none", (string?)answer["status"]);
        Assert.Equal(code, (string?)Assert.Single(answer["notPossible"]!.AsArray())!["reason"]);
    }

    /// <summary>
    /// Definition of teeth per inch: 100 mm square, 3/4 teeth per inch: 11.811, 13.78 and 15.748 teeth. Power: plain carbon steel at 180 to 200 HB takes
    /// 2.24 kW per cm3/s (Machinery's Handbook, 31st ed., p. 1147, table 1b, there printed to two digits), twice for thin chips, 1.2 for wear (from memory), over the drive's 0.75.
    /// </summary>
    [Fact]
    public async Task Teeth_and_power_follow_from_their_definitions()
    {
        var result = Only(await host.Post(Url, Of("Square 100", "1045", """, "bladeId": "3/4", "sawIds": ["swivel"]""").ToJsonString(), 200));

        Assert.Equal((11.8m, 13.8m, 15.7m), (Teeth("min"), Teeth("mean"), Teeth("max")));
        var cm3PerSecond = (double)result["cuttingRateCm2PerMin"]! * 0.16 / 60;
        var expected = 2.24 * cm3PerSecond * 2 * 1.2 / 0.75;
        Assert.InRange((double)result["powerKw"]!, expected * 0.97, expected * 1.03);

        decimal Teeth(string name) => (decimal)result["teethInWork"]![name]!;
    }

    /// <summary>Plane geometry: a miter in one plane of 45 degrees has 1/cos 45 of the area. In a solid the rate holds the feed back, so it takes longer by as much or more.</summary>
    [Theory]
    [InlineData("Square 100", "3/4")]
    [InlineData("IPE 200", "5/8")]
    public async Task Miter_takes_the_area_by_its_cosine(string section, string blade)
    {
        var square = Only(await host.Post(Url, Of(section, "S355J2", $$""", "sawIds": ["swivel"], "bladeId": "{{blade}}" """).ToJsonString(), 200));
        var miter = Only(await host.Post(Url, Of(section, "S355J2", $$""", "sawIds": ["swivel"], "bladeId": "{{blade}}", "face": {"widthAngle": -45}""").ToJsonString(), 200));

        Assert.Equal(Math.Sqrt(2), (double)miter["areaMm2"]! / (double)square["areaMm2"]!, 0.000001);
        if (section == "Square 100")
            Assert.True((double)miter["secondsPerCut"]! >= Math.Sqrt(2) * (double)square["secondsPerCut"]!);
    }

    [Fact]
    public async Task Miter_beyond_one_side_of_the_swivel_lies_turned_by_half()
    {
        var result = Only(await host.Post(Url, Of("IPE 200", "S355J2", """, "sawIds": ["swivel"], "face": {"widthAngle": -50}""").ToJsonString(), 200));

        Assert.Equal(2, (int)result["quarterTurns"]!);
    }

    [Fact]
    public async Task Miter_in_the_plane_of_the_height_lies_turned_in_the_vise()
    {
        var result = Only(await host.Post(Url, Of("Flat 80x12", "S355J2", """, "sawIds": ["swivel"], "face": {"heightAngle": 30}""").ToJsonString(), 200));

        Assert.Equal(1, (int)result["quarterTurns"]! % 2);
    }

    public static TheoryData<string, string, string, string, string> Reasons => new()
    {
        { "Round 300", "1045", "", "square", "section_exceeds_capacity" },
        { "Round 300", "1045", """, "face": {"widthAngle": 45}""", "swivel", "section_exceeds_capacity" },
        { "Round 50", "1045", """, "face": {"widthAngle": 0.001}""", "square", "miter_beyond_saw" },
        { "IPE 200", "S355J2", """, "face": {"heightAngle": 30}""", "square", "miter_beyond_saw" },
        { "IPE 200", "S355J2", """, "face": {"widthAngle": 10, "heightAngle": 10}""", "swivel", "compound_miter_not_possible" },
        { "Round 50", "1045", """, "bladeId": "3/4" """, "square", "blade_not_on_saw" },
        { "Flat 3x1", "1045", """, "bladeId": "2/3" """, "swivel", "too_few_teeth" },
    };

    [Theory]
    [MemberData(nameof(Reasons))]
    public async Task Saw_that_cannot_make_a_cut_is_listed_with_the_reason(string section, string grade, string more, string saw, string reason)
    {
        var answer = await host.Post(Url, Of(section, grade, more).ToJsonString(), 200);

        var row = Assert.Single(answer["notPossible"]!.AsArray(), row => (string?)row!["sawId"] == saw)!;
        Assert.Equal(reason, (string?)row["reason"]);
        Assert.False(string.IsNullOrEmpty((string?)row["detail"]));
        Assert.DoesNotContain(answer["results"]!.AsArray(), result => (string?)result!["sawId"] == saw);
        Assert.Equal(2, answer["notPossible"]!.AsArray().Count + answer["results"]!.AsArray().Count);
    }

    [Fact]
    public async Task Cut_that_wears_out_more_than_a_blade_is_not_possible()
    {
        var request = Of("Round 100", "1045", """, "bladeId": "3/4", "sawIds": ["swivel"]""");
        request["shop"]!["blades"]![1]!["lifeAreaM2"] = 0.0078m;
        var answer = await host.Post(Url, request.ToJsonString(), 200);

        Assert.Equal("cut_exceeds_blade_life", (string?)Assert.Single(answer["notPossible"]!.AsArray())!["reason"]);
    }

    [Fact]
    public async Task Motor_too_weak_for_a_work_hardening_grade_is_a_reason()
    {
        var request = Of("Round 100", "304", """, "sawIds": ["swivel"]""");
        request["shop"]!["saws"]![0]!["motorPowerKw"] = 0.05m;
        request["shop"]!["saws"]![0]!["baseBladeSpeedMPerMin"] = 100;
        var answer = await host.Post(Url, request.ToJsonString(), 200);

        Assert.Equal("not_enough_power", (string?)Assert.Single(answer["notPossible"]!.AsArray())!["reason"]);
    }

    [Theory]
    [InlineData(50, 50, "complete")]
    [InlineData(50, 500, "partial")]
    [InlineData(500, 600, "none")]
    public async Task Status_says_how_many_cuts_a_saw_can_make(int first, int second, string status)
    {
        var request = OfCuts($$"""{"cutId": "a", "section": "Round {{first}}", "grade": "1045"}, {"cutId": "b", "section": "Round {{second}}", "grade": "1045"}""");

        Assert.Equal(status, (string?)(await host.Post(Url, request.ToJsonString(), 200))["status"]);
    }

    [Fact]
    public async Task Saws_are_ranked_by_time_and_equal_ones_by_id()
    {
        var request = Of("Round 100", "1045");
        var saws = request["shop"]!["saws"]!.AsArray();
        var slow = saws[1]!.DeepClone();
        slow["sawId"] = "slow";
        slow["rateFactor"] = 0.5m;
        var twin = saws[1]!.DeepClone();
        twin["sawId"] = "a twin";
        saws.Add(slow);
        saws.Add(twin);

        var results = (await host.Post(Url, request.ToJsonString(), 200))["results"]!.AsArray();

        Assert.Equal([1, 2, 3, 4], results.Select(result => (int)result!["rank"]!));
        var keys = results.Select(result => ((decimal)result!["secondsPerCut"]!, (string)result["sawId"]!)).ToList();
        Assert.Equal(keys.OrderBy(key => key.Item1).ThenBy(key => key.Item2, StringComparer.Ordinal), keys);
        Assert.Equal("slow", keys[^1].Item2);
        Assert.Contains(results[^1]!["factors"]!.AsArray(), factor => (string?)factor!["name"] == "rate_factor" && (decimal)factor["value"]! == 0.5m);
    }

    [Fact]
    public async Task Every_other_blade_of_the_saw_is_rejected_with_a_reason()
    {
        var answer = await host.Post(Url, Of("Round 100", "1045", """, "sawIds": ["swivel"]""").ToJsonString(), 200);

        var result = Only(answer);
        Assert.Equal(["2/3", "3/4", "5/8"], result["rejectedBlades"]!.AsArray().Select(blade => (string)blade!["bladeId"]!).Append((string)result["bladeId"]!).Order(StringComparer.Ordinal));
        Assert.All(result["rejectedBlades"]!.AsArray(), blade => Assert.False(string.IsNullOrEmpty((string?)blade!["reason"])));
    }

    [Fact]
    public async Task Grades_cautions_and_defaults_stand_beside_the_results_with_their_sources()
    {
        var answer = await host.Post(Url, Of("Round 50", "Ti-6Al-4V").ToJsonString(), 200);

        var grade = Assert.Single(answer["grades"]!.AsArray())!;
        Assert.Equal("Ti-6Al-4V", (string?)grade["designation"]);
        Assert.Equal(21.3m, (decimal)grade["bladeSpeedMPerMin"]!["value"]!);
        Assert.Equal("secondary", (string?)grade["bladeSpeedMPerMin"]!["confidence"]);
        var cautions = answer["cautions"]!.AsArray().ToDictionary(caution => (string)caution!["cautionId"]!, caution => (string?)caution!["code"]);
        Assert.All(answer["results"]!.AsArray(), result => Assert.Contains(
            "combustible_metal_chips", result!["cautionIds"]!.AsArray().Select(id => cautions[(string)id!])));
        Assert.Contains(answer["defaults"]!.AsArray(), value => (string?)value!["sawId"] == "square" && (string?)value["name"] == "bladeIds");
    }

    [Fact]
    public async Task Ambiguous_grade_is_warned_of_and_the_hardest_is_taken()
    {
        var answer = await host.Post(Url, Of("Round 50", "4140").ToJsonString(), 200);

        var warning = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal(("ambiguous_grade", "#/cuts/0/grade"), ((string?)warning["code"], (string?)warning["pointer"]));
        Assert.Equal("4140 pre-hard", (string?)answer["results"]![0]!["grade"]);
    }

    [Theory]
    [InlineData("HEB 300", "", "Section HEB 300 is 300 mm wide and 300 mm high; saw square takes 280 mm wide and 260 mm high.")]
    [InlineData("Round 300", "", "Section Round 300 is 300 mm in diameter; saw square takes rounds up to 260 mm.")]
    [InlineData("IPE 200", """, "face": {"widthAngle": 30}""", "The cut is inclined by 30 deg in the plane of the width; saw square cuts square only.")]
    public async Task Refusal_says_what_is_too_large_and_what_the_saw_takes(string section, string more, string detail)
    {
        var answer = await host.Post(Url, Of(section, "S235JR", """, "sawIds": ["square"]""" + more).ToJsonString(), 200);

        Assert.Equal(detail, (string?)Assert.Single(answer["notPossible"]!.AsArray())!["detail"]);
    }

    [Fact]
    public async Task Refusal_is_in_the_unit_of_the_request()
    {
        var body = Of("W12X26", "A992", """, "sawIds": ["square"]""");
        body["lengthUnit"] = "in";
        body["shop"]!["saws"]![1]!["capacity"] = JsonNode.Parse("""{"round":10,"width":11,"height":6}""");
        body["shop"]!["saws"]!.AsArray().RemoveAt(0);
        body["shop"]!["blades"]!.AsArray().Clear();
        body["shop"]!["saws"]![0]!["tail"] = 3;

        var answer = await host.Post(Url, body.ToJsonString(), 200);

        Assert.Equal(
            "Section W12X26 is 6.49 in wide and 12.2 in high; saw square takes 11 in wide and 6 in high.", (string?)Assert.Single(answer["notPossible"]!.AsArray())!["detail"]);
    }

    [Fact]
    public async Task Warning_of_a_cut_names_cut_and_saw()
    {
        var answer = await host.Post(Url, Of("IPE 200", "S355J2", """, "sawIds": ["swivel"]""").ToJsonString(), 200);

        var warning = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal(("few_teeth_in_shortest_run", "a", "swivel"), ((string?)warning["code"], (string?)warning["cutId"], (string?)warning["sawId"]));
    }

    [Fact]
    public async Task Attributes_come_back_and_order_of_lists_makes_no_difference()
    {
        var request = Full();
        var answer = await host.Post(Url, request.ToJsonString(), 200);
        foreach (var list in new[] { request["cuts"]!, request["shop"]!["saws"]!, request["shop"]!["blades"]!, request["cuts"]![0]!["sawIds"]! })
            Reverse(list.AsArray());
        var reversed = await host.Post(Url, request.ToJsonString(), 200);

        Assert.Equal(Answers.WithoutTiming(answer.ToJsonString()), Answers.WithoutTiming(reversed.ToJsonString()));
        Assert.All(answer["results"]!.AsArray().Where(result => (string?)result!["cutId"] == "b"), result => Assert.Equal("B7", (string?)result!["attributes"]!["mark"]));
    }

    [Fact]
    public async Task Inches_give_the_same_cut_with_customary_twins()
    {
        var metric = Only(await host.Post(Url, Of("Round 100", "1045", """, "sawIds": ["swivel"]""").ToJsonString(), 200));
        var request = Of("Round 100", "1045", """, "sawIds": ["swivel"]""");
        InInches(request);
        var inches = Only(await host.Post(Url, request.ToJsonString(), 200));

        foreach (var name in new[] { "bladeId", "bladeSpeedMPerMin", "cuttingRateCm2PerMin", "bladeFeedMmPerMin", "areaMm2", "secondsPerCut", "limitedBy" })
            Assert.Equal(metric[name]!.ToJsonString(), inches[name]!.ToJsonString());
        Assert.Equal((double)inches["areaMm2"]! / 645.16, (double)inches["areaIn2"]!, 0.0006);
        Assert.Equal((double)inches["cuttingRateCm2PerMin"]! / 6.4516, (double)inches["cuttingRateIn2PerMin"]!, 0.0051);
        Assert.Equal((double)inches["bladeFeedMmPerMin"]! / 25.4, (double)inches["bladeFeedInPerMin"]!, 0.0051);
        Assert.Equal((double)inches["powerKw"]! / 0.745700, (double)inches["powerHp"]!, 0.0051);
        Assert.Null(metric["areaIn2"]);
    }

    /// <summary>The lengths of the shop in inches, those that matter in round ones.</summary>
    private static void InInches(JsonObject request)
    {
        request["lengthUnit"] = "in";
        foreach (var saw in request["shop"]!["saws"]!.AsArray())
        {
            saw!["capacity"] = JsonNode.Parse("""{"round": 16, "width": 18, "height": 16}""");
            saw["tail"] = 4;
        }
        foreach (var blade in request["shop"]!["blades"]!.AsArray())
            (blade!["width"], blade["thickness"], blade["kerf"]) = (1.25m, 0.042m, 0.063m);
    }

    private static void Reverse(JsonArray list)
    {
        var items = list.Reverse().ToList();
        list.Clear();
        foreach (var item in items)
            list.Add(item);
    }

    private static JsonNode Only(JsonObject answer)
    {
        Assert.True(answer["results"]!.AsArray().Count == 1, answer.ToJsonString());
        return answer["results"]![0]!;
    }
}
