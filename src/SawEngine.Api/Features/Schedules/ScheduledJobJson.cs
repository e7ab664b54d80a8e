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

    /// <summary>The first of its steps that is done here, from 1; a job in parts is listed once for each part.</summary>
    [Range(1, int.MaxValue)]
    public required int FirstStep { get; init; }

    /// <summary>How many of its steps are done here, loads among them.</summary>
    [Range(0, int.MaxValue)]
    public required int Steps { get; init; }

    /// <summary>Into how many parts it is split; 1 where it is whole.</summary>
    [Range(1, int.MaxValue)]
    public required int Parts { get; init; }

    /// <summary>Set-up parts before it, and changes of worn blades in it, by start.</summary>
    public required IReadOnlyList<SetUpJson> SetUps { get; init; }

    /// <summary>Start of the first step.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>End of the last.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Spans of work without a pause, by start; between them lie breaks, shifts' ends, blade changes and waits for an operator or a crane.</summary>
    public required IReadOnlyList<WorkSpanJson> Work { get; init; }

    /// <summary>Promised finish.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Hours from due to the finish of all its parts, to 4 decimals, 0 where in time; absent without due.</summary>
    [Range(0, int.MaxValue)]
    public decimal? LateHours { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
