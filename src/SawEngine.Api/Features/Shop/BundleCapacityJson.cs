using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>The largest cut bundles: several equal bars that are clamped and cut together, so many side by side, so many on top of one another.</summary>
public sealed record BundleCapacityJson
{
    /// <summary>Most bars side by side, along the blade.</summary>
    [Range(1, Limits.BundleWide)]
    public required int MostWide { get; init; }

    /// <summary>Most bars on top of one another; more than one need a hold-down.</summary>
    [Range(1, Limits.BundleHigh)]
    public int MostHigh { get; init; } = 1;

    /// <summary>Largest width of a bundle, in the length unit of the request; that for single bars where absent.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? LargestWidth { get; init; }

    /// <summary>Largest height of a bundle, in the length unit of the request; that for single bars where absent.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? LargestHeight { get; init; }

    /// <summary>Whether the bars are also pressed down from above, without which rounds and hexagons are cut singly; where absent, as `mostHigh` above 1 says.</summary>
    public bool? HoldDown { get; init; }
}
