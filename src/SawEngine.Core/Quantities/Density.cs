namespace SawEngine.Core.Quantities;

/// <summary>A density in kilograms per cubic meter.</summary>
/// <param name="KilogramsPerCubicMeter">The density in kg/m3.</param>
public readonly record struct Density(decimal KilogramsPerCubicMeter)
{
    /// <summary>Mass of a prismatic bar: density times area times length, exact in decimal arithmetic.</summary>
    public Mass MassOf(Area area, Length length) => new(KilogramsPerCubicMeter * area.SquareMillimeters * length.Meters / 1_000_000m);
}
