using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Tests.Nesting;

/// <summary>
/// Problems with all that nesting knows: heats, certificates, owners, plants, miters in one plane and in both, zones, remnants, trims, tails, credits, tolerances,
/// coarse and fine grids of lengths, substitutes, and stock that is too little.
/// </summary>
internal static class RandomProblem
{
    private static readonly string[] Sections = ["SHS 100x100x5 EN 10219", "UPN 100", "L 50x50x5", "IPE 200"];
    private static readonly decimal[] Miters = [-45, -30, 0, 0, 0, 0, 15, 30, 45];
    private static readonly string[] Plants = ["north", "south"];
    private static readonly string?[] Heats = [null, "H1", "H2", "H3"];

    public static NestProblem Of(int seed, int mostLines, int mostQuantity, int mostStock)
    {
        var random = new Random(seed);
        var grades = new RandomGrades(seed);
        var sections = Enumerable.Range(0, random.Next(6) == 0 ? 2 : 1).Select(_ => SectionCatalog.Standard.Find(Sections[random.Next(Sections.Length)])!).ToArray();
        var grid = (Grid)random.Next(4);
        var withMiters = random.Next(2) == 0;
        var withHeats = random.Next(2) == 0;
        var byMoney = random.Next(2) == 0;
        var withHandling = random.Next(2) == 0;
        return new()
        {
            Lines = [.. Enumerable.Range(0, random.Next(1, mostLines + 1)).Select(i => RandomLine(random, i, mostQuantity, withMiters, withHeats, grid) with { Section = sections[random.Next(sections.Length)] }).Select(grades.Of)],
            Stock = [.. Enumerable.Range(0, random.Next(1, mostStock + 1)).Select(i => RandomStock(random, i, withHeats, byMoney, grid) with { Section = sections[random.Next(sections.Length)], PullCostMicros = withHandling ? random.Next(0, 4) * 2_000_000L : 0 }).Select(grades.Of)],
            Rules = new()
            {
                Kerf = grid == Grid.SixtyFourths ? In(random.Next(0, 3) * 0.063m) : Mm(random.Next(0, 4)),
                Tail = Mm(random.Next(3) == 0 ? 0 : random.Next(1, 120)),
                Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10), [EndCondition.Rolled] = Mm(random.Next(0, 150)) },
                ThinnestSlice = Mm(random.Next(2) == 0 ? 0 : 2),
                ShortestPiece = Mm(random.Next(4) == 0 ? 250 : 0),
                LongestPiece = random.Next(4) == 0 ? Mm(2500) : null,
                LoadLimit = random.Next(4) == 0 ? new(100) : null,
                Capacity = random.Next(2) == 0 ? new(Mm(300), Mm(280), Mm(220)) : null,
                MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(30)),
                Bundle = seed % 3 == 0 ? null : new(seed % 5 + 1, seed % 2 + 1) { HoldDown = seed % 4 != 1, LargestWidth = seed % 7 == 0 ? Mm(450) : null },
            },
            Remnants = random.Next(2) == 0 ? RandomRemnants(random, withHandling) : null,
            CostPerCutMicros = withHandling ? random.Next(0, 3) * 1_500_000L : 0,
            ScrapValueMicrosPerKilogram = byMoney && random.Next(2) == 0 ? 200_000 : 0,
            Due = new Dictionary<string, DateTimeOffset>
            {
                ["SO-1"] = new(2026, 12, 2, 0, 0, 0, TimeSpan.Zero),
                ["SO-2"] = new(2026, 12, 1, 0, 0, 0, TimeSpan.Zero),
            },
        };
    }

    private static RemnantRules RandomRemnants(Random random, bool withHandling)
    {
        var keepFrom = random.Next(0, 900);
        return new(Mm(keepFrom), random.Next(0, 11) / 10m)
        {
            Classes = withHandling ? [.. Enumerable.Range(1, random.Next(0, 3)).Select(i => new RemnantClass(Mm(keepFrom + 700 * i), random.Next(0, 11) / 10m))] : [],
            HandlingCostMicros = withHandling ? random.Next(0, 4) * 3_000_000L : 0,
            MostNew = withHandling && random.Next(2) == 0 ? random.Next(0, 4) : null,
        };
    }

    private static OrderLine RandomLine(Random random, int index, int mostQuantity, bool withMiters, bool withHeats, Grid grid)
    {
        var rule = withHeats ? (HeatRule)random.Next(3) : HeatRule.Any;
        var line = Line($"{index:00}", 1, random.Next(1, mostQuantity + 1));
        return line with
        {
            Length = RandomLength(random, 200, 2_900, grid),
            Ref = new($"SO-{random.Next(1, 4)}", $"{index:00}"),
            LengthAt = (LengthAt)random.Next(4),
            Owner = random.Next(3) == 0 ? "C-1" : null,
            Plant = random.Next(2) == 0 ? Plants[random.Next(2)] : null,
            Priority = random.Next(3) == 0 ? random.Next(1, 10) : OrderLine.UsualPriority,
            Tolerance = random.Next(3) == 0 ? new(Mm(random.Next(0, 5)), Mm(random.Next(0, 5) / 10m)) : default,
            Under = random.Next(4) == 0 ? (line.Quantity - 1) / 2 : 0,
            Over = random.Next(4) == 0 ? 2 : 0,
            FirstEnd = withMiters ? RandomEnd(random) : EndCut.Square,
            SecondEnd = withMiters ? RandomEnd(random) : EndCut.Square,
            Certificate = withHeats && random.Next(3) == 0 ? (Certificate)random.Next(6) : Certificate.None,
            HeatRule = rule,
            Heat = rule == HeatRule.Named ? Heats[random.Next(1, 4)] : null,
        };
    }

    private static ValueList<BarZone> RandomZones(Random random, Length bar)
    {
        var marks = Enumerable.Range(0, random.Next(1, 3) * 2).Select(_ => random.Next(0, (int)bar.Millimeters + 1)).Distinct().Order().ToList();
        return [.. Enumerable.Range(0, marks.Count / 2).Select(i => new BarZone(Mm(marks[2 * i]), Mm(marks[2 * i + 1]), (ZoneKind)random.Next(2)))];
    }

    private static EndCut RandomEnd(Random random)
    {
        var angle = Miters[random.Next(Miters.Length)];
        return random.Next(8) switch
        {
            0 => new(Angle.FromDegrees(angle), Angle.FromDegrees(Miters[random.Next(Miters.Length)])),
            1 or 2 => HeightMiter(angle),
            _ => WidthMiter(angle),
        };
    }

    /// <summary>A length of some millimeters, on a grid.</summary>
    private static Length RandomLength(Random random, int least, int below, Grid grid)
    {
        var millimeters = random.Next(least, below);
        return grid switch
        {
            Grid.Millimeter => Mm(millimeters),
            Grid.TenthMillimeter => Mm(millimeters + random.Next(10) / 10m),
            Grid.SixtyFourths => In(decimal.Round(millimeters / 25.4m * 64) / 64),
            _ => Mm(millimeters + random.Next(1000) / 1000m),
        };
    }

    private enum Grid
    {
        Millimeter,
        TenthMillimeter,
        SixtyFourths,
        Micrometer,
    }

    private static StockItem RandomStock(Random random, int index, bool withHeats, bool byMoney, Grid grid)
    {
        var kind = (StockKind)random.Next(3);
        int? quantity = kind switch { StockKind.Remnant => 1, StockKind.Bar => random.Next(1, 4), _ => random.Next(2) == 0 ? null : random.Next(1, 4) };
        var length = RandomLength(random, 600, 6_100, grid);
        var bar = Bar($"S{index:00}", 1, quantity) with { Length = length, CostMicros = length.Nanometers };
        return bar with
        {
            Kind = kind,
            Zones = random.Next(5) == 0 ? RandomZones(random, bar.Length) : [],
            Owner = random.Next(8) == 0 ? "C-1" : null,
            Plant = random.Next(3) == 0 ? Plants[random.Next(2)] : null,
            ForeignPlantCostMicros = random.Next(2) == 0 ? random.Next(0, 4) * 4_000_000L : null,
            ReservedFor = random.Next(8) == 0 ? [$"SO-{random.Next(1, 4)}"] : null,
            EndCondition = (EndCondition)random.Next(4),
            CostMicros = byMoney ? random.Next(0, 20) * 5_000_000L : bar.CostMicros,
            Heat = withHeats ? Heats[random.Next(4)] : null,
            Certificate = (Certificate)random.Next(6),
        };
    }
}
