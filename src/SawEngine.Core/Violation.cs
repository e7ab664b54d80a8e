namespace SawEngine.Core;

/// <summary>A rule of the trade that an answer breaks, found by a verifier.</summary>
/// <param name="Code">The stable snake_case code of the rule.</param>
/// <param name="Detail">A sentence that names what breaks it.</param>
public sealed record Violation(string Code, string Detail)
{
    /// <summary>In a schedule, the job that it is about; null where it is about none.</summary>
    public string? JobId { get; init; }

    /// <summary>In a schedule, the place of what it is about in the list of scheduled jobs, from 0; null where it is about none of them.</summary>
    public int? JobIndex { get; init; }
}
