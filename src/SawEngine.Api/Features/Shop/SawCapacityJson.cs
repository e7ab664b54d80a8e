using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>The largest sections that a saw holds for a square cut.</summary>
public sealed record SawCapacityJson
{
    /// <summary>Largest diameter of rounds, round tubes and pipes, in the length unit of the request.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Round { get; init; }

    /// <summary>Largest width of all other sections, along the blade, in the length unit of the request.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Width { get; init; }

    /// <summary>Largest height of all other sections, along the blade's travel, in the length unit of the request.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Height { get; init; }
}
