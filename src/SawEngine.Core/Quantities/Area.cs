namespace SawEngine.Core.Quantities;

/// <summary>An area in square millimeters. Exact decimal arithmetic; areas that come from geometry are rounded once, to 1e-6 mm2, half to even.</summary>
/// <param name="SquareMillimeters">The value in the canonical unit named by the property.</param>
public readonly record struct Area(decimal SquareMillimeters) : IComparable<Area>
{
    /// <summary>Zero; the default value.</summary>
    public static readonly Area Zero;

    /// <summary>Sum; a decimal overflow throws.</summary>
    public static Area operator +(Area a, Area b) => new(a.SquareMillimeters + b.SquareMillimeters);

    /// <summary>Difference; a decimal overflow throws.</summary>
    public static Area operator -(Area a, Area b) => new(a.SquareMillimeters - b.SquareMillimeters);

    /// <summary>Multiple by a pure number.</summary>
    public static Area operator *(Area a, decimal factor) => new(a.SquareMillimeters * factor);

    /// <summary>Order by size.</summary>
    public static bool operator <(Area a, Area b) => a.SquareMillimeters < b.SquareMillimeters;

    /// <summary>Order by size.</summary>
    public static bool operator >(Area a, Area b) => a.SquareMillimeters > b.SquareMillimeters;

    /// <summary>Order by size.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareMillimeters <= b.SquareMillimeters;

    /// <summary>Order by size.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareMillimeters >= b.SquareMillimeters;

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMillimeters.CompareTo(other.SquareMillimeters);
}
