using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// Orders with all that nesting knows, in money: raw ends of several conditions, trim, kept remnants, scrap, heats, certificates, miters, bars to pull and passes to pay, and
/// cut bundles of up to four bars.
/// Mill lengths of every heat and document can be bought, so that every piece can be placed.
/// </summary>
internal static class Everything
{
    private const int CostMicrosPerMillimeter = 40_000;
    private const long PullMicros = 4_000_000;
    private static readonly Section Tube = SectionCatalog.Standard.Find("SHS 100x100x5 EN 10219")!;
    private static readonly Grade Steel = GradeCatalog.Standard.Find("S355J2H")!;
    private static readonly string[] Heats = ["H1", "H2", "H3"];
    private static readonly int[] MillMillimeters = [6000, 6500, 12_000];
    private static readonly int[] MiterDegrees = [-45, -30, -15, 15, 30, 45];

    /// <summary>The sizes: lengths, pieces, remnants.</summary>
    public static readonly IReadOnlyList<(int Lengths, int Pieces, int Remnants)> Sizes = [(12, 60, 30), (20, 300, 40), (40, 800, 100)];

    public static NestingInstance Of((int Lengths, int Pieces, int Remnants) size, int seed)
    {
        var random = SplitMix.Of($"everything-{size.Lengths}", seed);
        var demands = ShopOrders.Demands(random, size.Lengths, size.Pieces);
        var problem = new NestProblem
        {
            Lines = [.. demands.Select((demand, i) => Line(random, i, demand)).OrderBy(line => line.Ref)],
            Stock =
            [
                .. Heats.SelectMany(heat => MillMillimeters.Select(length => Mill(heat, length))),
                .. Enumerable.Range(0, size.Remnants).Select(i => Remnant(random, i)),
            ],
            Rules = new()
            {
                Kerf = Length.FromMillimeters(1.6m),
                Tail = Length.FromMillimeters(300),
                ThinnestSlice = Length.FromMillimeters(2),
                ShortestPiece = Length.FromMillimeters(50),
                Trim = new Dictionary<EndCondition, Length>
                {
                    [EndCondition.Sheared] = Length.FromMillimeters(10),
                    [EndCondition.FlameCut] = Length.FromMillimeters(20),
                    [EndCondition.Rolled] = Length.FromMillimeters(15),
                },
                Capacity = new(Length.FromMillimeters(250), Length.FromMillimeters(300), Length.FromMillimeters(250)),
                MiterRange = new(Angle.FromDegrees(60), Angle.FromDegrees(60)),
                Bundle = new(2, 2) { HoldDown = true },
            },
            Remnants = new(Length.FromMillimeters(800), 0.6m),
            ScrapValueMicrosPerKilogram = 200_000,
            CostPerCutMicros = 1_000_000,
        };
        return new($"{seed}", problem);
    }

    private static OrderLine Line(SplitMix random, int place, int demand)
    {
        var mitered = random.Percent(30);
        var rule = random.Percent(80) ? HeatRule.Any : random.Percent(60) ? HeatRule.Single : HeatRule.Named;
        return new()
        {
            Ref = new($"SO-{random.Between(1, 5)}", $"{place:000}"),
            Section = Tube,
            Grade = Steel,
            Length = Length.FromMillimeters(random.Between(mitered ? 5000 : 1500, 31_999) / 10m),
            LengthAt = mitered ? random.Of(LengthAt.Overall, LengthAt.LongSide, LengthAt.ShortSide, LengthAt.Centerline) : LengthAt.Overall,
            Quantity = demand,
            FirstEnd = mitered ? Miter(random) : EndCut.Square,
            SecondEnd = mitered && random.Percent(70) ? Miter(random) : EndCut.Square,
            Certificate = random.Percent(60) ? Certificate.None : random.Of(Certificate.Type22, Certificate.Type31),
            HeatRule = rule,
            Heat = rule == HeatRule.Named ? random.Of(Heats) : null,
        };
    }

    private static EndCut Miter(SplitMix random) => new(Angle.Zero, Angle.FromDegrees(random.Of(MiterDegrees)));

    private static StockItem Mill(string heat, int millimeters) => new()
    {
        StockId = $"M-{heat}-{millimeters:00000}",
        Kind = StockKind.Purchasable,
        Section = Tube,
        Grade = Steel,
        Length = Length.FromMillimeters(millimeters),
        Quantity = null,
        PullCostMicros = PullMicros,
        EndCondition = EndCondition.Rolled,
        CostMicros = (long)millimeters * CostMicrosPerMillimeter,
        Heat = heat,
        Certificate = Certificate.Type31,
    };

    private static StockItem Remnant(SplitMix random, int place)
    {
        var tenths = random.Between(8000, 54_999);
        var known = random.Percent(80);
        return new()
        {
            StockId = $"R-{place:000}",
            Kind = StockKind.Remnant,
            Section = Tube,
            Grade = Steel,
            Length = Length.FromMillimeters(tenths / 10m),
            EndCondition = random.Of(EndCondition.Sawn, EndCondition.Sheared, EndCondition.FlameCut, EndCondition.Rolled),
            CostMicros = tenths * (CostMicrosPerMillimeter / 10L) * 9 / 10,
            PullCostMicros = PullMicros,
            Heat = known ? random.Of(Heats) : null,
            Certificate = known ? random.Of(Certificate.None, Certificate.Type22, Certificate.Type31) : Certificate.None,
        };
    }
}
