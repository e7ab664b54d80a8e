using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>How far a saw swivels, in the plane of the width of the section as it lies in the vise, and then tilts, in the plane of its height.</summary>
/// <param name="Left">Largest negative swivel, as a size.</param>
/// <param name="Right">Largest positive swivel.</param>
public sealed record MiterRange(Angle Left, Angle Right)
{
    /// <summary>Largest negative tilt, as a size: the blade leans toward the first end at the top. Zero where the saw does not tilt so.</summary>
    public Angle TiltToFirstEnd { get; init; }

    /// <summary>Largest positive tilt: the blade leans toward the second end at the top. Zero where the saw does not tilt so.</summary>
    public Angle TiltToSecondEnd { get; init; }

    /// <summary>Whether the saw tilts at all.</summary>
    public bool Tilts => TiltToFirstEnd != Angle.Zero || TiltToSecondEnd != Angle.Zero;
}
