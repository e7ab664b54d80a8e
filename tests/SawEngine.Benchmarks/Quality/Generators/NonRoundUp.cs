namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>
/// Instances whose linear program, rounded up, is a bar below the optimum: bars of 132 and lengths 44, 33, 12, of which 2, 3 and 6 fill 1.96 bars but need 3
/// (arithmetic of 132 = 3 x 44 = 4 x 33 = 11 x 12); scaled, and with whole bars of each length more.
/// </summary>
internal static class NonRoundUp
{
    private static readonly (int Length, int Demand)[] Core = [(44, 2), (33, 3), (12, 6)];

    public static NestingInstance Of(int seed)
    {
        var random = SplitMix.Of("non-round-up", seed);
        var scale = random.Between(1, 11_000);
        var pieces = Core.SelectMany(piece => Enumerable.Repeat(piece.Length * scale, piece.Demand + 132 / piece.Length * random.Between(0, 3)));
        return new($"{seed}", BarProblem.FewestBars(132 * scale, pieces).ToNestProblem());
    }
}
