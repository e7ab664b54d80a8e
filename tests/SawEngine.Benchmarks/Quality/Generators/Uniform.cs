namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>Bins of 150, pieces uniform on 20 to 100 (Falkenauer 1996).</summary>
internal static class Uniform
{
    public static NestingInstance Of(int pieces, int seed)
    {
        var random = SplitMix.Of($"uniform-{pieces}", seed);
        return new($"{seed}", BarProblem.FewestBars(150, Enumerable.Range(0, pieces).Select(_ => random.Between(20, 100))).ToNestProblem());
    }
}
