using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>A share of the time until a late job's end.</summary>
public sealed record LatenessCauseJson
{
    /// <summary>What it is spent on: waiting for release or predecessors, other jobs on the saw, time in which the saw has no shift or is down in it, waiting for an operator or crane, its own set-ups, its own work.</summary>
    [KnownValues(typeof(LatenessCauseKind))]
    public required string Kind { get; init; }

    /// <summary>Hours, to 4 decimals.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Hours { get; init; }

    /// <summary>The other jobs, in the order of time; absent for other causes.</summary>
    public IReadOnlyList<string>? JobIds { get; init; }

    internal static LatenessCauseJson Of(LatenessCause cause) => new()
    {
        Kind = WireEnum.Text(cause.Kind),
        Hours = LatenessJson.Hours(cause.Seconds),
        JobIds = cause.JobIds.Count == 0 ? null : cause.JobIds,
    };
}
