using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A time that comes again in which a saw cannot run, attended or not, such as each Friday from 13:00 for 60 minutes.</summary>
public sealed record MaintenanceJson : RecurringTimeJson
{
    /// <summary>Why, for people.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Reason { get; init; }
}
