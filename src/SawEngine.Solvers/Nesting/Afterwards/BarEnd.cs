namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>What a bar costs and leaves behind.</summary>
/// <param name="Cost">Cost of the bar, in any unit that is common to all bars.</param>
/// <param name="Remainder">Length left over at the end, 0 or more, in any unit that is common to all bars.</param>
/// <param name="IsRemnant">The remainder is long enough to be kept.</param>
public readonly record struct BarEnd(decimal Cost, long Remainder, bool IsRemnant);
