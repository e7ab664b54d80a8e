using System.Diagnostics;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Benchmarks.Quality;

/// <summary>Nests small instances until the runtime has compiled what is hot, so that times are of the search alone.</summary>
internal static class WarmUp
{
    private static readonly TimeSpan Time = TimeSpan.FromSeconds(2);
    private static readonly string[] Sets = ["shop-12", "uniform-120", "triplets-60"];

    public static void Run(INester nester, Effort effort)
    {
        var watch = Stopwatch.StartNew();
        var instances = Sets.SelectMany(name => GeneratedSets.Named(name, 1)).SelectMany(set => set.Instances).ToList();
        while (watch.Elapsed < Time)
        {
            foreach (var instance in instances)
                MeasuredNest.Of(nester, instance, effort, Time.TotalSeconds);
        }
    }
}
