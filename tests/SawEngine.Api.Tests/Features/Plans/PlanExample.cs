using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>A small request without faults in which every kind of member occurs.</summary>
internal static class PlanExample
{
    private const string Json = """
        {
          "schemaVersion": "1.0", "lengthUnit": "mm", "currency": "EUR", "timeZone": "Europe/Vienna", "planStart": "2026-11-30T06:00:00+01:00",
          "orders": [
            {
              "orderId": "SO-2", "due": "2026-12-02T14:00:00+01:00", "release": "2026-11-30T08:00:00+01:00", "costPerHourLate": 25,
              "lines": [
                {"lineId": "20", "section": "IPE 200", "grade": "S355J2", "length": 2350, "quantity": 3, "lengthAt": "longSide", "firstEnd": {"heightAngle": 0}, "secondEnd": {"widthAngle": 30}},
                {"lineId": "10", "section": "my flat", "grade": "my steel", "length": 245, "quantity": 24, "certificate": "3.1", "heatRule": "named", "heat": "H1", "attributes": {"mark": "B7"}}
              ]
            },
            {"orderId": "SO-1", "lines": [{"lineId": "10", "section": "Round 50", "grade": "C45", "length": 245, "quantity": 1}]}
          ],
          "sections": [{"sectionId": "my flat", "shape": "flat", "height": 12, "width": 80}],
          "grades": [{"gradeId": "my steel", "densityKgPerM3": 7850, "likeGrade": "S235JR", "hardnessHb": 140}],
          "stock": [
            {"stockId": "B", "kind": "bar", "section": "Round 50", "grade": "C45", "length": 6000, "quantity": 3, "endCondition": "sheared", "coating": "zinc", "cost": 148, "heat": "H1", "certificate": "3.1"},
            {"stockId": "A", "kind": "remnant", "section": "Round 50", "grade": "C45", "length": 2310, "cost": 45.6, "location": "rack 4", "version": "7"},
            {"stockId": "C", "kind": "purchasable", "section": "IPE 200", "grade": "S355J2", "length": 12000, "cost": 282, "leadDays": 2}
          ],
          "shop": {
            "saws": [
              {
                "sawId": "saw-2", "capacity": {"round": 410, "width": 460, "height": 410}, "miterRange": {"left": 45, "right": 60}, "bladeSpeedMPerMin": {"min": 18, "max": 120},
                "bundle": {"mostWide": 4, "mostHigh": 2, "largestWidth": 300, "largestHeight": 150, "holdDown": true},
                "baseBladeSpeedMPerMin": 40, "wheelDiameter": 450, "motorPowerKw": 4, "driveEfficiency": 0.8, "fastestBladeFeedMmPerMin": 900, "barFeedStroke": 3000, "loadLimitKg": 4000,
                "tail": 120, "shortestPiece": 10, "longestPiece": 9000, "thinnestSlice": 5, "bladeIds": ["34x1.1-5/8", "34x1.1-4/6"], "mountedBladeId": "34x1.1-5/8", "calendarId": "early",
                "downtimes": [{"start": "2026-12-01T10:00:00+01:00", "end": "2026-12-01T12:00:00+01:00", "reason": "guides"}],
                "machineCostPerHour": 48, "rateFactor": 1.1, "coolant": true, "times": {"loadSecondsPerBar": 100, "retractSecondsPerCut": 2, "indexesWhileRetracting": true},
                "tiltRange": {"toFirstEnd": 30, "toSecondEnd": 30}, "cantDegrees": 2,
                "accuracy": {"indexErrorPerStroke": 0.05, "indexBiasPerStroke": 0.01, "scaleErrorPpm": 20, "kerfError": 0.05, "squareness": 0.002}
              },
              {"sawId": "saw-1", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 80, "calendarId": "early"}
            ],
            "blades": [
              {"bladeId": "34x1.1-5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8], "toothMaterial": "bimetal", "cost": 95, "lifeAreaM2": 6.5, "remainingLife": 0.5},
              {"bladeId": "34x1.1-4/6", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6]}
            ],
            "calendars": [
              {
                "calendarId": "early",
                "shifts": [
                  {"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "12:00", "end": "12:30"}, {"start": "09:30", "end": "09:45"}]},
                  {"days": ["FR"], "start": "22:00", "end": "00:00"}
                ],
                "holidays": ["2026-12-08"]
              }
            ],
            "rates": {"laborCostPerHour": 42, "handlingCostPerBar": 2.5, "scrapValuePerKg": 0.2},
            "trim": {"sheared": 10, "flameCut": 15, "rolled": 20},
            "remnants": {"keepFrom": 600, "valueFraction": 0.8}
          },
          "effort": "quick",
          "timeLimitSeconds": 5
        }
        """;

    /// <summary>A fresh copy, to be changed.</summary>
    public static JsonObject Copy() => JsonNode.Parse(Json)!.AsObject();

    /// <summary>A copy with something changed.</summary>
    public static JsonObject With(Action<JsonNode> change)
    {
        var copy = Copy();
        change(copy);
        return copy;
    }
}
