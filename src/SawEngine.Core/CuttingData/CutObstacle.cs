namespace SawEngine.Core.CuttingData;

/// <summary>Why a cut cannot be done on a saw with a blade.</summary>
/// <param name="Code">The stable snake_case code.</param>
/// <param name="Detail">A sentence with the figures.</param>
public sealed record CutObstacle(string Code, string Detail);
