using System.Globalization;

namespace SawEngine.Api.Wire;

/// <summary>A JSON number as written: what a decimal would silently lose.</summary>
/// <param name="Digits">Significant digits, without leading and trailing zeros.</param>
/// <param name="LastPlace">Power of ten of the last significant digit.</param>
internal readonly record struct WrittenNumber(int Digits, long LastPlace)
{
    /// <summary>Significant digits and decimal places that a decimal surely holds.</summary>
    public const int MostDigits = 28;

    public bool IsZero => Digits == 0;

    public static WrittenNumber Of(string text)
    {
        var parts = text.Split('e', 'E');
        var dot = parts[0].IndexOf('.', StringComparison.Ordinal);
        var places = dot < 0 ? 0 : parts[0].Length - dot - 1;
        var digits = parts[0].Replace(".", "", StringComparison.Ordinal).TrimStart('-').TrimStart('0');
        var significant = digits.TrimEnd('0');
        return new(significant.Length, Exponent(parts) - places + (digits.Length - significant.Length));
    }

    /// <summary>The exponent; one too long for a number counts as a very large one.</summary>
    private static long Exponent(string[] parts) =>
        parts.Length == 1 ? 0
        : int.TryParse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var exponent) ? exponent
        : parts[1][0] == '-' ? int.MinValue : int.MaxValue;
}
