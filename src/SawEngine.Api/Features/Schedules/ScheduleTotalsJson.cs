using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>The schedule in figures.</summary>
public sealed record ScheduleTotalsJson
{
    /// <summary>Jobs asked for.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int Jobs { get; init; }

    /// <summary>Jobs that have a time.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int Scheduled { get; init; }

    /// <summary>Jobs that finish after they are due.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int LateJobs { get; init; }

    /// <summary>Sum of the hours late, to 4 decimals.</summary>
    [Range(0, int.MaxValue)]
    public required decimal LateHours { get; init; }

    /// <summary>Jobs in more than one part.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int SplitJobs { get; init; }

    /// <summary>Sum of all set-ups in seconds; parts of one set-up that are done beside one another count once.</summary>
    [Range(0, Limits.Amount)]
    public required long SetUpSeconds { get; init; }

    /// <summary>Sum of the saws' working time in seconds.</summary>
    [Range(0, Limits.Amount)]
    public required long WorkSeconds { get; init; }

    /// <summary>Seconds of set-ups and work in overtime.</summary>
    [Range(0, Limits.Amount)]
    public required long OvertimeSeconds { get; init; }

    /// <summary>Seconds of work in which saws run by themselves.</summary>
    [Range(0, Limits.Amount)]
    public required long UnattendedSeconds { get; init; }

    /// <summary>When the last job is done; absent where nothing is scheduled.</summary>
    public DateTimeOffset? Finish { get; init; }
}
