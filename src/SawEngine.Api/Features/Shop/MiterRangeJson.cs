using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>How far a saw swivels, in the plane of the width of the section as it lies in the vise.</summary>
public sealed record MiterRangeJson
{
    /// <summary>Largest angle to the left (negative angles), as a size in degrees, at most 3 decimals.</summary>
    [AngleRange(0, 60)]
    public required decimal Left { get; init; }

    /// <summary>Largest angle to the right (positive angles) in degrees, at most 3 decimals.</summary>
    [AngleRange(0, 60)]
    public required decimal Right { get; init; }
}
