using SawEngine.Benchmarks.Quality.Generators;

namespace SawEngine.Benchmarks.Quality;

/// <summary>The sets made by generators, in the order in which they are reported.</summary>
internal static class GeneratedSets
{
    private const string ByLengths = "growth-lengths";
    private const string ByRemnants = "growth-remnants";

    /// <summary>The sets of a name, or of all names that go on with a dash behind it; seeds count from 1.</summary>
    public static IReadOnlyList<NestingSet> Named(string name, int seeds)
    {
        var sets = All().Where(set => set.Name == name || set.Name.StartsWith(name + "-", StringComparison.Ordinal)).ToList();
        return sets.Count > 0
            ? [.. sets.Select(set => set.Of(seeds))]
            : throw new FormatException($"'{name}' is no generated set; these are: {string.Join(' ', All().Select(set => set.Name))}.");
    }

    private static IEnumerable<Generated> All() =>
    [
        .. new[] { 120, 250, 500, 1000 }.Select(n => new Generated($"uniform-{n}", seed => Uniform.Of(n, seed))),
        .. new[] { 60, 120, 249, 501 }.Select(n => new Generated($"triplets-{n}", seed => Triplets.Of(n, seed))),
        .. new[] { 100, 120 }.Select(n => new Generated($"schwerin-{n}", seed => Schwerin.Of(n, seed))),
        .. CutgenGrid(),
        .. new[] { 2, 4, 7, 10 }.Select(m => new Generated($"several-stock-{m}", seed => SeveralStock.Of(m, seed))),
        .. new[] { (1, 0), (2, 10), (4, 10), (4, 20), (8, 20) }.Select(one => new Generated($"scarce-stock-{one.Item1}-{one.Item2}", seed => ScarceStock.Of(one.Item1, one.Item2, seed)) { BesideGreedy = true }),
        .. new[] { (30, 1), (75, 1), (50, 4) }.Select(one => new Generated($"large-200-{one.Item1}-{one.Item2}", seed => LargeOrders.Of(one.Item1, one.Item2, seed))),
        new("non-round-up", NonRoundUp.Of),
        .. Shops("shop", LengthGrid.TenthMillimeter),
        .. Shops("shop-64ths", LengthGrid.SixtyFourths),
        .. Shops("shop-micrometers", LengthGrid.Micrometer),
        .. new[] { 10, 20, 40, 80, 160 }.Select(k => Shop($"{ByLengths}-{k}", (k, 20 * k, 30), LengthGrid.TenthMillimeter) with { Growth = (ByLengths, k) }),
        .. new[] { 1, 10, 100, 400 }.Select(r => Shop($"{ByRemnants}-{r}", (40, 800, r), LengthGrid.TenthMillimeter) with { Growth = (ByRemnants, r) }),
        .. Everything.Sizes.Select(size => new Generated($"everything-{size.Lengths}", seed => Everything.Of(size, seed)) { BesideGreedy = true }),
    ];

    private static IEnumerable<Generated> CutgenGrid() =>
        from lengths in new[] { 10, 20, 30, 40, 50 }
        from longestPercent in new[] { 25, 50, 75, 100 }
        from meanDemand in new[] { 10, 50 }
        select new Generated($"cutgen-{lengths}-{longestPercent}-{meanDemand}", seed => Cutgen.Of(lengths, longestPercent, meanDemand, seed));

    private static IEnumerable<Generated> Shops(string name, LengthGrid grid) =>
        ShopOrders.Sizes.Select(size => Shop($"{name}-{size.Lengths}", size, grid));

    private static Generated Shop(string name, (int Lengths, int Pieces, int Remnants) size, LengthGrid grid) =>
        new(name, seed => new($"{seed}", ShopOrders.Of(size, grid, seed).ToNestProblem()));

    private sealed record Generated(string Name, Func<int, NestingInstance> Make)
    {
        public bool BesideGreedy { get; init; }

        public (string Curve, int Size)? Growth { get; init; }

        public NestingSet Of(int seeds) => new(Name, Enumerable.Range(1, seeds).Select(Make), BesideGreedy, Growth);
    }
}
