namespace SawEngine.Core;

/// <summary>A value with its source and how far it can be trusted.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Source">The publication, table or practice that it comes from.</param>
/// <param name="Confidence">How far it can be trusted.</param>
public sealed record Sourced<T>(T Value, string Source, Confidence Confidence);
