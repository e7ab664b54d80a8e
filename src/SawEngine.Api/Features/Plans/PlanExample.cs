using SawEngine.Api.Features.Shop;

namespace SawEngine.Api.Features.Plans;

/// <summary>A request for a plan that works at the first click.</summary>
internal static class PlanExample
{
    public const string Json = $$$"""
        {
          "lengthUnit": "mm",
          "currency": "EUR",
          "timeZone": "Europe/Vienna",
          "planStart": "2026-11-30T06:00:00+01:00",
          "orders": [
            {
              "orderId": "SO-1001",
              "due": "2026-12-02T14:00:00+01:00",
              "costPerHourLate": 25,
              "lines": [
                {"lineId": "10", "section": "Round 50", "grade": "C45", "length": 245, "quantity": 24},
                {"lineId": "20", "section": "IPE 200", "grade": "S355J2", "length": 2350, "quantity": 3, "lengthAt": "longSide", "secondEnd": {"widthAngle": 30}, "attributes": {"mark": "B7"}}
              ]
            },
            {
              "orderId": "SO-1002",
              "due": "2026-12-01T12:00:00+01:00",
              "costPerHourLate": 40,
              "lines": [
                {"lineId": "10", "section": "IPE 200", "grade": "S355J2", "length": 1480, "quantity": 6, "certificate": "3.1", "heatRule": "single"}
              ]
            }
          ],
          "stock": {{{ExampleShop.Stock}}},
          "shop": {{{ExampleShop.Json}}},
          "effort": "quick"
        }
        """;
}
