namespace SawEngine.Core;

/// <summary>A rule of the trade that an answer breaks, found by a verifier.</summary>
/// <param name="Code">The stable snake_case code of the rule.</param>
/// <param name="Detail">A sentence that names what breaks it.</param>
public sealed record Violation(string Code, string Detail);
