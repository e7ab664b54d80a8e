namespace SawEngine.Api.Features.Nests;

/// <summary>A request that works; a test posts it.</summary>
internal static class NestExample
{
    public const string Json = """
        {
          "schemaVersion": "1.0",
          "lengthUnit": "mm",
          "pieces": [
            {"pieceId": "P1", "length": 1480, "quantity": 6},
            {"pieceId": "P2", "length": 2350, "quantity": 4},
            {"pieceId": "P3", "length": 620, "quantity": 9}
          ],
          "stock": [
            {"stockId": "BAR-6M", "kind": "bar", "length": 6000, "quantity": 10, "endCondition": "sheared", "cost": 141.5},
            {"stockId": "RM-0532", "kind": "remnant", "length": 5230, "cost": 98.3, "location": "rack 9"}
          ],
          "cut": {"kerf": 1.6, "trim": 10, "tail": 80},
          "remnants": {"keepFrom": 600, "valueFraction": 0.8},
          "effort": "standard"
        }
        """;
}
