using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>Remnants from a length up that are worth another fraction than shorter ones.</summary>
/// <param name="From">Shortest length of the class.</param>
/// <param name="ValueFraction">Value as a fraction of its length's share of the bar's cost, 0 to 1.</param>
public sealed record RemnantClass(Length From, decimal ValueFraction);
