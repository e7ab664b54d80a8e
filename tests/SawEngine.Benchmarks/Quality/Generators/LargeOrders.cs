using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// 200 lengths uniform on 1 to a share of a bar of 1 500 000, demands uniform on 1 to 100: fewest bars of one length, or least length of several, the longest endless.
/// </summary>
internal static class LargeOrders
{
    private const int Lengths = 200;
    private const int Longest = 1_500_000;

    public static NestingInstance Of(int longestPercent, int stockLengths, int seed)
    {
        var random = SplitMix.Of($"large-200-{longestPercent}-{stockLengths}", seed);
        var pieces = Enumerable.Range(0, Lengths).Select(_ => (Length: random.Between(1, Longest / 100 * longestPercent), Demand: random.Between(1, 100)))
            .GroupBy(piece => piece.Length, (length, alike) => new WantedPiece(length * BarProblem.Unit, alike.Sum(piece => piece.Demand)))
            .OrderByDescending(piece => piece.Length);
        var others = Enumerable.Range(1, stockLengths - 1).Select(_ => random.Between(Longest / 2, Longest - 1)).Distinct().OrderDescending();
        IEnumerable<OfferedBar> bars = stockLengths == 1
            ? [new(StockKind.Purchasable, Longest * BarProblem.Unit, null, BarProblem.OneBar)]
            : [new(StockKind.Purchasable, Longest * BarProblem.Unit, null, Longest), .. others.Select(length => new OfferedBar(StockKind.Bar, length * BarProblem.Unit, random.Between(1, 200), length))];
        return new($"{seed}", new BarProblem(0, 0, [.. bars], [.. pieces]).ToNestProblem());
    }
}
