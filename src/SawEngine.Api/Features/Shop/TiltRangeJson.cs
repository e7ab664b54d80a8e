using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>How far a saw tilts, in the plane of the height of the section as it lies in the vise, after it has swiveled.</summary>
public sealed record TiltRangeJson
{
    /// <summary>Largest angle by which the blade leans toward the first end at the top (negative angles), as a size in degrees, at most 3 decimals.</summary>
    [AngleRange(0, 60)]
    public required decimal ToFirstEnd { get; init; }

    /// <summary>Largest angle by which the blade leans toward the second end at the top (positive angles) in degrees, at most 3 decimals.</summary>
    [AngleRange(0, 60)]
    public required decimal ToSecondEnd { get; init; }
}
