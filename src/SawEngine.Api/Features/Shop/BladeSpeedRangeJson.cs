using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Shop;

/// <summary>Blade speeds of a saw.</summary>
public sealed record BladeSpeedRangeJson
{
    /// <summary>Slowest blade speed in m/min.</summary>
    [Range(1, 10000)]
    public required decimal Min { get; init; }

    /// <summary>Fastest blade speed in m/min, at least min.</summary>
    [Range(1, 10000)]
    public required decimal Max { get; init; }
}
