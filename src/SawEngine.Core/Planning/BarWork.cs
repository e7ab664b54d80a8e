using SawEngine.Core.Nesting;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>All bars of one layout as one saw cuts them: positions, bundles, passes and times.</summary>
/// <param name="Layout">The layout at the positions of this saw, with its cut bundle.</param>
/// <param name="Bundles">The bundles in the order in which they are cut: full ones, then what is left.</param>
internal sealed record BarWork(BarLayout Layout, IReadOnlyList<BundleWork> Bundles)
{
    /// <summary>All seconds by kind.</summary>
    public TimeParts Total => Bundles.Aggregate(TimeParts.Zero, (sum, bundle) => sum + bundle.Once * bundle.Times);
}
