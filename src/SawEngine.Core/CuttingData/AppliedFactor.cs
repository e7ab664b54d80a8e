namespace SawEngine.Core.CuttingData;

/// <summary>A factor by which cutting data depart from the grade's reference.</summary>
/// <param name="Code">The stable snake_case code of what causes it.</param>
/// <param name="Value">The factor.</param>
/// <param name="Source">The publication, table or practice that it comes from.</param>
/// <param name="Confidence">How far it can be trusted.</param>
public sealed record AppliedFactor(string Code, decimal Value, string Source, Confidence Confidence);
