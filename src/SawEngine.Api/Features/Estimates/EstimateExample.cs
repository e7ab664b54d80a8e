using SawEngine.Api.Features.Shop;

namespace SawEngine.Api.Features.Estimates;

/// <summary>A request for an estimate that works at the first click.</summary>
internal static class EstimateExample
{
    public const string Json = $$$"""
        {
          "lengthUnit": "mm",
          "currency": "EUR",
          "order": {
            "orderId": "Q-2001",
            "lines": [
              {"lineId": "10", "section": "Round 50", "grade": "C45", "length": 245, "quantity": 24},
              {"lineId": "20", "section": "IPE 200", "grade": "S355J2", "length": 2350, "quantity": 3, "lengthAt": "longSide", "secondEnd": {"widthAngle": 30}, "attributes": {"mark": "B7"}}
            ]
          },
          "stock": {{{ExampleShop.Stock}}},
          "shop": {{{ExampleShop.Json}}},
          "priceBreaks": [1, 10, 50],
          "effort": "quick"
        }
        """;
}
