using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A job that runs on one saw, from its first step to its last, or in parts.</summary>
public sealed record ScheduleJobJson
{
    /// <summary>Id of the job, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string JobId { get; init; }

    /// <summary>It does not start earlier; a set-up for it may. It may start at once where absent.</summary>
    public DateTimeOffset? Release { get; init; }

    /// <summary>Promised finish; it may be past. Nothing is promised where absent.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Cost of each hour that it is finished after due, in the request's currency.</summary>
    [CostRange(PlanLimits.CostPerHourLate)]
    public decimal CostPerHourLate { get; init; }

    /// <summary>The saws that can take it; a job that none can take is left out with the reason.</summary>
    [MaxLength(PlanLimits.Saws)]
    public required IReadOnlyList<JobOptionJson> Options { get; init; }

    /// <summary>Jobs whose work is finished before its own starts; a set-up for it may be earlier.</summary>
    [MaxLength(ScheduleLimits.Predecessors)]
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Where it stays; it may go anywhere where absent.</summary>
    public FrozenJson? Frozen { get; init; }

    /// <summary>Into how many parts it may be split, each on a saw of its own or at another time. Above 1 it has as many steps and loads on each of its saws.</summary>
    [Range(1, ScheduleLimits.Parts)]
    public int MostParts { get; init; } = 1;

    /// <summary>Free marks of the caller, which come back unchanged.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
