using SawEngine.Core.Quantities;

namespace SawEngine.Api.Wire;

/// <summary>Reads and writes lengths in the unit of a request.</summary>
/// <param name="Unit">The request's unit.</param>
public sealed record LengthScale(LengthUnit Unit)
{
    /// <summary>The finest length that can be stated: 0.000001 mm, or 0.000005 in (127 nm).</summary>
    public static decimal Grid(LengthUnit unit) => unit == LengthUnit.In ? 0.000005m : 0.000001m;

    /// <summary>Whether a value can be stated.</summary>
    public static bool IsOnGrid(decimal value, LengthUnit unit) => value % Grid(unit) == 0;

    /// <summary>Whether a length is within bounds and on the grid, or left out.</summary>
    public bool CanRead(decimal? value) => value is not { } stated || (Math.Abs(stated) <= Limits.Length && IsOnGrid(stated, Unit));

    /// <summary>A length of the request; the rules have checked its range and grid.</summary>
    public Length Read(decimal value) => Unit == LengthUnit.In ? Length.FromInches(value) : Length.FromMillimeters(value);

    /// <summary>A length of the request that may be left out.</summary>
    public Length? Read(decimal? value) => value is { } stated ? Read(stated) : null;

    /// <summary>Whether a length is stated once, within bounds, and as a number or text that can be read.</summary>
    public bool CanRead(IStatedLength stated) => stated switch
    {
        { Length: { } length, LengthText: null } => length > 0 && CanRead(length),
        { Length: null, LengthText: { } text } => LengthText.FaultOf(text, Unit) is null,
        _ => false,
    };

    /// <summary>A length of the request, as it is stated; the rules have checked it.</summary>
    public Length Read(IStatedLength stated) => stated.LengthText is { } text ? LengthText.Read(text) : Read(stated.Length!.Value);

    /// <summary>A length of the answer: exact, because stated and computed lengths both lie on grids that the unit can write.</summary>
    public decimal Write(Length length) => Unit == LengthUnit.In ? length.Inches : length.Millimeters;

    /// <summary>A length of the reference data, which may lie on the grid of the other unit: to six decimals, half to even.</summary>
    public decimal WriteRounded(Length length) => decimal.Round(Write(length), 6, MidpointRounding.ToEven);

    /// <summary>A length in nanometers, however large, with its unit, for people: to six decimals, half to even.</summary>
    public string Text(decimal nanometers) =>
        $"{ShortestDecimalConverter.Text(decimal.Round(nanometers / (Unit == LengthUnit.In ? Length.NanometersPerInch : 1_000_000m), 6, MidpointRounding.ToEven))} {WireEnum.Text(Unit)}";

    /// <summary>A cost that is stated in the unit of the objective, money or length, in millionths, half to even.</summary>
    public long ReadMicros(decimal cost, bool isMoney) =>
        (long)decimal.Round(cost * (isMoney || Unit == LengthUnit.Mm ? 1_000_000m : Length.NanometersPerInch), MidpointRounding.ToEven);

    /// <summary>An objective in nanometers, or a cost in millionths, rounded down to six decimals of the answer's unit.</summary>
    public decimal WriteMicros(long micros, bool isMoney) =>
        isMoney || Unit == LengthUnit.Mm ? micros / 1_000_000m : decimal.Floor(micros * 1_000_000m / Length.NanometersPerInch) / 1_000_000m;
}
