namespace SawEngine.Core.CuttingData;

/// <summary>
/// Blade speed by width of cut against that at 4 in (102 mm): Machinery's Handbook, 31st ed., p. 1245, corrections at 0.25, 0.75, 1.25, 4 and 8 in.
/// Linear between them, constant outside.
/// </summary>
internal static class WidthCorrection
{
    public const string Source = "Machinery's Handbook, 31st ed., p. 1245, correction by width of cut";

    private const double MillimetersPerInch = 25.4;

    internal static readonly (double Inches, double Factor)[] Points = [(0.25, 1.15), (0.75, 1.12), (1.25, 1.10), (4, 1.00), (8, 0.88)];

    public static double At(double widthMillimeters)
    {
        var inches = widthMillimeters / MillimetersPerInch;
        if (inches <= Points[0].Inches)
            return Points[0].Factor;
        for (var i = 1; i < Points.Length; i++)
        {
            if (inches <= Points[i].Inches)
                return Between(Points[i - 1], Points[i], inches);
        }

        return Points[^1].Factor;
    }

    private static double Between((double Inches, double Factor) low, (double Inches, double Factor) high, double inches) =>
        low.Factor + (high.Factor - low.Factor) * (inches - low.Inches) / (high.Inches - low.Inches);
}
