using System.Text.Json.Nodes;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Tests.Faults;
using SawEngine.Api.Tests.Features.Plans;
using SawEngine.Api.Wire;
using PlanExample = SawEngine.Api.Tests.Features.Plans.PlanExample;

namespace SawEngine.Api.Tests.Features.Shop;

/// <summary>Rules of what a shop says of its schedule, each broken alone.</summary>
public sealed class ShopFaultTests
{
    private sealed record RuleCase(string Name, Action<JsonNode> Change, string Pointer, string Code);

    private static readonly RuleCase[] Cases =
    [
        // Calendars
        new("Overtime without a price", r => Calendar(r)["overtime"]![0]!.AsObject().Remove("costPerHour"), "#/shop/calendars/0/overtime/0", FaultCode.MissingMember),
        new("Overtime at a negative price", r => Calendar(r)["overtime"]![0]!["costPerHour"] = -1, "#/shop/calendars/0/overtime/0/costPerHour", FaultCode.TooSmall),
        new("Overtime over midnight", r => Calendar(r)["overtime"]![0]!["end"] = "05:00", "#/shop/calendars/0/overtime/0/end", FaultCode.ShiftEndsBeforeItBegins),
        new("A break outside overtime", r => Calendar(r)["overtime"]![0]!["breaks"]![0]!["end"] = "12:01", "#/shop/calendars/0/overtime/0/breaks/0", FaultCode.BreakOutsideShift),
        new("A rule that nobody can read", r => Shift(r)["recurrence"]![0] = "RRULE:FREQ=WEEKLY;BYDAY=XX", "#/shop/calendars/0/recurringShifts/0/recurrence/0", FaultCode.InvalidRecurrence),
        new("A date that is none", r => Shift(r)["recurrence"]![1] = "EXDATE:20261399T220000", "#/shop/calendars/0/recurringShifts/0/recurrence/1", FaultCode.InvalidRecurrence),
        new("A shift every minute", r => Shift(r)["recurrence"]![0] = "RRULE:FREQ=MINUTELY", "#/shop/calendars/0/recurringShifts/0/recurrence/0", FaultCode.RecurrenceTooFrequent),
        new("A shift of no length", r => Shift(r)["minutes"] = 0, "#/shop/calendars/0/recurringShifts/0/minutes", FaultCode.TooSmall),
        new("A shift longer than a week", r => Shift(r)["minutes"] = 10_081, "#/shop/calendars/0/recurringShifts/0/minutes", FaultCode.TooLarge),
        new("A rule from long ago", r => Shift(r)["firstDay"] = "2023-11-29", "#/shop/calendars/0/recurringShifts/0/firstDay", FaultCode.DateOutOfRange),
        new("A rule from far ahead", r => Shift(r)["firstDay"] = "2036-11-29", "#/shop/calendars/0/recurringShifts/0/firstDay", FaultCode.DateOutOfRange),
        new("A holiday by the hour", r => Calendar(r)["recurringHolidays"]![0]!["recurrence"]![0] = "RRULE:FREQ=HOURLY", "#/shop/calendars/0/recurringHolidays/0/recurrence/0", FaultCode.RecurrenceTooFrequent),
        new("A holiday from long ago", r => Calendar(r)["recurringHolidays"]![0]!["firstDay"] = "1990-12-25", "#/shop/calendars/0/recurringHolidays/0/firstDay", FaultCode.DateOutOfRange),
        new("A closure backward", r => Calendar(r)["closures"]![0]!["lastDay"] = "2026-12-27", "#/shop/calendars/0/closures/0/lastDay", FaultCode.ClosureEndsBeforeItBegins),
        new("More lines than one recurrence has", r => Shift(r)["recurrence"] = new JsonArray([.. Enumerable.Repeat("RDATE:20261224", PlanLimits.RecurrenceLines + 1)]), "#/shop/calendars/0/recurringShifts/0/recurrence", FaultCode.TooMany),
        new("More recurrences than a list has", r => Calendar(r)["recurringShifts"] = new JsonArray([.. Enumerable.Range(0, PlanLimits.Recurrences + 1).Select(_ => Shift(r).DeepClone())]), "#/shop/calendars/0/recurringShifts", FaultCode.TooMany),

        // Saws
        new("Maintenance by the second", r => Saw(r)["maintenance"]![0]!["recurrence"]![0] = "RRULE:FREQ=SECONDLY", "#/shop/saws/0/maintenance/0/recurrence/0", FaultCode.RecurrenceTooFrequent),
        new("Maintenance from long ago", r => Saw(r)["maintenance"]![0]!["firstDay"] = "2020-01-01", "#/shop/saws/0/maintenance/0/firstDay", FaultCode.DateOutOfRange),
        new("A calendar of nobody for unattended time", r => Saw(r)["unattended"]!["calendarId"] = "nights", "#/shop/saws/0/unattended/calendarId", FaultCode.UnknownCalendar),
        new("A magazine of less than nothing", r => Saw(r)["unattended"]!["bars"] = -1, "#/shop/saws/0/unattended/bars", FaultCode.TooSmall),
        new("Unattended for no time", r => Saw(r)["unattended"]!["hours"] = 0, "#/shop/saws/0/unattended/hours", FaultCode.MustBePositive),
        new("A blade on the shelf that is not the saw's", r => Saw(r)["shelf"]![0]!["bladeId"] = "27x0.9-4/6", "#/shop/saws/0/shelf/0/bladeId", FaultCode.UnknownBlade),
        new("A shelf of a saw without a list of blades", r => Saw(r, 1)["shelf"] = Saw(r)["shelf"]!.DeepClone(), "#/shop/saws/1/shelf/0/bladeId", FaultCode.UnknownBlade),
        new("More than all of a blade's life on the shelf", r => Saw(r)["shelf"]![0]!["remainingLife"] = 1.01m, "#/shop/saws/0/shelf/0/remainingLife", FaultCode.TooLarge),
        new("An angle beyond a right one", r => Saw(r)["initialAngleDegrees"] = 90.001m, "#/shop/saws/0/initialAngleDegrees", FaultCode.TooLarge),
        new("An angle finer than a thousandth", r => Saw(r)["initialAngleDegrees"] = 22.5005m, "#/shop/saws/0/initialAngleDegrees", FaultCode.TooFine),
        new("A change of nothing", r => Saw(r)["setUpChanges"]![0]!["to"] = "Round 50", "#/shop/saws/0/setUpChanges/0/to", FaultCode.NothingChanges),
        new("A change of an angle to itself, written otherwise", r => Saw(r)["setUpChanges"]![2]!["to"] = "0.00", "#/shop/saws/0/setUpChanges/2/to", FaultCode.NothingChanges),
        new("A change given twice", r => Saw(r)["setUpChanges"]!.AsArray().Add(Saw(r)["setUpChanges"]![1]!.DeepClone()), "#/shop/saws/0/setUpChanges/3", FaultCode.ChangeGivenTwice),
        new("A change of an angle given twice, written otherwise", r => Saw(r)["setUpChanges"]!.AsArray().Add(JsonNode.Parse("""{"kind": "angle", "from": "-0.0", "to": "45.000", "seconds": 1}""")), "#/shop/saws/0/setUpChanges/3", FaultCode.ChangeGivenTwice),
        new("An angle in words", r => Saw(r)["setUpChanges"]![2]!["from"] = "square", "#/shop/saws/0/setUpChanges/2/from", FaultCode.InvalidAngle),
        new("An angle that is too large", r => Saw(r)["setUpChanges"]![2]!["to"] = "91", "#/shop/saws/0/setUpChanges/2/to", FaultCode.InvalidAngle),
        new("A part done beside the others named twice", r => Saw(r)["setUpBeside"]!.AsArray().Add("gradeGroup"), "#/shop/saws/0/setUpBeside", FaultCode.RepeatedKind),
        new("A part that does not exist done beside the others", r => Saw(r)["setUpBeside"]![0] = "bladeWorn", "#/shop/saws/0/setUpBeside/0", FaultCode.UnknownValue),

        // Operators and cranes
        new("Two operators of one id", r => r["shop"]!["operators"]![1]!["operatorId"] = "ann", "#/shop/operators/1/operatorId", FaultCode.DuplicateId),
        new("An operator on a calendar of nobody", r => r["shop"]!["operators"]![1]!["calendarId"] = "late", "#/shop/operators/1/calendarId", FaultCode.UnknownCalendar),
        new("An operator of a saw of nobody", r => { r["shop"]!["operators"]!.AsArray().RemoveAt(1); r["shop"]!["operators"]![0]!["sawIds"]![1] = "saw-3"; }, "#/shop/operators/0/sawIds/1", FaultCode.UnknownSaw),
        new("A saw named twice", r => r["shop"]!["operators"]![0]!["sawIds"]!.AsArray().Add("saw-1"), "#/shop/operators/0/sawIds/2", FaultCode.DuplicateId),
        new("An operator of no saws", r => { r["shop"]!["operators"]!.AsArray().RemoveAt(1); r["shop"]!["operators"]![0]!["sawIds"] = new JsonArray(); }, "#/shop/operators/0/sawIds", FaultCode.Empty),
        new("An operator who attends nothing", r => r["shop"]!["operators"]![0]!["mostSaws"] = 0, "#/shop/operators/0/mostSaws", FaultCode.TooSmall),
        new("Operators who share some saws", r => r["shop"]!["operators"]![0]!["sawIds"] = new JsonArray("saw-1"), "#/shop/operators/1", FaultCode.TeamsOverlap),
        new("Two cranes of one id", r => r["shop"]!["cranes"]!.AsArray().Add(r["shop"]!["cranes"]![0]!.DeepClone()), "#/shop/cranes/1/craneId", FaultCode.DuplicateId),
        new("A crane at a saw of nobody", r => r["shop"]!["cranes"]![0]!["sawIds"]![0] = "saw-3", "#/shop/cranes/0/sawIds/0", FaultCode.UnknownSaw),
        new("A way longer than a day", r => r["shop"]!["walkingSeconds"] = 86_401, "#/shop/walkingSeconds", FaultCode.TooLarge),
    ];

    public static TheoryData<string> CaseNames => [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(CaseNames))]
    public void Broken_rule_is_the_only_fault(string name)
    {
        var rule = Cases.Single(c => c.Name == name);
        var request = FullShop.With(rule.Change);

        Assert.Equal([$"{rule.Pointer} {rule.Code}"], PlanReading.FaultsOf(request));
        Assert.True(Pointers.Resolves(rule.Pointer, request));
    }

    [Fact]
    public void Full_shop_has_no_faults() => Assert.Empty(PlanReading.FaultsOf(FullShop.Copy()));

    [Fact]
    public void Maintenance_that_the_guide_shows_has_no_faults()
    {
        var guide = Repository.Read("docs", "scheduling.md");
        var shown = guide.Split("```json")[1].Split("```")[0];
        Assert.Empty(PlanReading.FaultsOf(FullShop.With(r => Saw(r)["maintenance"] = new JsonArray(JsonNode.Parse(shown)))));
    }

    [Fact]
    public void Operators_of_other_saws_are_another_team() => Assert.Empty(PlanReading.FaultsOf(FullShop.With(r =>
    {
        r["shop"]!["operators"]![0]!["sawIds"] = new JsonArray("saw-1");
        r["shop"]!["operators"]![1]!["sawIds"] = new JsonArray("saw-2");
    })));

    [Fact]
    public void Recurrences_of_a_shop_have_a_limit()
    {
        Assert.Empty(PlanReading.FaultsOf(With(PlanLimits.AllRecurrences - 4)));
        Assert.Equal(["#/shop too_much_work"], PlanReading.FaultsOf(With(PlanLimits.AllRecurrences - 3)));

        // Beside four that stand there already.
        static JsonObject With(int more) => FullShop.With(r =>
        {
            for (var i = 0; i < more; i++)
            {
                if (i % PlanLimits.Recurrences == 0)
                    r["shop"]!["calendars"]!.AsArray().Add(JsonNode.Parse($$"""{"calendarId": "c{{i}}", "shifts": [], "recurringShifts": []}"""));
                r["shop"]!["calendars"]!.AsArray()[^1]!["recurringShifts"]!.AsArray().Add(Shift(r).DeepClone());
            }
        });
    }

    /// <summary>Every number is set to values that overflow, vanish or lie beside every grid: a refusal or a mapping, never an exception.</summary>
    [Fact]
    public void No_number_can_crash_rules_or_mapping()
    {
        var (full, plain) = (FullShop.Copy()["shop"]!, PlanExample.Copy()["shop"]!);
        var numbers = JsonPlaces.Of(full).Except(JsonPlaces.Of(plain))
            .Where(place => JsonPlaces.At(full, place) is JsonValue value && value.GetValueKind() == System.Text.Json.JsonValueKind.Number).ToList();
        Assert.True(numbers.Count > 10, $"{numbers.Count} numbers");
        foreach (var place in numbers)
        {
            foreach (var value in new[] { "0", "-1", "1e-10", "0.0127", "1000000", "7e27", "-7e27", "1234567.1234567" })
            {
                var request = FullShop.With(r => r["shop"] = JsonNode.Parse(JsonPlaces.With(r["shop"]!, place, _ => value)));
                if (PlanReading.Outcome(request.ToJsonString(), out _) is Answered)
                    PlanMapping.Of(PlanReading.Read(request));
            }
        }
    }

    /// <summary>Days at the ends of what can be written, and starts of plans there: a refusal or a mapping, never an exception.</summary>
    [Theory]
    [InlineData("0001-01-01", "0001-01-01T00:00:00Z")]
    [InlineData("9999-12-31", "9999-12-31T23:59:59Z")]
    [InlineData("2199-12-31", "2199-12-31T23:59:59Z")]
    [InlineData("2000-01-01", "2000-01-01T00:00:00Z")]
    public void No_day_can_crash_rules_or_mapping(string day, string start)
    {
        foreach (var planStart in new[] { start, "2026-11-30T06:00:00+01:00" })
        {
            var request = FullShop.With(r =>
            {
                r["planStart"] = planStart;
                foreach (var order in r["orders"]!.AsArray())
                {
                    order!.AsObject().Remove("due");
                    order.AsObject().Remove("release");
                }
                Shift(r)["firstDay"] = day;
                Calendar(r)["holidays"] = new JsonArray(day);
                Calendar(r)["recurringHolidays"]![0]!["firstDay"] = day;
                Calendar(r)["closures"]![0]!["firstDay"] = day;
                Calendar(r)["closures"]![0]!["lastDay"] = day;
                Saw(r)["maintenance"]![0]!["firstDay"] = day;
                Shift(r)["recurrence"]![1] = $"RDATE:{day.Replace("-", "", StringComparison.Ordinal)}T000000Z";
            });
            if (PlanReading.Outcome(request.ToJsonString(), out _) is Answered)
                PlanMapping.Of(PlanReading.Read(request));
        }
    }

    private static JsonNode Calendar(JsonNode request) => request["shop"]!["calendars"]![0]!;

    private static JsonNode Shift(JsonNode request) => Calendar(request)["recurringShifts"]![0]!;

    private static JsonNode Saw(JsonNode request, int index = 0) => request["shop"]!["saws"]![index]!;
}
