using System.Diagnostics;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Benchmarks.Quality;

/// <summary>A nest of an instance, its time, and what is wrong with it.</summary>
internal sealed record MeasuredNest(NestingInstance Instance, Nest Nest, double Seconds)
{
    /// <summary>Nests an instance with a limit of seconds, none where it is null.</summary>
    public static MeasuredNest Of(INester nester, NestingInstance instance, Effort effort, double? limit)
    {
        using var cancellation = limit is { } seconds ? new CancellationTokenSource(TimeSpan.FromSeconds(seconds)) : new CancellationTokenSource();
        var watch = Stopwatch.StartNew();
        var nest = nester.Solve(instance.Problem, effort, cancellation.Token);
        return new(instance, nest, watch.Elapsed.TotalSeconds);
    }

    /// <summary>Pieces that are not in the nest.</summary>
    public int Unplaced => Nest.Unplaced.Sum(row => row.Quantity);

    /// <summary>Bars cut.</summary>
    public int Bars => Nest.Layouts.Sum(layout => layout.Repeat);

    /// <summary>Whether every piece is placed and the value is proved to be the least.</summary>
    public bool IsProved => Unplaced == 0 && Nest.BoundMicros == Nest.ValueMicros;

    /// <summary>Whether every piece is placed at the known least cost.</summary>
    public bool MatchesOptimum => Unplaced == 0 && Nest.ValueMicros == Instance.OptimumMicros;

    /// <summary>Whether every piece is placed and the value is above the optimum, or the bound where none is known, by at most the cheapest bar that is no remnant.</summary>
    public bool IsWithinOneBar => Unplaced == 0 && Nest.ValueMicros - (Instance.OptimumMicros ?? Nest.BoundMicros) <= CheapestBar;

    /// <summary>How far the value is above the engine's own bound, in percent of the bound; null where pieces are unplaced or the bound is not positive.</summary>
    public double? GapPercent => Unplaced > 0 || Nest.BoundMicros <= 0 ? null : 100d * (Nest.ValueMicros - Nest.BoundMicros) / Nest.BoundMicros;

    private long CheapestBar => Instance.Problem.Stock.Where(item => item.Kind != Core.Stock.StockKind.Remnant).Select(item => item.CostMicros).DefaultIfEmpty().Min();

    /// <summary>Rules that the nest breaks, and contradictions to what is known of the instance.</summary>
    public IEnumerable<string> Faults()
    {
        foreach (var violation in NestVerifier.Verify(Instance.Problem, Nest))
            yield return $"{violation.Code}: {violation.Detail}";
        if (Nest.BoundMicros > Instance.OptimumMicros)
            yield return $"the bound {Nest.BoundMicros} is above the known optimum {Instance.OptimumMicros}";
        if (Unplaced == 0 && Nest.ValueMicros < (Instance.OptimumMicros ?? Instance.LowerBoundMicros))
            yield return $"the value {Nest.ValueMicros} is below the known optimum or bound {Instance.OptimumMicros ?? Instance.LowerBoundMicros}";
    }
}
