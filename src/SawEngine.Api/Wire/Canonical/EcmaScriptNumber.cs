using System.Globalization;

namespace SawEngine.Api.Wire.Canonical;

/// <summary>Writes a double as ECMAScript does (ECMA-262, Number::toString with radix 10).</summary>
internal static class EcmaScriptNumber
{
    public static string Text(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), "JSON has no such number.");
        if (value == 0)
            return "0";
        // "E16" forms would round; "R" gives the shortest digits that read back to the same double.
        var shortest = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        var (digits, pointAt) = Parse(shortest);
        return (value < 0 ? "-" : "") + Layout(digits, pointAt);
    }

    /// <summary>The digits and the place of the point among them: value = 0.digits × 10^pointAt.</summary>
    private static (string Digits, int PointAt) Parse(string shortest)
    {
        var parts = shortest.Split('E');
        var exponent = parts.Length == 2 ? int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) : 0;
        var dot = parts[0].IndexOf('.', StringComparison.Ordinal);
        var whole = dot < 0 ? parts[0] : parts[0][..dot];
        var all = whole + (dot < 0 ? "" : parts[0][(dot + 1)..]);
        var digits = all.TrimStart('0');
        return (digits.TrimEnd('0'), whole.Length + exponent - (all.Length - digits.Length));
    }

    private static string Layout(string digits, int pointAt) => pointAt switch
    {
        > 0 and <= 21 when digits.Length <= pointAt => digits.PadRight(pointAt, '0'),
        > 0 and <= 21 => digits[..pointAt] + "." + digits[pointAt..],
        > -6 and <= 0 => "0." + new string('0', -pointAt) + digits,
        _ => Exponential(digits, pointAt - 1),
    };

    private static string Exponential(string digits, int exponent) =>
        digits[..1]
        + (digits.Length > 1 ? "." + digits[1..] : "")
        + (exponent < 0 ? "e-" : "e+")
        + Math.Abs(exponent).ToString(CultureInfo.InvariantCulture);
}
