using SawEngine.Core.Saws;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>Bars of one layout as one saw cuts them together, or one by itself.</summary>
/// <param name="Bundle">How they lie.</param>
/// <param name="Times">How many times it is cut.</param>
/// <param name="Load">Fetching and loading its bars.</param>
/// <param name="Passes">The passes in order, each with its times and its share of a blade, through all of its bars.</param>
/// <param name="RemainderHandling">Marking and racking or binning the remainders.</param>
internal sealed record BundleWork(CutBundle Bundle, int Times, TimeParts Load, IReadOnlyList<PassWork> Passes, TimeParts RemainderHandling)
{
    /// <summary>All seconds of the bundle, cut once, by kind.</summary>
    public TimeParts Once => Passes.Aggregate(Load + RemainderHandling, (sum, pass) => sum + pass.Time);
}
