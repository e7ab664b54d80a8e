using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>An earlier schedule. The search starts from it, and the answer says what changes.</summary>
public sealed record PreviousScheduleJson
{
    /// <summary>Its jobs; those that are no longer asked for count for nothing.</summary>
    [MaxLength(ScheduleLimits.Jobs)]
    public required IReadOnlyList<PreviousJobJson> Jobs { get; init; }

    /// <summary>Cost of each hour by which a job's start moves, earlier or later, in the request's currency.</summary>
    [CostRange(PlanLimits.CostPerHourLate)]
    public decimal CostPerHourMoved { get; init; }

    /// <summary>Cost of each job that goes to another saw, in the request's currency.</summary>
    [CostRange(PlanLimits.CostPerHourLate)]
    public decimal CostPerSawChange { get; init; }
}
