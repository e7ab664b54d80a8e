namespace SawEngine.Api.Features.Plans;

/// <summary>One part of a set-up.</summary>
public sealed record SetUpJson
{
    /// <summary>Known kinds: section, gradeGroup, blade, bladeWorn.</summary>
    public required string Kind { get; init; }

    /// <summary>Start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Finish.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Who or what is busy. Known: operator.</summary>
    public required string Resource { get; init; }
}
