namespace SawEngine.Api.Wire;

/// <summary>
/// US customary twins of metric quantities, which stand beside them in answers in inches. Factors are exact: the foot, inch and pound of the international yard and
/// pound agreement of 1959 (1 ft = 0.3048 m, 1 in = 25.4 mm, 1 lb = 0.45359237 kg), and from them the mechanical horsepower of 550 ft·lbf/s with standard gravity
/// 9.80665 m/s2 (NIST SP 811, appendix B). Each twin is made from the exact metric value and rounded once, half to even.
/// </summary>
public static class CustomaryUnits
{
    private const decimal MetersPerFoot = 0.3048m;
    private const decimal MillimetersPerInch = 25.4m;
    private const decimal SquareMillimetersPerSquareInch = MillimetersPerInch * MillimetersPerInch;
    private const decimal SquareCentimetersPerSquareInch = SquareMillimetersPerSquareInch / 100m;
    private const decimal KilogramsPerPound = 0.45359237m;
    private const decimal KilowattsPerHorsepower = 550m * MetersPerFoot * KilogramsPerPound * 9.80665m / 1000m;

    /// <summary>Speed in ft/min, to 0.1.</summary>
    public static decimal FeetPerMinute(decimal mPerMin) => Rounded(mPerMin / MetersPerFoot, 1);

    /// <summary>Cutting rate in in2/min, to 0.01.</summary>
    public static decimal SquareInchesPerMinute(decimal cm2PerMin) => Rounded(cm2PerMin / SquareCentimetersPerSquareInch, 2);

    /// <summary>Feed in in/min, to 0.01.</summary>
    public static decimal InchesPerMinute(decimal mmPerMin) => Rounded(mmPerMin / MillimetersPerInch, 2);

    /// <summary>Mass in lb, to 0.001.</summary>
    public static decimal Pounds(decimal kg) => Rounded(kg / KilogramsPerPound, 3);

    /// <summary>Power in mechanical horsepower, to 0.01.</summary>
    public static decimal Horsepower(decimal kw) => Rounded(kw / KilowattsPerHorsepower, 2);

    /// <summary>Area in in2, to 0.001.</summary>
    public static decimal SquareInches(decimal mm2) => Rounded(mm2 / SquareMillimetersPerSquareInch, 3);

    private static decimal Rounded(decimal value, int decimals) => Math.Round(value, decimals, MidpointRounding.ToEven);
}
