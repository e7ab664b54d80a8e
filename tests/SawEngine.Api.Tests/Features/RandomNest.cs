using System.Globalization;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features;

/// <summary>Random requests for a nest, in inches, whose lengths lie on the grid of both units (0.000005 in = 0.000127 mm).</summary>
internal static class RandomNest
{
    private const decimal Grid = 0.000005m;

    public static JsonObject Of(Random random, bool isCosted) => new()
    {
        ["lengthUnit"] = "in",
        ["pieces"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 9)).Select(i => Piece(random, i))]),
        ["stock"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 8)).Select(i => Stock(random, i, isCosted))]),
        ["cut"] = new JsonObject { ["kerf"] = OnGrid(random, 0m, 0.2m), ["trim"] = OnGrid(random, 0m, 2m), ["tail"] = OnGrid(random, 0m, 5m) },
        ["remnants"] = random.Next(3) == 0 ? null : new JsonObject { ["keepFrom"] = OnGrid(random, 0m, 40m), ["valueFraction"] = random.Next(101) / 100m },
        ["effort"] = "quick",
    };

    private static JsonObject Piece(Random random, int i) => Stated(random, OnGrid(random, 20m, 130m), new()
    {
        ["pieceId"] = $"P{i}",
        ["section"] = "W8X31",
        ["quantity"] = random.Next(1, 9),
        ["lengthAt"] = new[] { "overall", "longSide", "shortSide", "centerline" }[random.Next(4)],
        ["secondEnd"] = random.Next(3) == 0 ? new JsonObject { ["widthAngle"] = random.Next(-45_000, 45_001) / 1000m } : null,
    });

    private static JsonObject Stock(Random random, int i, bool isCosted)
    {
        var kind = new[] { "bar", "remnant", "purchasable" }[random.Next(3)];
        return Stated(random, kind == "remnant" ? OnGrid(random, 24m, 200m) : 240m + 240m * random.Next(2), new()
        {
            ["stockId"] = $"S{i}",
            ["kind"] = kind,
            ["section"] = "W8X31",
            ["quantity"] = kind == "bar" ? random.Next(0, 5) : null,
            ["endCondition"] = new[] { "sawn", "sheared", "flameCut", "rolled" }[random.Next(4)],
            ["cost"] = isCosted ? random.Next(1, 100_000) / 100m : null,
        });
    }

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
