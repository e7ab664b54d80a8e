namespace SawEngine.Api.Wire;

/// <summary>What is wrong with a single value.</summary>
/// <param name="Code">For a program.</param>
/// <param name="Detail">For a person.</param>
public sealed record LeafFault(string Code, string Detail);
