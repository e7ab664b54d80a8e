using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>When a remainder is worth keeping, and what it is then worth.</summary>
/// <param name="KeepFrom">Shortest remainder that goes back to the rack as a remnant.</param>
/// <param name="ValueFraction">Value of a remnant as a fraction of its length's share of the bar's cost, 0 to 1.</param>
public sealed record RemnantRules(Length KeepFrom, decimal ValueFraction);
