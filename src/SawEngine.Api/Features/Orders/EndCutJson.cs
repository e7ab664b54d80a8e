using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Orders;

/// <summary>One end of a piece. Angles are measured against the plane square to the bar and are positive where the face lies farther toward the second end
/// at the top (heightAngle) or on the right-hand side looking from first to second end (widthAngle). Facing ends with equal angles are parallel and share one cut.</summary>
public sealed record EndCutJson
{
    /// <summary>Angle in the plane of the section's height, in degrees with at most 3 decimals.</summary>
    [AngleRange(-60, 60)]
    public decimal HeightAngle { get; init; }

    /// <summary>Angle in the plane of the section's width, in degrees with at most 3 decimals.</summary>
    [AngleRange(-60, 60)]
    public decimal WidthAngle { get; init; }
}
