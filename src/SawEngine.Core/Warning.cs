namespace SawEngine.Core;

/// <summary>Something that a person should know and that does not stop the plan.</summary>
/// <param name="Code">Stable snake_case code.</param>
/// <param name="Detail">A sentence that a person can act on.</param>
/// <param name="JobId">The job that it speaks of; null where none.</param>
/// <param name="OrderId">The order that it speaks of; null where none.</param>
public sealed record Warning(string Code, string Detail, string? JobId = null, string? OrderId = null);
