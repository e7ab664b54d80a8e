using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Where a job was in an earlier schedule.</summary>
public sealed record PreviousJobJson
{
    /// <summary>The job, each once; of one in parts the first part stands here.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string JobId { get; init; }

    /// <summary>Its saw then.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>Start of its work then.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>End of its work then; without it the answer does not say whether its promise is newly broken.</summary>
    public DateTimeOffset? Finish { get; init; }
}
