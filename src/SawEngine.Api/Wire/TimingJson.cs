using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Wire;

/// <summary>How long the calculation took.</summary>
public sealed record TimingJson
{
    /// <summary>All of it, in milliseconds.</summary>
    [Range(0, 3_600_000)]
    public required int TotalMs { get; init; }

    /// <summary>Nesting, in milliseconds.</summary>
    [Range(0, 3_600_000)]
    public int? NestMs { get; init; }

    /// <summary>Scheduling, in milliseconds.</summary>
    [Range(0, 3_600_000)]
    public int? ScheduleMs { get; init; }
}
