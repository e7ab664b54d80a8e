using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A job with its saw and times.</summary>
public sealed record ScheduledJobJson
{
    /// <summary>Id of the job.</summary>
    public required string JobId { get; init; }

    /// <summary>Its saw.</summary>
    public required string SawId { get; init; }

    /// <summary>Place in the saw's sequence, from 1.</summary>
    [Range(1, int.MaxValue)]
    public required int Sequence { get; init; }

    /// <summary>Set-up parts before it, and changes of worn blades in it, by start.</summary>
    public required IReadOnlyList<SetUpJson> SetUps { get; init; }

    /// <summary>Start of the first step.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>End of the last.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Spans of work without a pause, by start; between them lie breaks, shifts' ends and blade changes.</summary>
    public required IReadOnlyList<WorkSpanJson> Work { get; init; }

    /// <summary>Promised finish.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Hours from due to finish to 4 decimals, 0 where in time; absent without due.</summary>
    [Range(0, int.MaxValue)]
    public decimal? LateHours { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
