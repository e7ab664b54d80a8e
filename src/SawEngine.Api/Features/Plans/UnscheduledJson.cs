namespace SawEngine.Api.Features.Plans;

/// <summary>A job that runs on no saw.</summary>
public sealed record UnscheduledJson
{
    /// <summary>Job.</summary>
    public required string JobId { get; init; }

    /// <summary>Why, a code of the published list.</summary>
    public required string Reason { get; init; }
}
