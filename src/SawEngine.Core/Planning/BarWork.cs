using SawEngine.Core.Nesting;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>One bar as one saw cuts it: positions, passes and times.</summary>
/// <param name="Layout">The layout at the positions of this saw.</param>
/// <param name="Load">Fetching and loading the bar.</param>
/// <param name="Passes">The passes in order, each with its times and its share of a blade.</param>
/// <param name="RemainderHandling">Marking and racking or binning the remainder.</param>
internal sealed record BarWork(BarLayout Layout, TimeParts Load, IReadOnlyList<PassWork> Passes, TimeParts RemainderHandling)
{
    /// <summary>All seconds of one bar by kind.</summary>
    public TimeParts Total => Passes.Aggregate(Load + RemainderHandling, (sum, pass) => sum + pass.Time);
}
