using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A job that is left out, as the answer of a schedule writes it.</summary>
public sealed record EditedUnscheduledJson
{
    /// <summary>The job.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string JobId { get; init; }

    /// <summary>Why, by the published list of reasons.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string Reason { get; init; }
}
