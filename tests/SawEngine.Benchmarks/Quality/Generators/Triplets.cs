namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>Bars of 1000, each filled exactly by three pieces, so that a third of the pieces is the optimum (Falkenauer 1996).</summary>
internal static class Triplets
{
    private const int Capacity = 1000;

    public static NestingInstance Of(int pieces, int seed)
    {
        var random = SplitMix.Of($"triplets-{pieces}", seed);
        var bars = pieces / 3;
        var problem = BarProblem.FewestBars(Capacity, Enumerable.Range(0, bars).SelectMany(_ => Triplet(random)));
        return new($"{seed}", problem.ToNestProblem(), OptimumMicros: bars * BarProblem.OneBar);
    }

    private static int[] Triplet(SplitMix random)
    {
        var first = random.Between(380, 499);
        var second = random.Between(250, (Capacity - first) / 2);
        return [first, second, Capacity - first - second];
    }
}
