using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>A corner of a custom section as drawn.</summary>
/// <param name="X">Position to the right.</param>
/// <param name="Y">Position upward.</param>
public readonly record struct OutlinePoint(Length X, Length Y);
