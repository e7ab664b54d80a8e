using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>How a job runs on one saw.</summary>
public sealed record JobOptionJson
{
    /// <summary>The saw, one of the shop's.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>Working time of all its steps in seconds, without loads and set-ups, rounded up to a millisecond.</summary>
    [Range(0, ScheduleLimits.SecondsOfJob, MinimumIsExclusive = true)]
    public required decimal Seconds { get; init; }

    /// <summary>Equal steps that it consists of, such as cuts. A step is not interrupted.</summary>
    [Range(1, ScheduleLimits.Steps)]
    public int Steps { get; init; } = 1;

    /// <summary>Bars or cut bundles that are loaded, each before its share of the steps. Each load is a step more.</summary>
    [Range(0, ScheduleLimits.Loads)]
    public int Loads { get; init; }

    /// <summary>Time of each load in seconds, rounded up to a millisecond; stated where there are loads.</summary>
    [Range(0, 86400, MinimumIsExclusive = true)]
    public decimal? LoadSeconds { get; init; }

    /// <summary>Whether each load needs an operator's hands and a crane, where the shop has them. Else it is attended like any step, or done by the magazine of a saw that runs unattended.</summary>
    public bool CraneLoads { get; init; }

    /// <summary>Section that the saw is set up for; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Section { get; init; }

    /// <summary>Group of grades whose chips are kept together; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? GradeGroup { get; init; }

    /// <summary>Angle that the head is set to in degrees, at most 3 decimals; where absent, any will do.</summary>
    [AngleRange(-90, 90)]
    public decimal? AngleDegrees { get; init; }

    /// <summary>Blade that is mounted for it, one of the saw's; where absent, any will do.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? BladeId { get; init; }

    /// <summary>Share of a new blade's life that the whole job uses; it may be more than one blade.</summary>
    [Range(0, 1000)]
    public decimal BladeLifeShare { get; init; }

    /// <summary>Grade of its bars: an id of the request's grades, else a designation of the catalog. It decides whether the job may run unattended.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Grade { get; init; }

    /// <summary>Whether its steps may run where the saw runs by itself. It needs `grade`; a grade that is only cut attended, such as titanium or magnesium, is never run so.</summary>
    public bool MayRunUnattended { get; init; }

    /// <summary>Whether the saw may stand still between two steps, over a break or the end of a shift; otherwise the job runs through in one span of attended time.</summary>
    public bool MayPause { get; init; } = true;
}
