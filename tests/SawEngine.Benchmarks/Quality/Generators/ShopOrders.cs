using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// Orders as a shop has them: many different lengths of 0.15 to 3.2 m, three mill lengths and single remnants at 0.9 of the cost.
/// A piece takes its length and a kerf of 1.6 mm, 300 mm of each bar are held in the vise.
/// </summary>
internal static class ShopOrders
{
    private const long TenthMillimeter = 100_000;
    private const long SixtyFourth = 396_875;
    private const int Kerf = 16;
    private const long KerfByTheInch = 1_600_200;
    private const int Tail = 3000;
    private static readonly int[] MillLengths = [60_000, 65_000, 120_000];

    /// <summary>The sizes: lengths, pieces, remnants.</summary>
    public static readonly IReadOnlyList<(int Lengths, int Pieces, int Remnants)> Sizes = [(5, 15, 4), (8, 30, 10), (12, 60, 30), (20, 300, 40), (40, 800, 100), (60, 2000, 200)];

    /// <summary>An order of a size. Orders of one size and seed differ by nothing but the grid.</summary>
    public static BarProblem Of((int Lengths, int Pieces, int Remnants) size, LengthGrid grid, int seed)
    {
        var name = $"shop-{size.Lengths}-{size.Pieces}-{size.Remnants}";
        var random = SplitMix.Of(name, seed);
        var lengths = DistinctLengths(random, size.Lengths);
        var demands = Demands(random, size.Lengths, size.Pieces);
        var remnants = Enumerable.Range(0, size.Remnants).Select(_ => random.Between(8000, 54_999)).ToList();
        var beyond = SplitMix.Of($"{name}-micrometers", seed);
        var kerf = grid == LengthGrid.SixtyFourths ? KerfByTheInch : Kerf * TenthMillimeter;
        return new(
            kerf,
            OnGrid(Tail, grid),
            [
                .. MillLengths.Select(length => OnGrid(length, grid)).Select(length => new OfferedBar(StockKind.Purchasable, length, null, length)),
                .. remnants.Select(length => OnGrid(length, grid, beyond)).Select(length => new OfferedBar(StockKind.Remnant, length, 1, length * 9 / 10)),
            ],
            [.. lengths.Zip(demands, (length, demand) => new WantedPiece(OnGrid(length, grid, beyond), demand))]);
    }

    /// <summary>Counts that add up to the pieces, each at least 1, the rest at random.</summary>
    public static int[] Demands(SplitMix random, int lengths, int pieces)
    {
        var demands = Enumerable.Repeat(1, lengths).ToArray();
        for (var left = pieces - lengths; left > 0; left--)
            demands[random.Between(0, lengths - 1)]++;
        return demands;
    }

    private static List<int> DistinctLengths(SplitMix random, int count)
    {
        var lengths = new SortedSet<int>();
        while (lengths.Count < count)
            lengths.Add(random.Between(1500, 31_999));
        return [.. lengths.Reverse()];
    }

    private static long OnGrid(int tenths, LengthGrid grid, SplitMix? beyond = null) => grid switch
    {
        LengthGrid.SixtyFourths => (tenths * TenthMillimeter + SixtyFourth / 2) / SixtyFourth * SixtyFourth,
        LengthGrid.Micrometer when beyond is not null => tenths * TenthMillimeter + beyond.Between(0, 99) * 1000L,
        _ => tenths * TenthMillimeter,
    };
}
