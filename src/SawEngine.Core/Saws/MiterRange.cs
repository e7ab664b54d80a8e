using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>How far a saw swivels, in the plane of the width of the section as it lies in the vise.</summary>
/// <param name="Left">Largest negative angle, as a size.</param>
/// <param name="Right">Largest positive angle.</param>
public sealed record MiterRange(Angle Left, Angle Right);
