namespace SawEngine.Core.CuttingData;

/// <summary>A blade that was not chosen.</summary>
/// <param name="BladeId">The blade.</param>
/// <param name="Code">The stable snake_case code of why: of an obstacle, or of <see cref="RejectionCodes"/>.</param>
/// <param name="Detail">A sentence with the figures.</param>
public sealed record RejectedBlade(string BladeId, string Code, string Detail);
