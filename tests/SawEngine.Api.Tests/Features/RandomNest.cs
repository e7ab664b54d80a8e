using System.Globalization;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features;

/// <summary>Random requests for a nest, in inches, whose lengths lie on the grid of both units (0.000005 in = 0.000127 mm).</summary>
internal static class RandomNest
{
    private const decimal Grid = 0.000005m;

    private static readonly string[] Grades = ["A36", "A992", "A572 Gr 50"];

    /// <summary>With costs all that can cost something does.</summary>
    public static JsonObject Of(Random random, bool isCosted)
    {
        var nest = OfOneGrade(random, isCosted);
        return random.Next(3) == 0 ? OfGrades(nest, random) : nest;
    }

    private static JsonObject OfGrades(JsonObject nest, Random random)
    {
        foreach (var stated in nest["pieces"]!.AsArray().Concat(nest["stock"]!.AsArray()))
            stated!["grade"] = Grades[random.Next(Grades.Length)];
        foreach (var piece in nest["pieces"]!.AsArray())
            piece!["substitutes"] = new JsonArray([.. Grades.Where(_ => random.Next(2) == 0).Select(grade => (JsonNode)grade)]);
        return nest;
    }

    private static JsonObject OfOneGrade(Random random, bool isCosted) => new()
    {
        ["lengthUnit"] = "in",
        ["pieces"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 9)).Select(i => Piece(random, i))]),
        ["stock"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 8)).Select(i => Stock(random, i, isCosted))]),
        ["cut"] = new JsonObject
        {
            ["kerf"] = OnGrid(random, 0m, 0.2m),
            ["trim"] = OnGrid(random, 0m, 2m),
            ["tail"] = OnGrid(random, 0m, 5m),
            ["shortestPiece"] = OnGrid(random, 0m, 20m),
            ["longestPiece"] = random.Next(3) == 0 ? OnGrid(random, 110m, 140m) : null,
            ["thinnestSlice"] = random.Next(2) * OnGrid(random, 0m, 0.5m),
            ["costPerCut"] = Cost(random, isCosted, 1000),
            ["bundle"] = random.Next(2) == 0 ? null : Bundle(random),
        },
        ["remnants"] = random.Next(3) == 0 ? null : Remnants(random, OnGrid(random, 0m, 40m), isCosted),
        ["effort"] = "quick",
    };

    private static JsonObject Bundle(Random random) =>
        new() { ["mostWide"] = random.Next(1, 5), ["mostHigh"] = random.Next(1, 4), ["largestWidth"] = OnGrid(random, 6m, 40m), ["largestHeight"] = OnGrid(random, 6m, 20m) };

    private static JsonObject Remnants(Random random, decimal keepFrom, bool isCosted) => new()
    {
        ["keepFrom"] = keepFrom,
        ["valueFraction"] = random.Next(101) / 100m,
        ["classes"] = random.Next(2) == 0 ? new JsonArray() : new JsonArray(new JsonObject { ["from"] = keepFrom + OnGrid(random, 1m, 60m), ["valueFraction"] = random.Next(101) / 100m }),
        ["handlingCost"] = Cost(random, isCosted, 2000),
        ["mostNew"] = random.Next(2) == 0 ? random.Next(4) : null,
    };

    private static JsonObject Piece(Random random, int i)
    {
        var quantity = random.Next(1, 9);
        return Stated(random, OnGrid(random, 20m, 130m), new()
        {
            ["pieceId"] = $"P{i}",
            ["section"] = Section(random),
            ["quantity"] = quantity,
            ["under"] = random.Next(3) == 0 ? random.Next(quantity) : 0,
            ["over"] = random.Next(3) == 0 ? random.Next(3) : 0,
            ["priority"] = random.Next(1, 10),
            ["owner"] = random.Next(3) == 0 ? "O1" : null,
            ["plant"] = Plant(random),
            ["tolerance"] = random.Next(3) == 0 ? new JsonObject { ["plus"] = 2 * OnGrid(random, 0m, 0.1m), ["minus"] = 2 * OnGrid(random, 0m, 0.05m) } : null,
            ["lengthAt"] = new[] { "overall", "longSide", "shortSide", "centerline" }[random.Next(4)],
            ["firstEnd"] = End(random, 4),
            ["secondEnd"] = End(random, 3),
        });
    }

    /// <summary>Most miters are of few angles, so that facing ones share cuts and pieces are turned.</summary>
    private static JsonObject? End(Random random, int oneIn)
    {
        if (random.Next(oneIn) > 0)
            return null;
        var angle = random.Next(2) == 0 ? random.Next(-45_000, 45_001) / 1000m : 15m * random.Next(-3, 4);
        return new() { [random.Next(4) == 0 ? "heightAngle" : "widthAngle"] = angle };
    }

    private static JsonObject Stock(Random random, int i, bool isCosted)
    {
        var kind = new[] { "bar", "remnant", "purchasable" }[random.Next(3)];
        var inches = kind == "remnant" ? OnGrid(random, 24m, 200m) : 240m + 240m * random.Next(2);
        return Stated(random, inches, new()
        {
            ["stockId"] = $"S{i}",
            ["kind"] = kind,
            ["section"] = Section(random),
            ["quantity"] = kind == "bar" ? random.Next(0, 5) : null,
            ["endCondition"] = new[] { "sawn", "sheared", "flameCut", "rolled" }[random.Next(4)],
            ["cost"] = isCosted ? random.Next(1, 100_000) / 100m : null,
            ["pullCost"] = Cost(random, isCosted, 5000),
            ["owner"] = random.Next(8) == 0 ? "O1" : null,
            ["plant"] = Plant(random),
            ["foreignPlantCost"] = random.Next(4) > 0 ? Cost(random, isCosted, 5000) : null,
            ["reservedFor"] = random.Next(8) == 0 ? new JsonArray("P0", "P1", "P2", "P3") : null,
            ["zones"] = kind == "remnant" && random.Next(2) == 0 ? Zones(random, inches) : new JsonArray(),
        });
    }

    private static JsonArray Zones(Random random, decimal inches)
    {
        var from = OnGrid(random, 0m, inches / 2);
        return new(new JsonObject { ["from"] = from, ["to"] = from + OnGrid(random, 1m, 8m), ["kind"] = random.Next(3) == 0 ? "reserved" : "defective" });
    }

    private static string Section(Random random) => random.Next(5) == 0 ? "HSS4X4X1/4" : "W8X31";

    private static string? Plant(Random random) => random.Next(4) == 0 ? $"Plant {random.Next(2)}" : null;

    private static decimal Cost(Random random, bool isCosted, int mostCents) => isCosted && random.Next(2) == 0 ? random.Next(mostCents) / 100m : 0m;

    /// <summary>The length as a number, or, to the 64th, as text.</summary>
    public static JsonObject Stated(Random random, decimal inches, JsonObject stated)
    {
        if (random.Next(2) == 0)
        {
            stated["length"] = inches;
            return stated;
        }
        var sixtyFourths = (int)(inches * 64);
        stated["lengthText"] = random.Next(2) == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sixtyFourths / 768}'-{sixtyFourths / 64 % 12} {sixtyFourths % 64}/64\"")
            : string.Create(CultureInfo.InvariantCulture, $"{sixtyFourths / 64} {sixtyFourths % 64}/64 in");
        return stated;
    }

    public static decimal OnGrid(Random random, decimal least, decimal most) => least + Grid * random.NextInt64((long)((most - least) / Grid) + 1);
}
