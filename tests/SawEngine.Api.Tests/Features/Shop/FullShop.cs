using System.Text.Json.Nodes;
using SawEngine.Api.Tests.Features.Plans;

namespace SawEngine.Api.Tests.Features.Shop;

/// <summary>The small request for a plan with everything that a shop can say of its schedule.</summary>
internal static class FullShop
{
    private const string Calendar = """
        {
          "overtime": [{"days": ["SA"], "start": "06:00", "end": "12:00", "costPerHour": 20, "breaks": [{"start": "09:00", "end": "09:15"}]}],
          "recurringShifts": [
            {"firstDay": "2026-12-06", "start": "22:00", "minutes": 480, "recurrence": ["RRULE:FREQ=WEEKLY;BYDAY=SU", "EXDATE:20261227T220000"]},
            {"firstDay": "2026-12-04", "start": "14:00", "minutes": 120, "recurrence": ["RRULE:FREQ=WEEKLY;INTERVAL=2;BYDAY=FR"], "costPerHour": 15}
          ],
          "recurringHolidays": [{"firstDay": "2025-12-25", "recurrence": ["RRULE:FREQ=YEARLY"]}],
          "closures": [{"firstDay": "2026-12-28", "lastDay": "2027-01-06", "reason": "shutdown"}]
        }
        """;

    private const string Saw = """
        {
          "shelf": [{"bladeId": "34x1.1-4/6", "remainingLife": 0.4}],
          "initialSection": "Round 50",
          "initialGradeGroup": "carbon steel",
          "initialAngleDegrees": 0,
          "maintenance": [{"firstDay": "2026-12-04", "start": "13:00", "minutes": 60, "recurrence": ["RRULE:FREQ=WEEKLY;BYDAY=FR"], "reason": "guides"}],
          "unattended": {"calendarId": "night", "bars": 2, "cuts": 120, "hours": 8},
          "setUpChanges": [
            {"kind": "section", "from": "Round 50", "to": "IPE 200", "seconds": 900},
            {"kind": "gradeGroup", "to": "stainless steel", "seconds": 600},
            {"kind": "angle", "from": "0", "to": "45", "seconds": 20}
          ],
          "setUpBeside": ["gradeGroup"]
        }
        """;

    private const string Shop = """
        {
          "operators": [{"operatorId": "ann", "calendarId": "early", "sawIds": ["saw-1", "saw-2"], "mostSaws": 2}, {"operatorId": "bob", "calendarId": "night"}],
          "cranes": [{"craneId": "north", "sawIds": ["saw-2"]}],
          "walkingSeconds": 30
        }
        """;

    /// <summary>A fresh copy, to be changed.</summary>
    public static JsonObject Copy() => PlanExample.With(r =>
    {
        var shop = r["shop"]!;
        Add(shop, Shop);
        Add(shop["saws"]![0]!, Saw);
        Add(shop["calendars"]![0]!, Calendar);
        shop["calendars"]!.AsArray().Add(JsonNode.Parse("""{"calendarId": "night", "shifts": [{"days": ["MO", "TU"], "start": "14:00", "end": "22:00"}]}"""));
    });

    /// <summary>A copy with something changed.</summary>
    public static JsonObject With(Action<JsonNode> change)
    {
        var copy = Copy();
        change(copy);
        return copy;
    }

    private static void Add(JsonNode to, string members)
    {
        foreach (var (name, value) in JsonNode.Parse(members)!.AsObject())
            to[name] = value!.DeepClone();
    }
}
