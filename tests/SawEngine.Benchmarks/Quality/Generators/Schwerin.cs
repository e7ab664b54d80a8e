namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>Bars of 1000, pieces uniform on 150 to 200 (Schwerin and Waescher 1997).</summary>
internal static class Schwerin
{
    public static NestingInstance Of(int pieces, int seed)
    {
        var random = SplitMix.Of($"schwerin-{pieces}", seed);
        return new($"{seed}", BarProblem.FewestBars(1000, Enumerable.Range(0, pieces).Select(_ => random.Between(150, 200))).ToNestProblem());
    }
}
