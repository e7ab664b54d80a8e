namespace SawEngine.Api.Operations;

/// <summary>An answer.</summary>
/// <param name="Body">The answer as JSON in UTF-8.</param>
/// <param name="NothingPlanned">Whether the answer plans nothing of what was asked.</param>
/// <param name="Calculation">Time that the calculation took, without reading and writing.</param>
/// <param name="PreferencesApplied">Preferences that were honored, as they stand in <c>Preference-Applied</c>.</param>
public sealed record Answered(ReadOnlyMemory<byte> Body, bool NothingPlanned, TimeSpan Calculation, IReadOnlyList<string> PreferencesApplied) : Outcome;
