using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A time in which a saw cannot run, attended or not.</summary>
public sealed record DowntimeJson
{
    /// <summary>Start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>End, after start.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>Why, for people.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Reason { get; init; }
}
