using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>What a saw has to do.</summary>
public sealed record SawLoadJson
{
    /// <summary>The saw.</summary>
    public required string SawId { get; init; }

    /// <summary>Its jobs in sequence; a job in parts once for each part.</summary>
    public required IReadOnlyList<string> JobIds { get; init; }

    /// <summary>Seconds of work.</summary>
    [Range(0, Limits.Amount)]
    public required long WorkSeconds { get; init; }

    /// <summary>Seconds of set-ups.</summary>
    [Range(0, Limits.Amount)]
    public required long SetUpSeconds { get; init; }

    /// <summary>Seconds of set-ups and work in overtime.</summary>
    [Range(0, Limits.Amount)]
    public required long OvertimeSeconds { get; init; }

    /// <summary>Seconds of work in which it runs by itself.</summary>
    [Range(0, Limits.Amount)]
    public required long UnattendedSeconds { get; init; }

    /// <summary>When it is done.</summary>
    public required DateTimeOffset Finish { get; init; }
}
