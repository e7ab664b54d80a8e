using SawEngine.Core.Quantities;

namespace SawEngine.Api.Wire;

/// <summary>
/// Lengths as the US trade writes them: <c>12'-6 3/8"</c>, <c>12'</c>, <c>150 3/8"</c>, <c>6.375"</c>. Feet are whole; inches are whole, a fraction to 1/64, both,
/// or a decimal on the grid of inches, and less than 12 after feet. A hyphen, spaces or nothing stand between feet and inches, a hyphen or spaces before a fraction.
/// Marks are <c>'</c> and <c>"</c>, the primes U+2032 and U+2033, or <c>ft</c> and <c>in</c>. Exact: every such length is a whole number of nanometers.
/// </summary>
public static class LengthText
{
    private const string Form =
        "Must be feet and inches such as 12'-6 3/8\", 12', 150 3/8\" or 6.375\": whole feet, less than 12 inches after them, fractions below 1 in halves to 64ths, "
        + "decimals in steps of 0.000005; ft and in may stand for the marks.";

    private const long Foot = 12 * Length.NanometersPerInch;
    private const long Millionth = 1_000_000;

    /// <summary>The finest decimals: 0.000005 in = 127 nm.</summary>
    private const long MillionthsOfGrid = 5;

    private static readonly string[] FeetMarks = ["'", "\u2032", "ft"];
    private static readonly string[] InchMarks = ["\"", "\u2033", "in"];

    /// <summary>What is wrong with a text; null where nothing is.</summary>
    public static LeafFault? FaultOf(string text, LengthUnit unit) => Nanometers(text) switch
    {
        null => new(FaultCode.InvalidLengthText, Form),
        0 => new(FaultCode.MustBePositive, "Must be greater than 0."),
        { } length when new LengthScale(unit).Write(Length.FromNanometers(length)) > Limits.Length =>
            new(FaultCode.TooLarge, $"Must be at most {Limits.Length} {WireEnum.Text(unit)}."),
        _ => null,
    };

    /// <summary>The length of a text without fault.</summary>
    public static Length Read(string text) => Length.FromNanometers(Nanometers(text) ?? throw new ArgumentException(Form, nameof(text)));

    /// <summary>The length; null where the text is none.</summary>
    private static long? Nanometers(string text)
    {
        var scan = new TextScan(text);
        if (scan.Number() is not { } first)
            return null;
        if (!scan.TakesMark(FeetMarks))
            return Inches(ref scan, first);
        if (scan.IsAtEnd)
            return first * Foot;
        scan.TakesJoint();
        return scan.Number() is { } whole && Inches(ref scan, whole) is { } inches && inches < Foot ? first * Foot + inches : null;
    }

    /// <summary>Inches that begin with a number, up to their mark at the text's end.</summary>
    private static long? Inches(ref TextScan scan, long first)
    {
        var inches = scan.Takes('.') ? first * Length.NanometersPerInch + Decimals(scan.Digits())
            : scan.Takes('/') ? Fraction(first, scan.Number())
            : scan.TakesJoint() ? first * Length.NanometersPerInch + Fraction(scan.Number(), scan.Takes('/') ? scan.Number() : null)
            : first * Length.NanometersPerInch;
        return scan.TakesMark(InchMarks) && scan.IsAtEnd ? inches : null;
    }

    private static long? Fraction(long? numerator, long? denominator) =>
        denominator is 2 or 4 or 8 or 16 or 32 or 64 && numerator < denominator ? numerator * (Length.NanometersPerInch / denominator) : null;

    private static long? Decimals(ReadOnlySpan<char> digits)
    {
        if (digits.IsEmpty)
            return null;
        var (millionths, step) = (0L, Millionth / 10);
        foreach (var digit in digits)
        {
            if (step == 0 && digit != '0')
                return null;
            millionths += (digit - '0') * step;
            step /= 10;
        }
        return millionths % MillionthsOfGrid == 0 ? millionths * Length.NanometersPerInch / Millionth : null;
    }
}
