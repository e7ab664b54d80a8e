using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Factors on the causes of a schedule's cost. Where one is not 1, the value is no longer money, but what the schedule is judged by.</summary>
public sealed record ScheduleWeightsJson
{
    /// <summary>On hours late.</summary>
    [Range(0, ScheduleLimits.Weight)]
    public decimal Tardiness { get; init; } = 1m;

    /// <summary>On hours of work.</summary>
    [Range(0, ScheduleLimits.Weight)]
    public decimal Work { get; init; } = 1m;

    /// <summary>On hours of set-ups.</summary>
    [Range(0, ScheduleLimits.Weight)]
    public decimal SetUps { get; init; } = 1m;

    /// <summary>On the extra price of overtime.</summary>
    [Range(0, ScheduleLimits.Weight)]
    public decimal Overtime { get; init; } = 1m;
}
