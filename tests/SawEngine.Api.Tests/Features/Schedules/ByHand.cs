namespace SawEngine.Api.Tests.Features.Schedules;

/// <summary>A small request for a schedule whose answer can be worked out by hand.</summary>
internal static class ByHand
{
    public const string Json = """
        {
          "currency": "EUR",
          "timeZone": "Europe/Vienna",
          "planStart": "2026-11-30T06:00:00+01:00",
          "jobs": [
            {
              "jobId": "J1",
              "due": "2026-11-30T12:00:00+01:00",
              "costPerHourLate": 40,
              "options": [
                {"sawId": "saw-1", "seconds": 5400, "steps": 24, "section": "Round 50", "gradeGroup": "carbon steel", "bladeId": "34x1.1-4/6", "bladeLifeShare": 0.02},
                {"sawId": "saw-2", "seconds": 6900, "steps": 24, "section": "Round 50", "gradeGroup": "carbon steel", "bladeLifeShare": 0.02}
              ],
              "attributes": {"orderId": "SO-1001"}
            },
            {
              "jobId": "J2",
              "due": "2026-12-01T10:00:00+01:00",
              "costPerHourLate": 25,
              "options": [{"sawId": "saw-1", "seconds": 9300, "steps": 12, "section": "IPE 200", "gradeGroup": "carbon steel", "bladeId": "34x1.1-5/8", "bladeLifeShare": 0.05}]
            },
            {
              "jobId": "J3",
              "release": "2026-11-30T09:00:00+01:00",
              "options": [{"sawId": "saw-2", "seconds": 1800.5, "section": "Round 80", "gradeGroup": "stainless steel"}]
            }
          ],
          "shop": {
            "saws": [
              {
                "sawId": "saw-1",
                "capacity": {"round": 410, "width": 460, "height": 410},
                "tail": 120,
                "bladeIds": ["34x1.1-4/6", "34x1.1-5/8"],
                "mountedBladeId": "34x1.1-5/8",
                "calendarId": "early",
                "machineCostPerHour": 48
              },
              {"sawId": "saw-2", "capacity": {"round": 260, "width": 280, "height": 260}, "tail": 80, "calendarId": "early", "machineCostPerHour": 36}
            ],
            "blades": [
              {"bladeId": "34x1.1-4/6", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6], "cost": 95},
              {"bladeId": "34x1.1-5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8], "cost": 95}
            ],
            "calendars": [
              {
                "calendarId": "early",
                "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "09:00", "end": "09:30"}]}]
              }
            ],
            "rates": {"laborCostPerHour": 42}
          },
          "effort": "standard"
        }
        """;
}
