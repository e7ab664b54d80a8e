namespace SawEngine.Core.Quantities;

/// <summary>A blade speed in meters per minute (1 ft/min = 0.3048 m/min exactly).</summary>
/// <param name="MetersPerMinute">The value in the canonical unit named by the property.</param>
public readonly record struct Speed(decimal MetersPerMinute) : IComparable<Speed>
{
    /// <summary>Zero; the default value.</summary>
    public static readonly Speed Zero;

    /// <summary>Sum; a decimal overflow throws.</summary>
    public static Speed operator +(Speed a, Speed b) => new(a.MetersPerMinute + b.MetersPerMinute);

    /// <summary>Difference; a decimal overflow throws.</summary>
    public static Speed operator -(Speed a, Speed b) => new(a.MetersPerMinute - b.MetersPerMinute);

    /// <summary>Multiple by a pure number.</summary>
    public static Speed operator *(Speed a, decimal factor) => new(a.MetersPerMinute * factor);

    /// <summary>Order by size.</summary>
    public static bool operator <(Speed a, Speed b) => a.MetersPerMinute < b.MetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator >(Speed a, Speed b) => a.MetersPerMinute > b.MetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator <=(Speed a, Speed b) => a.MetersPerMinute <= b.MetersPerMinute;

    /// <summary>Order by size.</summary>
    public static bool operator >=(Speed a, Speed b) => a.MetersPerMinute >= b.MetersPerMinute;

    /// <inheritdoc/>
    public int CompareTo(Speed other) => MetersPerMinute.CompareTo(other.MetersPerMinute);
}
