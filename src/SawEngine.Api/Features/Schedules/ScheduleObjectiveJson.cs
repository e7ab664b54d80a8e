using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Cost of a schedule: hours of saws and operators for work and set-ups, and hours late at each job's cost.</summary>
public sealed record ScheduleObjectiveJson
{
    /// <summary>Cost in the request's currency.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Value { get; init; }

    /// <summary>No schedule of the same jobs costs less.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Bound { get; init; }

    /// <summary>(value - bound) / value, rounded up to six decimals.</summary>
    [Range(0, 1)]
    public required decimal Gap { get; init; }
}
