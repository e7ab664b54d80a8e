namespace SawEngine.Api.Features.ReferenceData;

/// <summary>An answer with reference data.</summary>
/// <param name="Key">Stands for the answer among all of its resource; null where it is not one of a known number.</param>
/// <param name="Make">Makes it.</param>
public sealed record ReferenceAnswer(string? Key, Func<object> Make);
