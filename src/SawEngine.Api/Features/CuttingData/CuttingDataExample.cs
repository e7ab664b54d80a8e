namespace SawEngine.Api.Features.CuttingData;

/// <summary>A request for cutting data that works at the first click.</summary>
internal static class CuttingDataExample
{
    public const string Json = """
        {
          "lengthUnit": "mm",
          "cuts": [
            {"cutId": "shaft", "section": "Round 100", "grade": "1045", "quantity": 40, "squareness": 0.2, "piece": {"length": 640, "tolerance": {"plus": 0.2, "minus": 0.2}}},
            {"cutId": "hip", "section": "SHS 100x100x5 EN 10219", "grade": "S355J2", "face": {"heightAngle": 20, "widthAngle": 30}},
            {"cutId": "beam", "section": "IPE 200", "grade": "S355J2", "face": {"widthAngle": 45}, "attributes": {"mark": "B7"}}
          ],
          "shop": {
            "saws": [
              {
                "sawId": "saw-1",
                "capacity": {"round": 410, "width": 460, "height": 410},
                "miterRange": {"left": 45, "right": 60},
                "tiltRange": {"toFirstEnd": 30, "toSecondEnd": 30},
                "wheelDiameter": 450,
                "bladeSpeedMPerMin": {"min": 18, "max": 120},
                "motorPowerKw": 4,
                "tail": 120,
                "bladeIds": ["34x1.1-3/4", "34x1.1-5/8"],
                "calendarId": "early"
              },
              {"sawId": "saw-2", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 80, "calendarId": "early"}
            ],
            "blades": [
              {"bladeId": "34x1.1-3/4", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [3, 4], "lifeAreaM2": 6.5},
              {"bladeId": "34x1.1-5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8], "lifeAreaM2": 6.5}
            ],
            "calendars": [{"calendarId": "early", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00"}]}]
          }
        }
        """;
}
