using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// The generator CUTGEN1 (Gau and Waescher 1995): bars of 10000, lengths uniform between 1 and a share of it, a total demand of
/// lengths times mean demand, split in proportion to uniform numbers, each at least 1.
/// </summary>
internal static class Cutgen
{
    private const int Capacity = 10_000;

    public static NestingInstance Of(int lengths, int longestPercent, int meanDemand, int seed)
    {
        var random = SplitMix.Of($"cutgen-{lengths}-{longestPercent}-{meanDemand}", seed);
        var pieces = Demands(random, lengths, lengths * meanDemand)
            .Select(demand => (Length: random.Between(1, Capacity * longestPercent / 100), Demand: demand))
            .GroupBy(piece => piece.Length, (length, alike) => new WantedPiece(length * BarProblem.Unit, alike.Sum(piece => piece.Demand)))
            .OrderByDescending(piece => piece.Length);
        var problem = new BarProblem(0, 0, [new(StockKind.Purchasable, Capacity * BarProblem.Unit, null, BarProblem.OneBar)], [.. pieces]);
        return new($"{seed}", problem.ToNestProblem());
    }

    private static List<int> Demands(SplitMix random, int lengths, int total)
    {
        var shares = Enumerable.Range(0, lengths).Select(_ => random.Unit()).ToList();
        var sum = shares.Sum();
        var demands = shares.SkipLast(1).Select(share => Math.Max(1, (int)(share / sum * total + 0.5))).ToList();
        demands.Add(Math.Max(1, total - demands.Sum()));
        return demands;
    }
}
