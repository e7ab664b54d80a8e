using System.Text.Json.Nodes;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Plans;

public sealed class PlanRequestRulesTests
{
    private sealed record RuleCase(string Name, Action<JsonNode> Change, string Pointer, string Code);

    private static readonly RuleCase[] Cases =
    [
        // Bounds
        new("A piece needs a length", r => Line(r)["length"] = 0, "#/orders/0/lines/0/length", "must_be_positive"),
        new("A negative length", r => Stock(r)["length"] = -1, "#/stock/0/length", "must_be_positive"),
        new("A length finer than the grid of millimeters", r => Stock(r)["length"] = 6000.0000001m, "#/stock/0/length", "too_fine"),
        new("A length over the limit", r => Stock(r)["length"] = 1_000_000.1m, "#/stock/0/length", "too_large"),
        new("No pieces", r => Line(r)["quantity"] = 0, "#/orders/0/lines/0/quantity", "too_small"),
        new("Too many pieces of a kind of stock", r => Stock(r)["quantity"] = 100_001, "#/stock/0/quantity", "too_large"),
        new("An angle over 60 degrees", r => Line(r)["secondEnd"]!["widthAngle"] = 60.001m, "#/orders/0/lines/0/secondEnd/widthAngle", "too_large"),
        new("An angle under -60 degrees", r => Line(r)["secondEnd"]!["widthAngle"] = -61, "#/orders/0/lines/0/secondEnd/widthAngle", "too_small"),
        new("An angle finer than a thousandth of a degree", r => Line(r)["secondEnd"]!["widthAngle"] = 30.0005m, "#/orders/0/lines/0/secondEnd/widthAngle", "too_fine"),
        new("A cost finer than a millionth", r => Stock(r)["cost"] = 148.0000001m, "#/stock/0/cost", "too_fine"),
        new("A negative cost", r => Stock(r)["cost"] = -1, "#/stock/0/cost", "too_small"),
        new("A negative tail", r => Saw(r)["tail"] = -1, "#/shop/saws/0/tail", "too_small"),
        new("More than all of a blade's life", r => Blade(r)["remainingLife"] = 1.1m, "#/shop/blades/0/remainingLife", "too_large"),
        new("Less than none of a blade's life", r => Blade(r)["remainingLife"] = -0.1m, "#/shop/blades/0/remainingLife", "too_small"),
        new("Remnants worth more than the bar", r => r["shop"]!["remnants"]!["valueFraction"] = 1.01m, "#/shop/remnants/valueFraction", "too_large"),
        new("Classes of remnants that do not ascend", r => r["shop"]!["remnants"]!["classes"] = JsonNode.Parse("""[{"from": 2000, "valueFraction": 0.9}, {"from": 1000, "valueFraction": 1}]"""), "#/shop/remnants/classes/1/from", "classes_not_ascending"),
        new("A motor without power", r => Saw(r)["motorPowerKw"] = 0, "#/shop/saws/0/motorPowerKw", "too_small"),
        new("A time of more than a day", r => Saw(r)["times"]!["loadSecondsPerBar"] = 86_401, "#/shop/saws/0/times/loadSecondsPerBar", "too_large"),
        new("Costly lateness", r => r["orders"]![0]!["costPerHourLate"] = 10_001, "#/orders/0/costPerHourLate", "too_large"),
        new("No orders", r => r["orders"] = new JsonArray(), "#/orders", "empty"),
        new("An order without lines", r => r["orders"]![0]!["lines"] = new JsonArray(), "#/orders/0/lines", "empty"),
        new("An order without an id", r => r["orders"]![0]!["orderId"] = "", "#/orders/0/orderId", "empty"),
        new("A saw with an empty list of blades", r => { Saw(r)["bladeIds"] = new JsonArray(); Saw(r).AsObject().Remove("mountedBladeId"); }, "#/shop/saws/0/bladeIds", "empty"),
        new("More attributes than allowed", r => Line(r, 1)["attributes"] = Attributes(Limits.Attributes + 1), "#/orders/0/lines/1/attributes", "too_many"),

        // Orders
        new("Two orders of one id", r => r["orders"]![1]!["orderId"] = "SO-2", "#/orders/1/orderId", "duplicate_id"),
        new("Two lines of one id in an order", r => Line(r, 1)["lineId"] = "20", "#/orders/0/lines/1/lineId", "duplicate_id"),
        new("A section that nobody knows", r => Line(r)["section"] = "IPE 201", "#/orders/0/lines/0/section", "unknown_section"),
        new("A grade that nobody knows", r => Line(r)["grade"] = "S356J2", "#/orders/0/lines/0/grade", "unknown_grade"),
        new("A substitute that nobody knows", r => Line(r)["substitutes"] = new JsonArray("S355J0", "S356J2"), "#/orders/0/lines/0/substitutes/1", "unknown_grade"),
        new("More substitutes than allowed", r => Line(r)["substitutes"] = new JsonArray([.. Enumerable.Repeat("S355J0", Limits.Substitutes + 1)]), "#/orders/0/lines/0/substitutes", "too_many"),
        new("A named heat without a name", r => Line(r, 1).AsObject().Remove("heat"), "#/orders/0/lines/1", "heat_required"),
        new("A heat that is not asked for", r => Line(r, 1)["heatRule"] = "single", "#/orders/0/lines/1/heat", "heat_not_used"),
        new("A line without a length", r => Line(r).AsObject().Remove("length"), "#/orders/0/lines/0", "length_required"),
        new("A length given twice", r => Line(r)["lengthText"] = "7'-8 1/2\"", "#/orders/0/lines/0/lengthText", "length_given_twice"),
        new("A text that is no length", r => { Line(r).AsObject().Remove("length"); Line(r)["lengthText"] = "7.7 ft"; }, "#/orders/0/lines/0/lengthText", "invalid_length_text"),
        new("A text of no length", r => { Line(r).AsObject().Remove("length"); Line(r)["lengthText"] = "0'-0\""; }, "#/orders/0/lines/0/lengthText", "must_be_positive"),
        new("A text of too great a length", r => { Line(r).AsObject().Remove("length"); Line(r)["lengthText"] = "4000'"; }, "#/orders/0/lines/0/lengthText", "too_large"),
        new("Faces that cross, by text", r => { Line(r).AsObject().Remove("length"); Line(r)["lengthText"] = "2 1/4\""; Line(r)["firstEnd"]!["widthAngle"] = -30; Line(r)["secondEnd"]!["widthAngle"] = 30; Line(r)["lengthAt"] = "centerline"; }, "#/orders/0/lines/0/lengthText", "miter_faces_cross"),
        new("Faces that cross", r => { Line(r)["length"] = 57; Line(r)["firstEnd"]!["widthAngle"] = -30; Line(r)["secondEnd"]!["widthAngle"] = 30; Line(r)["lengthAt"] = "centerline"; }, "#/orders/0/lines/0/length", "miter_faces_cross"),
        new("A due date beyond ten years", r => r["orders"]![0]!["due"] = "2006-12-01T00:00:00Z", "#/orders/0/due", "date_out_of_range"),
        new("A release beyond ten years", r => r["orders"]![0]!["release"] = "2037-12-01T00:00:00Z", "#/orders/0/release", "date_out_of_range"),

        new("A piece that may be nothing", r => Line(r)["tolerance"] = JsonNode.Parse("""{"minus": 2350}"""), "#/orders/0/lines/0/tolerance/minus", "too_large"),
        new("A tolerance whose middle is too fine", r => Line(r)["tolerance"] = JsonNode.Parse("""{"plus": 0.000001}"""), "#/orders/0/lines/0/tolerance", "too_fine"),
        new("A priority behind the last", r => r["orders"]![0]!["priority"] = 10, "#/orders/0/priority", "too_large"),
        new("A line that may be left out", r => Line(r)["under"] = Line(r)["quantity"]!.DeepClone(), "#/orders/0/lines/0/under", "too_large"),

        // Own sections and grades
        new("Two sections of one id", r => r["sections"]!.AsArray().Add(r["sections"]![0]!.DeepClone()), "#/sections/1/sectionId", "duplicate_id"),
        new("A dimension that is missing", r => Section(r).AsObject().Remove("width"), "#/sections/0", "missing"),
        new("A section of no name but blanks", r => { Section(r)["sectionId"] = " "; r["sections"]!.AsArray().Add(JsonNode.Parse("""{"sectionId": "my flat", "shape": "round", "diameter": 50}""")); }, "#/sections/0", "missing"),
        new("A dimension of another shape", r => Section(r)["diameter"] = 10, "#/sections/0/diameter", "not_used_by_shape"),
        new("A dimension of nothing", r => Section(r)["width"] = 0, "#/sections/0/width", "must_be_positive"),
        new("A negative dimension", r => Section(r)["width"] = -80, "#/sections/0/width", "too_small"),
        new("A flange steeper than any", r => r["sections"]![0] = JsonNode.Parse("""{"sectionId": "my flat", "shape": "channel", "height": 100, "width": 50, "web": 6, "flange": 8, "flangeSlope": 1.5}"""), "#/sections/0/flangeSlope", "too_large"),
        new("An outline of two corners", r => r["sections"]![0] = JsonNode.Parse("""{"sectionId": "my flat", "shape": "custom", "outline": [{"x": 0, "y": 0}, {"x": 1, "y": 1}]}"""), "#/sections/0/outline", "empty"),
        new("An outline that crosses itself", r => r["sections"]![0] = JsonNode.Parse("""{"sectionId": "my flat", "shape": "custom", "outline": [{"x": 0, "y": 0}, {"x": 50, "y": 50}, {"x": 50, "y": 0}, {"x": 0, "y": 50}]}"""), "#/sections/0/outline", "crosses_itself"),
        new("A dimension finer than the grid", r => Section(r)["width"] = 80.0000001m, "#/sections/0/width", "too_fine"),
        new("An outline finer than the grid", r => r["sections"]![0] = Custom("0.0000001"), "#/sections/0/outline/1/x", "too_fine"),
        new("Two grades of one id", r => r["grades"]!.AsArray().Add(r["grades"]![0]!.DeepClone()), "#/grades/1/gradeId", "duplicate_id"),
        new("A grade like nothing that leaves a value out", r => r["grades"]![0] = JsonNode.Parse("""{"gradeId": "my steel", "densityKgPerM3": 7850, "hardnessHb": 140, "bladeSpeedMPerMin": 60, "cuttingRateCm2PerMin": 50, "unitPowerKwPerCm3PerMin": 0.03}"""), "#/grades/0", "value_required"),
        new("A grade like two things", r => Grade(r)["group"] = "tool steel", "#/grades/0", "like_grade_or_group"),
        new("A grade like an unknown one", r => Grade(r)["likeGrade"] = "S234JR", "#/grades/0/likeGrade", "unknown_grade"),
        new("A grade of an unknown group", r => { Grade(r).AsObject().Remove("likeGrade"); Grade(r)["group"] = "cheese"; }, "#/grades/0/group", "unknown_group"),

        // Stock
        new("A zone behind the end of the bar", r => { Stock(r)["quantity"] = 1; Stock(r)["zones"] = JsonNode.Parse("""[{"from": 0, "to": 999999, "kind": "defective"}]"""); }, "#/stock/0/zones/0/to", "too_large"),
        new("A nominal length below the guaranteed one", r => Stock(r)["nominalLength"] = 1, "#/stock/0/nominalLength", "too_small"),
        new("Two stock items of one id", r => Stock(r, 1)["stockId"] = "B", "#/stock/1/stockId", "duplicate_id"),
        new("Stock of an unknown section", r => Stock(r)["section"] = "Rund 50", "#/stock/0/section", "unknown_section"),
        new("Stock of an unknown grade", r => Stock(r)["grade"] = "C44", "#/stock/0/grade", "unknown_grade"),
        new("Stock without a length", r => Stock(r).AsObject().Remove("length"), "#/stock/0", "length_required"),
        new("Stock whose length is given twice", r => Stock(r)["lengthText"] = "20'", "#/stock/0/lengthText", "length_given_twice"),
        new("Stock whose length cannot be read", r => { Stock(r).AsObject().Remove("length"); Stock(r)["lengthText"] = "20"; }, "#/stock/0/lengthText", "invalid_length_text"),
        new("Bars without a quantity", r => Stock(r).AsObject().Remove("quantity"), "#/stock/0", "quantity_required"),
        new("Two remnants under one id", r => Stock(r, 1)["quantity"] = 2, "#/stock/1/quantity", "remnant_is_single"),
        new("No remnant under an id", r => Stock(r, 1)["quantity"] = 0, "#/stock/1/quantity", "remnant_is_single"),
        new("Lead days of stock on hand", r => Stock(r)["leadDays"] = 0, "#/stock/0/leadDays", "lead_days_not_used"),
        new("Costs on some stock only", r => Stock(r, 1).AsObject().Remove("cost"), "#/stock/1", "cost_on_all_or_none"),

        // Shop
        new("Two saws of one id", r => Saw(r, 1)["sawId"] = "saw-2", "#/shop/saws/1/sawId", "duplicate_id"),
        new("Two blades of one id", r => r["shop"]!["blades"]!.AsArray().Add(Blade(r).DeepClone()), "#/shop/blades/2/bladeId", "duplicate_id"),
        new("Two calendars of one id", r => r["shop"]!["calendars"]!.AsArray().Add(r["shop"]!["calendars"]![0]!.DeepClone()), "#/shop/calendars/1/calendarId", "duplicate_id"),
        new("A blade named twice by a saw", r => Saw(r)["bladeIds"]!.AsArray().Add("34x1.1-5/8"), "#/shop/saws/0/bladeIds/2", "duplicate_id"),
        new("A blade that is not listed", r => Saw(r)["bladeIds"]![1] = "34x1.1-4/5", "#/shop/saws/0/bladeIds/1", "unknown_blade"),
        new("A mounted blade that is not the saw's", r => { Saw(r)["bladeIds"] = new JsonArray("34x1.1-4/6"); }, "#/shop/saws/0/mountedBladeId", "mounted_blade_not_listed"),
        new("A mounted blade without a list", r => Saw(r, 1)["mountedBladeId"] = "34x1.1-4/6", "#/shop/saws/1/mountedBladeId", "mounted_blade_not_listed"),
        new("A calendar that is not listed", r => Saw(r, 1)["calendarId"] = "late", "#/shop/saws/1/calendarId", "unknown_calendar"),
        new("Blade speeds reversed", r => Saw(r)["bladeSpeedMPerMin"]!["min"] = 121, "#/shop/saws/0/bladeSpeedMPerMin", "min_above_max"),
        new("A bundle of no width", r => Saw(r)["bundle"]!["mostWide"] = 0, "#/shop/saws/0/bundle/mostWide", "too_small"),
        new("A bundle too high", r => Saw(r)["bundle"]!["mostHigh"] = 11, "#/shop/saws/0/bundle/mostHigh", "too_large"),
        new("A bundle without room", r => Saw(r)["bundle"]!["largestWidth"] = 0, "#/shop/saws/0/bundle/largestWidth", "must_be_positive"),
        new("Bars on one another without a hold-down", r => Saw(r)["bundle"]!["holdDown"] = false, "#/shop/saws/0/bundle/holdDown", "hold_down_required"),
        new("Piece lengths reversed", r => Saw(r)["shortestPiece"] = 9001, "#/shop/saws/0/longestPiece", "min_above_max"),
        new("A downtime backward", r => Saw(r)["downtimes"]![0]!["end"] = "2026-12-01T10:00:00+01:00", "#/shop/saws/0/downtimes/0/end", "downtime_ends_before_it_begins"),
        new("A kerf thinner than the blade", r => Blade(r)["kerf"] = 1, "#/shop/blades/0/kerf", "kerf_below_thickness"),
        new("A pitch of three numbers", r => Blade(r)["teethPerInch"] = new JsonArray(4, 5, 6), "#/shop/blades/0/teethPerInch", "too_many"),
        new("A pitch of no numbers", r => Blade(r)["teethPerInch"] = new JsonArray(), "#/shop/blades/0/teethPerInch", "empty"),
        new("A pitch backward", r => Blade(r)["teethPerInch"] = new JsonArray(8, 5), "#/shop/blades/0/teethPerInch", "teeth_not_ascending"),
        new("A pitch too coarse", r => Blade(r)["teethPerInch"] = new JsonArray(0.05m, 5), "#/shop/blades/0/teethPerInch/0", "too_small"),
        new("A pitch too fine", r => Blade(r)["teethPerInch"] = new JsonArray(5, 51), "#/shop/blades/0/teethPerInch/1", "too_large"),
        new("A shift over midnight", r => Shift(r, 1)["end"] = "06:00", "#/shop/calendars/0/shifts/1/end", "shift_ends_before_it_begins"),
        new("A shift of no time", r => Shift(r, 1)["end"] = "22:00", "#/shop/calendars/0/shifts/1/end", "shift_ends_before_it_begins"),
        new("A day named twice", r => Shift(r)["days"]!.AsArray().Add("MO"), "#/shop/calendars/0/shifts/0/days", "repeated_day"),
        new("A shift on no day", r => Shift(r)["days"] = new JsonArray(), "#/shop/calendars/0/shifts/0/days", "empty"),
        new("A break backward", r => Shift(r)["breaks"]![0]!["end"] = "11:00", "#/shop/calendars/0/shifts/0/breaks/0/end", "break_ends_before_it_begins"),
        new("A break before its shift", r => Shift(r)["breaks"]![1]!["start"] = "05:59", "#/shop/calendars/0/shifts/0/breaks/1", "break_outside_shift"),
        new("A break after its shift", r => Shift(r)["breaks"]![0]!["end"] = "14:01", "#/shop/calendars/0/shifts/0/breaks/0", "break_outside_shift"),
        new("Breaks that overlap", r => Shift(r)["breaks"]![1]!["end"] = "12:01", "#/shop/calendars/0/shifts/0/breaks/1", "breaks_overlap"),

        // The request
        new("A currency in small letters", r => r["currency"] = "eur", "#/currency", "invalid_currency"),
        new("A time zone that nobody knows", r => r["timeZone"] = "Europe/Wien", "#/timeZone", "unknown_time_zone"),
        new("An offset in place of a time zone", r => r["timeZone"] = "UTC+01", "#/timeZone", "unknown_time_zone"),
        new("A start long ago", r => { r["planStart"] = "1999-12-31T23:00:00Z"; r["orders"]![0]!.AsObject().Remove("due"); r["orders"]![0]!.AsObject().Remove("release"); }, "#/planStart", "date_out_of_range"),
        new("A start without an offset", r => r["planStart"] = "2026-11-30T06:00:00", "#/planStart", "invalid_date_time"),
        new("A due date that is none", r => r["orders"]![0]!["due"] = "tomorrow", "#/orders/0/due", "invalid_date_time"),
        new("More time than there is", r => r["timeLimitSeconds"] = 61, "#/timeLimitSeconds", "too_large"),
    ];

    public static TheoryData<string> CaseNames => [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(CaseNames))]
    public void Rule_fires_alone_at_its_place(string name)
    {
        var rule = Cases.Single(c => c.Name == name);
        Assert.Equal([rule.Pointer + " " + rule.Code], PlanReading.FaultsOf(PlanExample.With(rule.Change)));
    }

    [Fact]
    public void Good_request_has_no_fault() => Assert.Empty(PlanReading.FaultsOf(PlanExample.Copy()));

    [Fact]
    public void Least_request_has_no_fault() => Assert.Empty(PlanReading.FaultsOf(JsonNode.Parse("""
        {
          "planStart": "2026-11-30T06:00:00Z",
          "orders": [{"orderId": "1", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 100, "quantity": 1}]}],
          "stock": [],
          "shop": {"saws": [{"sawId": "1", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 0, "calendarId": "1"}], "calendars": [{"calendarId": "1", "shifts": []}]}
        }
        """)!));

    public static TheoryData<string, string> Answers => new()
    {
        { "an overdue order", """{"orders": [{"orderId": "SO-1", "due": "2026-11-29T00:00:00Z", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 100, "quantity": 1}]}]}""" },
        { "a piece shorter than the kerf", """{"orders": [{"orderId": "SO-1", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 0.5, "quantity": 1}]}]}""" },
        { "a piece longer than all stock", """{"orders": [{"orderId": "SO-1", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 60000, "quantity": 1}]}]}""" },
        { "a section larger than all saws", """{"orders": [{"orderId": "SO-1", "lines": [{"lineId": "1", "section": "Round 900", "grade": "C45", "length": 100, "quantity": 1}]}]}""" },
        { "a release after the due date", """{"orders": [{"orderId": "SO-1", "due": "2026-12-01T00:00:00Z", "release": "2026-12-02T00:00:00Z", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 100, "quantity": 1}]}]}""" },
        { "no stock", """{"stock": []}""" },
        { "stock of which nothing is there", """{"stock": [{"stockId": "A", "kind": "bar", "section": "Round 50", "grade": "C45", "length": 6000, "quantity": 0}]}""" },
    };

    [Theory]
    [MemberData(nameof(Answers))]
    public void What_cannot_be_done_is_no_fault(string what, string members)
    {
        var request = PlanExample.Copy();
        foreach (var (name, value) in JsonNode.Parse(members)!.AsObject())
            request[name] = value!.DeepClone();
        Assert.True(PlanReading.FaultsOf(request).Count == 0, what);
    }

    [Fact]
    public void Saw_without_a_shift_is_no_fault() =>
        Assert.Empty(PlanReading.FaultsOf(PlanExample.With(r => r["shop"]!["calendars"]![0]!["shifts"] = new JsonArray())));

    [Fact]
    public void All_faults_come_at_once()
    {
        var faults = PlanReading.FaultsOf(PlanExample.With(r =>
        {
            Line(r)["length"] = -1;
            Line(r, 1)["section"] = "IPE 2000";
            Stock(r)["grade"] = "nothing";
            Saw(r)["calendarId"] = "never";
            r["currency"] = "euros"[..3];
        }));
        Assert.Equal(
            ["#/currency invalid_currency", "#/orders/0/lines/0/length must_be_positive", "#/orders/0/lines/1/section unknown_section", "#/shop/saws/0/calendarId unknown_calendar", "#/stock/0/grade unknown_grade"],
            faults.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Unknown_names_come_with_the_nearest()
    {
        var details = PlanReading.DetailsOf(PlanExample.With(r =>
        {
            Line(r)["section"] = "IPE 201";
            Line(r, 1)["section"] = "my flats";
            Stock(r)["grade"] = "C46";
            Saw(r)["calendarId"] = "earli";
            r["timeZone"] = "Europe/Viena";
        }));
        Assert.Contains(details, d => d.Contains("`IPE 200`", StringComparison.Ordinal));
        Assert.Contains(details, d => d.Contains("`my flat`", StringComparison.Ordinal));
        Assert.Contains(details, d => d.Contains("`C45`", StringComparison.Ordinal));
        Assert.Contains(details, d => d.Contains("`early`", StringComparison.Ordinal));
        Assert.Contains(details, d => d.Contains("`Europe/Vienna`", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"sectionId": "my flat", "shape": "squareTube", "width": 40, "wall": 10, "innerRadius": 15}""")]
    [InlineData("""{"sectionId": "my flat", "shape": "squareTube", "width": 40, "wall": 3, "outerRadius": 25}""")]
    [InlineData("""{"sectionId": "my flat", "shape": "squareTube", "width": 40, "wall": 3, "innerRadius": 19}""")]
    [InlineData("""{"sectionId": "my flat", "shape": "roundTube", "diameter": 40}""")]
    public void Faults_of_a_section_point_to_what_is_in_the_request(string section)
    {
        var request = PlanExample.With(r => r["sections"]![0] = JsonNode.Parse(section));
        var faults = PlanReading.FaultsOf(request);
        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.True(Pointers.Resolves(fault.Split(' ')[0], request), fault));
    }

    [Fact]
    public void Own_section_with_faults_is_not_unknown_to_the_lines()
    {
        var faults = PlanReading.FaultsOf(PlanExample.With(r => Section(r)["shape"] = "iBeam"));
        Assert.All(faults, fault => Assert.StartsWith("#/sections/0", fault, StringComparison.Ordinal));
        Assert.NotEmpty(faults);
    }

    [Theory]
    [InlineData(58, false)] // 100 mm wide, 30 degrees at both ends: the short side is 57.735 mm shorter than the centerline, worked by hand: 100 tan 30
    [InlineData(57.7, true)]
    public void Faces_cross_where_the_short_side_ends(decimal centerline, bool cross)
    {
        var faults = PlanReading.FaultsOf(PlanExample.With(r =>
        {
            Line(r)["length"] = centerline;
            Line(r)["lengthAt"] = "centerline";
            Line(r)["firstEnd"] = new JsonObject { ["widthAngle"] = 30 };
            Line(r)["secondEnd"] = new JsonObject { ["widthAngle"] = -30 };
        }));
        Assert.Equal(cross, faults.Count == 1);
    }

    public static TheoryData<string, string, int> ListLimits => new()
    {
        { "orders", "#/orders", PlanLimits.Orders },
        { "stock", "#/stock", PlanLimits.StockItems },
        { "sections", "#/sections", PlanLimits.Sections },
        { "grades", "#/grades", PlanLimits.Grades },
        { "shop/saws", "#/shop/saws", PlanLimits.Saws },
        { "shop/blades", "#/shop/blades", PlanLimits.Blades },
        { "shop/calendars", "#/shop/calendars", PlanLimits.Calendars },
    };

    [Theory]
    [MemberData(nameof(ListLimits))]
    public void Lists_have_limits(string path, string pointer, int limit)
    {
        Assert.Equal(pointer + " too_many", Assert.Single(PlanReading.FaultsOf(WithItems(limit + 1))));
        Assert.Empty(PlanReading.FaultsOf(WithItems(limit)));

        JsonObject WithItems(int count) => PlanExample.With(request =>
        {
            var list = path.Split('/').Aggregate(request, (node, name) => node[name]!).AsArray();
            var idName = list[0]!.AsObject().First().Key;
            for (var i = list.Count; i < count; i++)
            {
                var item = list[^1]!.DeepClone();
                item[idName] = "item " + i.ToString(System.Globalization.CultureInfo.InvariantCulture);
                list.Add(item);
            }
        });
    }

    [Fact]
    public void Lines_of_all_orders_have_a_limit()
    {
        Assert.Equal(["#/orders too_many"], PlanReading.FaultsOf(WithLines(PlanLimits.Lines - 2)));
        Assert.Empty(PlanReading.FaultsOf(WithLines(PlanLimits.Lines - 3)));

        // beside three that stand there already
        static JsonObject WithLines(int more) => PlanExample.With(r =>
        {
            foreach (var half in new[] { more / 2, more - more / 2 })
                r["orders"]!.AsArray().Add(new JsonObject { ["orderId"] = $"half {r["orders"]!.AsArray().Count}", ["lines"] = new JsonArray([.. Enumerable.Range(0, half).Select(NewLine)]) });
        });

        static JsonNode NewLine(int i) =>
            JsonNode.Parse($$"""{"lineId": "line {{i}}", "section": "Round 50", "grade": "C45", "length": 100, "quantity": 1}""")!;
    }

    [Theory]
    [InlineData(99_972, 0)] // beside 28 pieces of the other lines
    [InlineData(99_973, 1)]
    public void Pieces_of_all_orders_have_a_limit(int quantity, int faults)
    {
        var found = PlanReading.FaultsOf(PlanExample.With(r => r["orders"]!.AsArray().Add(JsonNode.Parse(
            $$"""{"orderId": "much", "lines": [{"lineId": "1", "section": "Round 50", "grade": "C45", "length": 100, "quantity": {{quantity}}}]}"""))));
        Assert.Equal(Enumerable.Repeat("#/orders too_much_work", faults), found);
    }

    /// <summary>Every number is set to values that overflow, vanish or lie beside every grid: a refusal or a mapping, never an exception.</summary>
    [Fact]
    public void No_number_can_crash_rules_or_mapping()
    {
        foreach (var path in NumbersOf(PlanExample.Copy(), []))
        {
            foreach (var value in new[] { 0m, -1m, 1e-10m, 0.0127m, 1e6m, decimal.MaxValue / 10, decimal.MinValue / 10, 1234567.1234567m })
            {
                var request = PlanExample.Copy();
                Set(request, path, value);
                if (PlanReading.Outcome(request.ToJsonString(), out _) is Answered)
                    PlanMapping.Of(PlanReading.Read(request));
            }
        }
    }

    private static IEnumerable<object[]> NumbersOf(JsonNode? node, object[] path) => node switch
    {
        JsonObject members => members.SelectMany(member => NumbersOf(member.Value, [.. path, member.Key])),
        JsonArray items => items.SelectMany((item, i) => NumbersOf(item, [.. path, i])),
        JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.Number => [path],
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

    private static JsonNode Line(JsonNode request, int index = 0) => request["orders"]![0]!["lines"]![index]!;

    private static JsonNode Section(JsonNode request) => request["sections"]![0]!;

    private static JsonNode Grade(JsonNode request) => request["grades"]![0]!;

    private static JsonNode Stock(JsonNode request, int index = 0) => request["stock"]![index]!;

    private static JsonNode Saw(JsonNode request, int index = 0) => request["shop"]!["saws"]![index]!;

    private static JsonNode Blade(JsonNode request) => request["shop"]!["blades"]![0]!;

    private static JsonNode Shift(JsonNode request, int index = 0) => request["shop"]!["calendars"]![0]!["shifts"]![index]!;

    private static JsonObject Attributes(int count) => new(Enumerable.Range(0, count).Select(i => KeyValuePair.Create<string, JsonNode?>($"a{i}", "x")));

    private static JsonNode Custom(string x) => JsonNode.Parse(
        $$"""{"sectionId": "my flat", "shape": "custom", "outline": [{"x": 0, "y": 0}, {"x": {{x}}, "y": 50}, {"x": 40, "y": 50}, {"x": 40, "y": 0}]}""")!;
}
