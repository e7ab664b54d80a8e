using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A job that has another start or saw than in the earlier schedule.</summary>
public sealed record MovedJobJson
{
    /// <summary>The job.</summary>
    public required string JobId { get; init; }

    /// <summary>Its saw then.</summary>
    public required string PreviousSawId { get; init; }

    /// <summary>Its saw now; of its first part where it is split.</summary>
    public required string SawId { get; init; }

    /// <summary>Hours by which its start moves, to 4 decimals; negative where it is earlier.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal HoursMoved { get; init; }
}
