using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Plans;

/// <summary>A job that runs on no saw.</summary>
public sealed record UnscheduledJson
{
    /// <summary>Job.</summary>
    public required string JobId { get; init; }

    /// <summary>Why.</summary>
    [KnownValues(typeof(UnscheduledReason))]
    public required string Reason { get; init; }
}
