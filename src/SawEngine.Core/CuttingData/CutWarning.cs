namespace SawEngine.Core.CuttingData;

/// <summary>Something about a cut that can be done but should be known.</summary>
/// <param name="Code">The stable snake_case code.</param>
/// <param name="Detail">A sentence with the figures.</param>
public sealed record CutWarning(string Code, string Detail);
