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

    /// <summary>Requests that show what the first does not.</summary>
    public static readonly IReadOnlyList<(string Name, string Summary, string Json)> More =
    [
        ("inchesWithRemnants", "Inches, feet and inches as text, remnants used and kept", Inches),
        ("miteredFrame", "A frame of square tube, all corners mitered at 45 degrees", MiteredFrame),
        ("cutBundles", "Equal bars clamped and cut together", CutBundles),
        ("substitutes", "A grade that may stand in for the one ordered", Substitutes),
        ("nearMisses", "Which small change would save a bar", NearMisses),
    ];

    private const string Inches = """
        {
          "lengthUnit": "in",
          "pieces": [
            {"pieceId": "BRACE", "section": "HSS4X4X1/4", "grade": "A500 B", "length": 45.375, "quantity": 12},
            {"pieceId": "POST", "section": "HSS 4x4x1/4", "grade": "A500 B", "lengthText": "8'-6 3/8\"", "quantity": 5}
          ],
          "stock": [
            {"stockId": "HSS4-20FT", "kind": "bar", "section": "HSS4X4X1/4", "grade": "A500 B", "lengthText": "20'", "quantity": 10, "endCondition": "sheared", "cost": 265},
            {"stockId": "RM-17", "kind": "remnant", "section": "HSS4X4X1/4", "grade": "A500 B", "length": 93.5, "cost": 70, "location": "rack 2"},
            {"stockId": "RM-21", "kind": "remnant", "section": "HSS4X4X1/4", "grade": "A500 B", "length": 140, "cost": 105, "location": "rack 2"}
          ],
          "cut": {"kerf": 0.063, "trim": 0.5, "tail": 4},
          "remnants": {"keepFrom": 36, "valueFraction": 0.7}
        }
        """;

    private const string MiteredFrame = """
        {
          "pieces": [
            {"pieceId": "RAIL", "section": "SHS 50x50x3 EN 10219", "grade": "S355J2H", "length": 1200, "quantity": 4, "lengthAt": "longSide",
             "firstEnd": {"widthAngle": -45}, "secondEnd": {"widthAngle": 45}},
            {"pieceId": "STILE", "section": "SHS 50x50x3 EN 10219", "grade": "S355J2H", "length": 800, "quantity": 4, "lengthAt": "longSide",
             "firstEnd": {"widthAngle": -45}, "secondEnd": {"widthAngle": 45}}
          ],
          "stock": [
            {"stockId": "SHS50-6M", "kind": "bar", "section": "SHS 50x50x3 EN 10219", "grade": "S355J2H", "length": 6000, "quantity": 4}
          ],
          "cut": {"kerf": 1.5, "tail": 60}
        }
        """;

    private const string CutBundles = """
        {
          "pieces": [
            {"pieceId": "SPACER", "section": "Square 40", "grade": "S235JR", "length": 310, "quantity": 120}
          ],
          "stock": [
            {"stockId": "SQ40-6M", "kind": "bar", "section": "Square 40", "grade": "S235JR", "length": 6000, "quantity": 12, "cost": 84}
          ],
          "cut": {"kerf": 1.6, "tail": 50, "costPerCut": 0.9, "bundle": {"mostWide": 3, "mostHigh": 2, "largestWidth": 200, "largestHeight": 120, "holdDown": true}}
        }
        """;

    private const string Substitutes = """
        {
          "pieces": [
            {"pieceId": "GUSSET", "section": "Flat 100x10", "grade": "S235JR", "substitutes": ["S275JR", "S355J2"], "length": 1190, "quantity": 8},
            {"pieceId": "STRIP", "section": "Flat 100x10", "grade": "S235JR", "length": 1480, "quantity": 12}
          ],
          "stock": [
            {"stockId": "FL-S235-6M", "kind": "bar", "section": "Flat 100x10", "grade": "S235JR", "length": 6000, "quantity": 3, "cost": 47},
            {"stockId": "RM-S355-1", "kind": "remnant", "section": "Flat 100x10", "grade": "S355J2", "length": 4790, "cost": 33},
            {"stockId": "BUY-S355-6M", "kind": "purchasable", "section": "Flat 100x10", "grade": "S355J2", "length": 6000, "cost": 58}
          ],
          "cut": {"kerf": 1.6, "tail": 20}
        }
        """;

    private const string NearMisses = """
        {
          "pieces": [
            {"pieceId": "LEG", "section": "Round 50", "grade": "C45", "length": 2005, "quantity": 7}
          ],
          "stock": [
            {"stockId": "BUY-R50-6M", "kind": "purchasable", "section": "Round 50", "grade": "C45", "length": 6000, "cost": 156}
          ],
          "cut": {"kerf": 1.6},
          "nearMisses": {"shorterBy": 12, "fewerBy": 2}
        }
        """;
}
