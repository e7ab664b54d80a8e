namespace SawEngine.Core.Quantities;

/// <summary>A cutting rate: area cut per time, in square centimeters per minute (1 in2/min = 6.4516 cm2/min exactly).</summary>
/// <param name="SquareCentimetersPerMinute">The value in the canonical unit named by the property.</param>
public readonly record struct CuttingRate(decimal SquareCentimetersPerMinute) : IComparable<CuttingRate>
{
    /// <summary>Zero; the default value.</summary>
    public static readonly CuttingRate Zero;

    /// <summary>Sum; a decimal overflow throws.</summary>
    public static CuttingRate operator +(CuttingRate a, CuttingRate b) => new(a.SquareCentimetersPerMinute + b.SquareCentimetersPerMinute);

    /// <summary>Difference; a decimal overflow throws.</summary>
    public static CuttingRate operator -(CuttingRate a, CuttingRate b) => new(a.SquareCentimetersPerMinute - b.SquareCentimetersPerMinute);

    /// <summary>Multiple by a pure number.</summary>
    public static CuttingRate operator *(CuttingRate a, decimal factor) => new(a.SquareCentimetersPerMinute * factor);

    /// <summary>Order by size.</summary>
    public static bool operator <(CuttingRate a, CuttingRate b) => a.SquareCentimetersPerMinute < b.SquareCentimetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator >(CuttingRate a, CuttingRate b) => a.SquareCentimetersPerMinute > b.SquareCentimetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator <=(CuttingRate a, CuttingRate b) => a.SquareCentimetersPerMinute <= b.SquareCentimetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator >=(CuttingRate a, CuttingRate b) => a.SquareCentimetersPerMinute >= b.SquareCentimetersPerMinute;

    /// <inheritdoc/>
    public int CompareTo(CuttingRate other) => SquareCentimetersPerMinute.CompareTo(other.SquareCentimetersPerMinute);
}
