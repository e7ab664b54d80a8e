namespace SawEngine.Core.CuttingData;

/// <summary>A saw that does not make a cut.</summary>
/// <param name="SawId">The saw.</param>
/// <param name="Obstacle">Why.</param>
public sealed record CutRefusal(string SawId, CutObstacle Obstacle);
