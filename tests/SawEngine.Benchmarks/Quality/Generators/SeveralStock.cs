using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// Several stock lengths (after Belov and Scheithauer 2002): the longest 10000, the others uniform on its upper half; 100 lengths uniform on
/// 1 to three quarters of it, demands uniform on 1 to 100; cost is length. Supplies are limited; that of the longest suffices by itself.
/// </summary>
internal static class SeveralStock
{
    private const int Longest = 10_000;
    private const int Lengths = 100;

    public static NestingInstance Of(int stockLengths, int seed)
    {
        var random = SplitMix.Of($"several-stock-{stockLengths}", seed);
        var others = Distinct(random, stockLengths - 1, Longest / 2, Longest - 1).OrderDescending().ToList();
        var pieces = Distinct(random, Lengths, 1, Longest * 3 / 4).OrderDescending().Select(length => new WantedPiece(length * BarProblem.Unit, random.Between(1, 100))).ToList();
        // No two neighboring bars of a first fit are half empty, so that twice the bars of a perfect fit suffice.
        var plenty = (int)(2 * pieces.Sum(piece => piece.Length * piece.Demand) / (Longest * BarProblem.Unit)) + 1;
        var bars = others.Select(length => Bar(length, random.Between(1, plenty / stockLengths))).Prepend(Bar(Longest, plenty));
        return new($"{seed}", new BarProblem(0, 0, [.. bars], pieces).ToNestProblem());
    }

    private static OfferedBar Bar(int length, int available) => new(StockKind.Bar, length * BarProblem.Unit, available, length * BarProblem.Unit);

    private static List<int> Distinct(SplitMix random, int count, int least, int most)
    {
        var drawn = new List<int>(count);
        while (drawn.Count < count)
        {
            var value = random.Between(least, most);
            if (!drawn.Contains(value))
                drawn.Add(value);
        }
        return drawn;
    }
}
