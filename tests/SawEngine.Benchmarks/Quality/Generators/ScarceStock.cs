using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// Bars that just suffice: they are cut up at random into pieces of a sixth to three quarters of the longest, a share of each is waste, and then there are no others.
/// All pieces can be placed by their making; cost is length.
/// </summary>
internal static class ScarceStock
{
    private const int Longest = 10_000;
    private const int Bars = 150;
    private const int Lengths = 60;

    public static NestingInstance Of(int stockLengths, int wastePerMille, int seed)
    {
        var random = SplitMix.Of($"scarce-stock-{stockLengths}-{wastePerMille}", seed);
        var lengths = Enumerable.Range(0, stockLengths).Select(i => i == 0 ? Longest : random.Between(Longest / 2, Longest - 1)).ToArray();
        var wanted = Enumerable.Range(0, Lengths).Select(_ => random.Between(Longest / 6, Longest * 3 / 4)).Order().ToArray();
        var (bars, pieces) = (new int[stockLengths], new List<int>());
        for (var bar = 0; bar < Bars; bar++)
        {
            var kind = random.Between(0, stockLengths - 1);
            bars[kind]++;
            Cut(random, lengths[kind] * (1000 - wastePerMille) / 1000, wanted, pieces);
        }
        var problem = new BarProblem(
            0,
            0,
            [.. lengths.Zip(bars).Where(bar => bar.Second > 0).Select(bar => new OfferedBar(StockKind.Bar, bar.First * BarProblem.Unit, bar.Second, bar.First * BarProblem.Unit))],
            [.. pieces.CountBy(length => length).OrderByDescending(piece => piece.Key).Select(piece => new WantedPiece(piece.Key * BarProblem.Unit, piece.Value))]);
        return new($"{seed}", problem.ToNestProblem());
    }

    /// <summary>Cuts wanted lengths from a bar at random; the last piece takes all that is left.</summary>
    private static void Cut(SplitMix random, int room, int[] wanted, List<int> pieces)
    {
        while (room > 0)
        {
            var fitting = Array.FindLastIndex(wanted, length => length <= room - wanted[0]);
            var piece = fitting < 0 ? room : wanted[random.Between(0, fitting)];
            pieces.Add(piece);
            room -= piece;
        }
    }
}
