using System.Globalization;

namespace SawEngine.Core.Quantities;

/// <summary>
/// A length in whole nanometers. Range: ±9.2e9 m. Arithmetic is exact and checked: an overflow throws <see cref="OverflowException"/>.
/// All inch fractions to 1/64 in are whole numbers of nanometers (1 in = 25 400 000 nm exactly).
/// </summary>
/// <param name="Nanometers">The length in nanometers.</param>
public readonly record struct Length(long Nanometers) : IComparable<Length>
{
    /// <summary>Nanometers in one millimeter.</summary>
    public const long NanometersPerMillimeter = 1_000_000;

    /// <summary>Nanometers in one inch, exact by the definition of the inch.</summary>
    public const long NanometersPerInch = 25_400_000;

    /// <summary>
    /// The grid on which computed lengths (miter offsets, kerf along the bar) are rounded: 0.0127 mm = 0.0005 in, so that both units write them exactly.
    /// </summary>
    public static readonly Length ComputedGrid = new(12_700);

    /// <summary>No length; the default value.</summary>
    public static readonly Length Zero;

    /// <summary>The length in millimeters, exact.</summary>
    public decimal Millimeters => (decimal)Nanometers / NanometersPerMillimeter;

    /// <summary>The length in inches; exact for whole multiples of 127 nm, else the nearest decimal.</summary>
    public decimal Inches => (decimal)Nanometers / NanometersPerInch;

    /// <summary>The length in meters, exact.</summary>
    public decimal Meters => (decimal)Nanometers / 1_000_000_000m;

    /// <summary>A length in millimeters, for geometry in floating point only.</summary>
    internal double ApproximateMillimeters => Nanometers / (double)NanometersPerMillimeter;

    /// <summary>A length of whole nanometers.</summary>
    public static Length FromNanometers(long nanometers) => new(nanometers);

    /// <summary>A length in millimeters. Throws <see cref="ArgumentException"/> where the value is finer than a nanometer.</summary>
    public static Length FromMillimeters(decimal millimeters) => Exact(millimeters, NanometersPerMillimeter);

    /// <summary>A length in inches. Throws <see cref="ArgumentException"/> where the value is not a whole number of nanometers.</summary>
    public static Length FromInches(decimal inches) => Exact(inches, NanometersPerInch);

    /// <summary>A computed length in millimeters, rounded up to <see cref="ComputedGrid"/>. Values within 1e-6 mm above a grid point stay on it.</summary>
    internal static Length RoundUpToGrid(double millimeters)
    {
        const double gridMillimeters = 0.0127;
        return new((long)Math.Ceiling((millimeters - 1e-6) / gridMillimeters) * ComputedGrid.Nanometers);
    }

    /// <summary>The larger of two lengths.</summary>
    public static Length Max(Length a, Length b) => a.Nanometers >= b.Nanometers ? a : b;

    /// <summary>The smaller of two lengths.</summary>
    public static Length Min(Length a, Length b) => a.Nanometers <= b.Nanometers ? a : b;

    /// <summary>Sum; checked.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a.Nanometers + b.Nanometers));

    /// <summary>Difference; checked.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a.Nanometers - b.Nanometers));

    /// <summary>Negation; checked.</summary>
    public static Length operator -(Length a) => new(checked(-a.Nanometers));

    /// <summary>Multiple; checked.</summary>
    public static Length operator *(Length a, int factor) => new(checked(a.Nanometers * factor));

    /// <summary>Multiple; checked.</summary>
    public static Length operator *(int factor, Length a) => a * factor;

    /// <summary>Order by length.</summary>
    public static bool operator <(Length a, Length b) => a.Nanometers < b.Nanometers;

    /// <summary>Order by length.</summary>
    public static bool operator >(Length a, Length b) => a.Nanometers > b.Nanometers;

    /// <summary>Order by length.</summary>
    public static bool operator <=(Length a, Length b) => a.Nanometers <= b.Nanometers;

    /// <summary>Order by length.</summary>
    public static bool operator >=(Length a, Length b) => a.Nanometers >= b.Nanometers;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometers.CompareTo(other.Nanometers);

    /// <summary>Millimeters, invariant culture, for diagnostics.</summary>
    public override string ToString() => Millimeters.ToString("0.######", CultureInfo.InvariantCulture) + " mm";

    private static Length Exact(decimal value, long nanometersPerUnit)
    {
        var nanometers = value * nanometersPerUnit;
        return decimal.Truncate(nanometers) == nanometers
            ? new((long)nanometers)
            : throw new ArgumentException("The length is finer than a nanometer.", nameof(value));
    }
}
