namespace SawEngine.Core.Scheduling;

/// <summary>A used blade that lies ready for a saw. New ones are always at hand.</summary>
/// <param name="BladeId">Which blade it is one of.</param>
/// <param name="RemainingLife">What is left of it, in billionths of a new one's life.</param>
public readonly record struct ShelfBlade(string BladeId, long RemainingLife);
