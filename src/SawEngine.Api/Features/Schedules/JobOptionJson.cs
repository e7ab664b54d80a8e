using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>How a job runs on one saw.</summary>
public sealed record JobOptionJson
{
    /// <summary>The saw, one of the shop's.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>Working time in seconds without set-ups, rounded up to a millisecond.</summary>
    [Range(0, ScheduleLimits.SecondsOfJob, MinimumIsExclusive = true)]
    public required decimal Seconds { get; init; }

    /// <summary>Equal steps that it consists of, such as cuts. The saw may stand still between two steps, over a break or the end of a shift, never within one.</summary>
    [Range(1, ScheduleLimits.Steps)]
    public int Steps { get; init; } = 1;

    /// <summary>Section that the saw is set up for; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Section { get; init; }

    /// <summary>Group of grades whose chips are kept together; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? GradeGroup { get; init; }

    /// <summary>Blade that is mounted for it, one of the saw's; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? BladeId { get; init; }

    /// <summary>Share of a new blade's life that the whole job uses; it may be more than one blade.</summary>
    [Range(0, 1000)]
    public decimal BladeLifeShare { get; init; }
}
