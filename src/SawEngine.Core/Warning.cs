namespace SawEngine.Core;

/// <summary>Something that a person should know and that does not stop the plan.</summary>
/// <param name="Code">Stable snake_case code.</param>
/// <param name="Detail">A sentence that a person can act on.</param>
/// <param name="Subject">The id that it speaks of: a job, a line or a stock item; null where it speaks of the whole.</param>
public sealed record Warning(string Code, string Detail, string? Subject = null);
