using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>When a remainder is worth keeping, and what it is then worth.</summary>
/// <param name="KeepFrom">Shortest remainder that goes back to the rack as a remnant.</param>
/// <param name="ValueFraction">Value of a remnant of the first class as a fraction of its length's share of the bar's cost, 0 to 1.</param>
public sealed record RemnantRules(Length KeepFrom, decimal ValueFraction)
{
    /// <summary>Classes of longer remnants, ascending, each from above the one before; none where all are worth the same fraction.</summary>
    public IReadOnlyList<RemnantClass> Classes { get; init; } = [];

    /// <summary>What it costs to put a remnant back and to find it again, in millionths of the objective's unit.</summary>
    public long HandlingCostMicros { get; init; }

    /// <summary>Most remnants that a nest may leave; null where there is no limit.</summary>
    public int? MostNew { get; init; }
}
