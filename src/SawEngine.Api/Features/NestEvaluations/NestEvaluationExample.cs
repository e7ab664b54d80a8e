namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>A request that works; a test posts it. The cuts of the remnant lie nearer than a kerf, and five pieces are left out.</summary>
internal static class NestEvaluationExample
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
          "effort": "standard",
          "layouts": [
            {"layoutId": "BAR-6M.1", "stockId": "BAR-6M", "repeat": 2, "cuts": [{"pieceId": "P2"}, {"pieceId": "P1"}, {"pieceId": "P1"}]},
            {
              "layoutId": "BAR-6M.2",
              "stockId": "BAR-6M",
              "repeat": 1,
              "trimLength": 10,
              "cuts": [{"pieceId": "P1", "start": 10, "end": 1490}, {"pieceId": "P1", "start": 1491.6}, {"pieceId": "P3"}, {"pieceId": "P3"}, {"pieceId": "P3"}, {"pieceId": "P3"}]
            },
            {
              "layoutId": "RM-0532.1",
              "stockId": "RM-0532",
              "cuts": [{"pieceId": "P2", "start": 0, "end": 2350}, {"pieceId": "P2", "start": 2351, "end": 4701}],
              "remainder": {"kind": "scrap"}
            }
          ],
          "compare": true
        }
        """;
}
