namespace SawEngine.Core.CuttingData;

/// <summary>How a new blade is broken in: at its usual blade speed with less blade feed over its first area.</summary>
/// <param name="Cuts">Cuts that it takes, rounded up.</param>
/// <param name="FeedFactor">What is left of the mean blade feed, rounded to 0.001: more than half where motor or saw hold it back anyway, or a work-hardening grade keeps its lightest load per tooth.</param>
/// <param name="SecondsPerCut">Time that the blade is in the work meanwhile in seconds, rounded up to 0.1.</param>
public sealed record BreakIn(long Cuts, decimal FeedFactor, decimal SecondsPerCut);
