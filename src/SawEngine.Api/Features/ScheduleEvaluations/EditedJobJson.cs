using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A job, or a part of one, with its saw and its place there, as the answer of a schedule writes it.</summary>
public sealed record EditedJobJson
{
    /// <summary>Id of the job.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string JobId { get; init; }

    /// <summary>Its saw.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>Place in the saw's sequence, from 1.</summary>
    [Range(1, ScheduleLimits.ScheduledJobs)]
    public required int Sequence { get; init; }

    /// <summary>The first of its steps that is done here, from 1.</summary>
    [Range(1, ScheduleLimits.Steps + ScheduleLimits.Loads)]
    public int FirstStep { get; init; } = 1;

    /// <summary>How many of its steps are done here. It follows from work where that is stated, and is checked; else all that follow where absent.</summary>
    [Range(0, ScheduleLimits.Steps + ScheduleLimits.Loads)]
    public int? Steps { get; init; }

    /// <summary>Into how many parts it is split. It follows from the list and counts for nothing.</summary>
    [Range(1, ScheduleLimits.ScheduledJobs)]
    public int? Parts { get; init; }

    /// <summary>Set-up parts before it, and changes of worn blades in it, by start.</summary>
    [MaxLength(ScheduleLimits.Spans)]
    public IReadOnlyList<EditedSetUpJson> SetUps { get; init; } = [];

    /// <summary>Start of the first step. It follows from work, and is checked.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>End of the last. It follows from work, and is checked.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Spans of work without a pause, by start. The engine times the jobs where it is absent or empty.</summary>
    [MaxLength(ScheduleLimits.Spans)]
    public IReadOnlyList<EditedWorkSpanJson> Work { get; init; } = [];

    /// <summary>Promised finish. It stands in the job and counts for nothing.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Hours late. They follow and count for nothing.</summary>
    [Range(0, int.MaxValue)]
    public decimal? LateHours { get; init; }

    /// <summary>The caller's marks. They stand in the job and count for nothing.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
