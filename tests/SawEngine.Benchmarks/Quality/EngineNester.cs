using SawEngine.Core.Nesting;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Benchmarks.Quality;

/// <summary>The one place that says which nester is measured.</summary>
internal static class EngineNester
{
    public static INester Create() => new BundledNester(new ColumnNester());
}
