namespace SawEngine.Core;

/// <summary>A value that the engine uses where the request states none.</summary>
/// <param name="Name">Path of the JSON member that it stands for.</param>
/// <param name="Value">The value in its unit.</param>
/// <param name="Unit">The unit; empty for a pure number.</param>
/// <param name="Source">The publication, table or practice that it comes from.</param>
/// <param name="Confidence">How far it can be trusted.</param>
public sealed record DefaultValue(string Name, decimal Value, string Unit, string Source, Confidence Confidence);
