using System.Globalization;

namespace SawEngine.Core;

/// <summary>How a verifier writes names and figures in the sentences of its violations.</summary>
/// <param name="LayoutName">What the layout is called; by its stock where null.</param>
/// <param name="Length">Writes a length given in nanometers.</param>
/// <param name="Value">Writes a value given in millionths.</param>
public sealed record ViolationText(string? LayoutName, Func<decimal, string> Length, Func<decimal, string> Value)
{
    /// <summary>Lengths in mm, values in the unit of the objective.</summary>
    public static readonly ViolationText Plain = new(null, nanometers => Text(nanometers / 1_000_000m) + " mm", micros => Text(micros / 1_000_000m));

    private static string Text(decimal number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
