namespace SawEngine.Core.Quantities;

/// <summary>A mass in kilograms. Exact decimal arithmetic; rounded only where it is written (3 decimals).</summary>
/// <param name="Kilograms">The value in the canonical unit named by the property.</param>
public readonly record struct Mass(decimal Kilograms) : IComparable<Mass>
{
    /// <summary>Zero; the default value.</summary>
    public static readonly Mass Zero;

    /// <summary>Sum; a decimal overflow throws.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Kilograms + b.Kilograms);

    /// <summary>Difference; a decimal overflow throws.</summary>
    public static Mass operator -(Mass a, Mass b) => new(a.Kilograms - b.Kilograms);

    /// <summary>Multiple by a pure number.</summary>
    public static Mass operator *(Mass a, decimal factor) => new(a.Kilograms * factor);

    /// <summary>Order by size.</summary>
    public static bool operator <(Mass a, Mass b) => a.Kilograms < b.Kilograms;

    /// <summary>Order by size.</summary>
    public static bool operator >(Mass a, Mass b) => a.Kilograms > b.Kilograms;

    /// <summary>Order by size.</summary>
    public static bool operator <=(Mass a, Mass b) => a.Kilograms <= b.Kilograms;

    /// <summary>Order by size.</summary>
    public static bool operator >=(Mass a, Mass b) => a.Kilograms >= b.Kilograms;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);
}
