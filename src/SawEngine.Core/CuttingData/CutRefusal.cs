namespace SawEngine.Core.CuttingData;

/// <summary>A saw that does not make a cut.</summary>
/// <param name="SawId">The saw.</param>
/// <param name="Obstacle">Why.</param>
/// <param name="BladeId">The blade with which it does not; null where that goes for all of its blades.</param>
public sealed record CutRefusal(string SawId, CutObstacle Obstacle, string? BladeId = null);
