namespace SawEngine.Api.Features.Shop;

/// <summary>An invented shop and its stock, which the examples share.</summary>
internal static class ExampleShop
{
    public const string Stock = """
        [
          {"stockId": "R50-6M", "kind": "bar", "section": "Round 50", "grade": "C45", "length": 6000, "quantity": 3, "endCondition": "sheared", "cost": 148, "heat": "H81203", "certificate": "3.1"},
          {"stockId": "RM-0417", "kind": "remnant", "section": "Round 50", "grade": "C45", "length": 2310, "cost": 45.6, "heat": "H79950", "certificate": "3.1", "location": "rack 4"},
          {"stockId": "IPE200-12M", "kind": "bar", "section": "IPE 200", "grade": "S355J2", "length": 12000, "quantity": 5, "endCondition": "sheared", "cost": 282, "heat": "H77120", "certificate": "3.1"},
          {"stockId": "RM-0532", "kind": "remnant", "section": "IPE 200", "grade": "S355J2", "length": 5230, "cost": 98.3, "heat": "H75544", "certificate": "2.2", "location": "rack 9"},
          {"stockId": "BUY-R50-6M", "kind": "purchasable", "section": "Round 50", "grade": "C45", "length": 6000, "cost": 156, "leadDays": 2}
        ]
        """;

    public const string Json = """
        {
          "saws": [
            {
              "sawId": "saw-1",
              "capacity": {"round": 410, "width": 460, "height": 410},
              "miterRange": {"left": 45, "right": 60},
              "bladeSpeedMPerMin": {"min": 18, "max": 120},
              "motorPowerKw": 4,
              "barFeedStroke": 3000,
              "loadLimitKg": 4000,
              "tail": 120,
              "bladeIds": ["34x1.1-5/8"],
              "mountedBladeId": "34x1.1-5/8",
              "calendarId": "early",
              "machineCostPerHour": 48
            },
            {
              "sawId": "saw-2",
              "capacity": {"round": 260, "width": 280, "height": 260},
              "bladeSpeedMPerMin": {"min": 20, "max": 100},
              "motorPowerKw": 2.2,
              "barFeedStroke": 500,
              "loadLimitKg": 1500,
              "tail": 80,
              "bladeIds": ["27x0.9-4/6"],
              "mountedBladeId": "27x0.9-4/6",
              "calendarId": "early",
              "machineCostPerHour": 36
            }
          ],
          "blades": [
            {"bladeId": "34x1.1-5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8], "toothMaterial": "bimetal", "cost": 95, "lifeAreaM2": 6.5},
            {"bladeId": "27x0.9-4/6", "width": 27, "thickness": 0.9, "kerf": 1.5, "teethPerInch": [4, 6], "toothMaterial": "bimetal", "cost": 62, "lifeAreaM2": 5}
          ],
          "calendars": [
            {"calendarId": "early", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "09:30", "end": "09:45"}]}]}
          ],
          "rates": {"laborCostPerHour": 42, "handlingCostPerBar": 2.5, "scrapValuePerKg": 0.2},
          "trim": {"sheared": 10, "flameCut": 15, "rolled": 20},
          "remnants": {"keepFrom": 600, "valueFraction": 0.8}
        }
        """;
}
