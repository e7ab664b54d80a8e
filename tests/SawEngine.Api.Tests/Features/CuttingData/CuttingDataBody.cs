using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.CuttingData;

/// <summary>Small requests for cutting data.</summary>
internal static class CuttingDataBody
{
    public const string Url = "/v1/cutting-data";

    /// <summary>Two saws: one that swivels, with blades of its own, and one that cuts square only, with the usual blades.</summary>
    private const string Shop = """
        {
          "saws": [
            {
              "sawId": "swivel", "capacity": {"round": 410, "width": 460, "height": 410}, "miterRange": {"left": 45, "right": 60},
              "bladeSpeedMPerMin": {"min": 5, "max": 200}, "motorPowerKw": 20, "tail": 120, "bundle": {"mostWide": 4, "mostHigh": 2}, "bladeIds": ["2/3", "3/4", "5/8"], "calendarId": "early"
            },
            {"sawId": "square", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 80, "calendarId": "early"}
          ],
          "blades": [
            {"bladeId": "2/3", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [2, 3]},
            {"bladeId": "3/4", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [3, 4], "lifeAreaM2": 6.5},
            {"bladeId": "5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8]}
          ],
          "calendars": [{"calendarId": "early", "shifts": []}]
        }
        """;

    /// <summary>A request for one cut, to which more members can be given.</summary>
    public static JsonObject Of(string section, string grade, string more = "") => OfCuts($$"""{"cutId": "a", "section": "{{section}}", "grade": "{{grade}}"{{more}}}""");

    /// <summary>A request for cuts.</summary>
    public static JsonObject OfCuts(string cuts) => JsonNode.Parse($$"""{"cuts": [{{cuts}}], "shop": {{Shop}}}""")!.AsObject();

    /// <summary>A request in which every kind of member occurs.</summary>
    public static JsonObject Full()
    {
        var request = OfCuts("""
            {"cutId": "b", "section": "IPE 200", "grade": "S355J2", "face": {"heightAngle": 0, "widthAngle": 30}, "sawIds": ["swivel", "square"], "quantity": 12, "attributes": {"mark": "B7"}},
            {"cutId": "a", "section": "my flat", "grade": "my steel", "bladeId": "5/8", "bundle": {"wide": 2, "high": 2}},
            {"cutId": "c", "section": "my profile", "grade": "my graphite"}
            """);
        request["schemaVersion"] = "1.0";
        request["lengthUnit"] = "mm";
        request["sections"] = JsonNode.Parse("""[{"sectionId": "my flat", "shape": "flat", "height": 12, "width": 80}]""");
        request["sections"]!.AsArray().Add(JsonNode.Parse("""
            {
              "sectionId": "my profile", "shape": "custom", "width": 80, "areaMm2": 3010,
              "contactWidths": [{"depth": 0, "width": 40, "runs": 2}, {"depth": 50, "width": 80, "runs": 1}],
              "contactWidthsTurned": [{"depth": 0, "width": 0}, {"depth": 20, "width": 50}, {"depth": 60, "width": 50}, {"depth": 80, "width": 0}]
            }
            """));
        request["grades"] = JsonNode.Parse("""[{"gradeId": "my steel", "densityKgPerM3": 7850, "likeGrade": "S235JR", "hardnessHb": 140}]""");
        request["grades"]!.AsArray().Add(JsonNode.Parse("""
            {
              "gradeId": "my graphite", "group": "graphite", "densityKgPerM3": 1820, "condition": "isostatic", "hardnessHb": 10, "bladeSpeedMPerMin": 60, "cuttingRateCm2PerMin": 120,
              "unitPowerKwPerCm3PerMin": 0.002, "bladeLifeM2": 2, "workHardening": false, "coolant": "notAllowed"
            }
            """));
        return request;
    }
}
