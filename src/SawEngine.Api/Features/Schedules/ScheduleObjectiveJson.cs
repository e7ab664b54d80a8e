using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Cost of a schedule, what it is made of, and what no schedule can undercut.</summary>
public sealed record ScheduleObjectiveJson
{
    /// <summary>Cost in the request's currency, each cause at its weight: the sum of the terms.</summary>
    [Range(0, ScheduleTermsJson.MostAmount)]
    public required decimal Value { get; init; }

    /// <summary>No schedule of the same jobs costs less.</summary>
    [Range(0, ScheduleTermsJson.MostAmount)]
    public required decimal Bound { get; init; }

    /// <summary>(value - bound) / value, rounded up to six decimals.</summary>
    [Range(0, 1)]
    public required decimal Gap { get; init; }

    /// <summary>How the bound was found: each job as if it had its best saw to itself, all saws at work until all jobs are done, or every assignment and sequence.</summary>
    [KnownValues(typeof(ScheduleBoundRule))]
    public required string BoundRule { get; init; }

    /// <summary>The cost by cause.</summary>
    public required ScheduleTermsJson Terms { get; init; }
}
