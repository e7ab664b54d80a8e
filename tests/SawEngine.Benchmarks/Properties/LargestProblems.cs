using SawEngine.Api.Wire;
using SawEngine.Benchmarks.Quality;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Properties;

/// <summary>Problems as large as the service accepts them, each with another thing that may grow.</summary>
internal static class LargestProblems
{
    private static readonly Section Tube = SectionCatalog.Standard.Find("SHS 100x100x5 EN 10219")!;
    private static readonly Grade Steel = GradeCatalog.Standard.Find("S355J2H")!;
    private static readonly Dictionary<EndCondition, Length> Trims = new() { [EndCondition.Rolled] = Length.FromMillimeters(15) };

    /// <summary>By name, in the order in which they are reported.</summary>
    public static readonly IReadOnlyList<(string Name, Func<NestProblem> Make)> All =
    [
        ("lengths-mill", () => Of(Limits.Lines, 3, "lengths-mill")),
        ("lengths-stock", () => Of(Limits.Lines, Limits.StockItems, "lengths-stock")),
        ("lengths-500", () => Of(500, 3, "lengths-500")),
        ("lengths-500-remnants", () => Of(500, Limits.StockItems, "lengths-500-remnants")),
        ("fine-grid", () => Of(Limits.Lines, 3, "fine-grid", grid: 1_000)),
        ("few-lengths", () => Of(5, Limits.StockItems, "few-lengths")),
        ("short-stock", () => Of(Limits.Lines, 200, "short-stock", unlimited: false)),
        ("tiny-pieces", () => Of(Limits.Lines, 3, "tiny-pieces", longest: 120)),
        ("one-long-bar", () => OneLongBar(10_000)),
        ("one-long-bar-nanometers", () => OneLongBar(1)),
        ("heats", () => Everything("heats", random => random.Percent(50) ? HeatRule.Single : HeatRule.Named, withMiters: false, owners: 1, plants: 1)),
        ("owners-plants", () => Everything("owners-plants", _ => HeatRule.Any, withMiters: false, owners: 40, plants: 20)),
        ("miters", () => Everything("miters", _ => HeatRule.Any, withMiters: true, owners: 1, plants: 1)),
        ("everything", () => Everything("everything", random => random.Of(HeatRule.Any, HeatRule.Single, HeatRule.Named), withMiters: true, owners: 10, plants: 5)),
    ];

    /// <summary>Many lengths and as many pieces as there may be, from mill lengths and remnants.</summary>
    private static NestProblem Of(int lengths, int stock, string name, long grid = 100_000, bool unlimited = true, int longest = 3_200)
    {
        var random = SplitMix.Of(name, 1);
        var each = Limits.TotalQuantity / lengths;
        return new()
        {
            Lines = [.. Enumerable.Range(0, lengths).Select(i => new OrderLine { Ref = new("", $"{i:0000}"), Length = RandomLength(random, 100, longest, grid), Quantity = each })],
            Stock =
            [
                .. Enumerable.Range(0, stock).Select(i => i < 3
                    ? Bar(i, Length.FromMillimeters(6_000 + 2_000 * i), unlimited ? null : 2_000)
                    : Bar(i, RandomLength(random, 800, 5_500, grid), 1)),
            ],
            Rules = new() { Kerf = Length.FromMillimeters(1.6m), Tail = Length.FromMillimeters(100) },
            Remnants = new(Length.FromMillimeters(800), 0.6m),
        };
    }

    /// <summary>Lengths with nothing in common on one bar as long as may be: pieces without waste.</summary>
    private static NestProblem OneLongBar(long grid)
    {
        var random = SplitMix.Of("one-long-bar", 1);
        var lines = Enumerable.Range(0, 200).Select(i => new OrderLine { Ref = new("", $"{i:0000}"), Length = RandomLength(random, 10_000, 300_000, grid), Quantity = 20 }).ToList();
        return new()
        {
            Lines = lines,
            Stock = [Bar(0, Length.FromMillimeters(Limits.Length), null)],
            Rules = new() { Kerf = Length.Zero },
        };
    }

    private static NestProblem Everything(string name, Func<SplitMix, HeatRule> rule, bool withMiters, int owners, int plants)
    {
        var random = SplitMix.Of(name, 1);
        return new()
        {
            Lines = [.. Enumerable.Range(0, Limits.Lines).Select(i => Line(random, i, rule(random), withMiters, owners, plants)).OrderBy(line => line.Ref)],
            Stock = [.. Enumerable.Range(0, Limits.StockItems).Select(i => Stock(random, i, owners, plants))],
            Rules = new() { Kerf = Length.FromMillimeters(1.6m), Tail = Length.FromMillimeters(100), ThinnestSlice = Length.FromMillimeters(2), Trim = Trims },
            Remnants = new(Length.FromMillimeters(800), 0.6m) { HandlingCostMicros = 2_000_000, MostNew = 50 },
            ScrapValueMicrosPerKilogram = 200_000,
            CostPerCutMicros = 1_500_000,
        };
    }

    private static OrderLine Line(SplitMix random, int i, HeatRule rule, bool withMiters, int owners, int plants) => new()
    {
        Ref = new($"SO-{random.Between(1, 100):000}", $"{i:0000}"),
        Section = Tube,
        Grade = Steel,
        Length = RandomLength(random, 400, 3_200, 100_000),
        LengthAt = random.Of(LengthAt.Overall, LengthAt.LongSide, LengthAt.ShortSide, LengthAt.Centerline),
        Quantity = Limits.TotalQuantity / Limits.Lines,
        FirstEnd = withMiters ? Miter(random) : EndCut.Square,
        SecondEnd = withMiters ? Miter(random) : EndCut.Square,
        Owner = owners > 1 && random.Percent(50) ? $"C-{random.Between(1, owners)}" : null,
        Plant = plants > 1 && random.Percent(80) ? $"P-{random.Between(1, plants)}" : null,
        Priority = random.Between(1, 9),
        Certificate = random.Percent(60) ? Certificate.None : random.Of(Certificate.Type21, Certificate.Type22, Certificate.Type31),
        HeatRule = rule,
        Heat = rule == HeatRule.Named ? $"H-{random.Between(1, 50)}" : null,
    };

    private static StockItem Stock(SplitMix random, int i, int owners, int plants)
    {
        var isBar = i % 2 == 0;
        var bar = Bar(i, isBar ? Length.FromMillimeters(random.Of(6_000, 6_500, 12_000)) : RandomLength(random, 800, 5_500, 100_000), isBar ? random.Between(1, 20) : 1);
        return bar with
        {
            Section = Tube,
            Grade = Steel,
            EndCondition = random.Of(EndCondition.Sawn, EndCondition.Rolled),
            Owner = owners > 1 && random.Percent(20) ? $"C-{random.Between(1, owners)}" : null,
            Plant = plants > 1 && random.Percent(80) ? $"P-{random.Between(1, plants)}" : null,
            ForeignPlantCostMicros = random.Percent(50) ? 5_000_000L * random.Between(1, 5) : null,
            Heat = $"H-{random.Between(1, 50)}",
            Certificate = random.Of(Certificate.Type22, Certificate.Type31, Certificate.Type32),
        };
    }

    private static EndCut Miter(SplitMix random) => random.Percent(10)
        ? new(Angle.FromDegrees(random.Between(-45, 45)), Angle.FromDegrees(random.Between(-45, 45)))
        : new(Angle.Zero, Angle.FromDegrees(random.Between(-45, 45)));

    private static StockItem Bar(int i, Length length, int? quantity) => new()
    {
        StockId = $"S{i:0000}",
        Kind = quantity switch { null => StockKind.Purchasable, 1 => StockKind.Remnant, _ => StockKind.Bar },
        Length = length,
        Quantity = quantity,
        CostMicros = length.Nanometers / 10 * (quantity == 1 ? 9 : 10),
    };

    private static Length RandomLength(SplitMix random, int leastMillimeters, int mostMillimeters, long grid) =>
        new(leastMillimeters * BarProblem.Unit + (long)(random.Unit() * (mostMillimeters - leastMillimeters) * BarProblem.Unit) / grid * grid);
}
