using System.Globalization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Angles of set-ups as texts: degrees, equal angles written alike.</summary>
internal static class AngleText
{
    /// <summary>Largest angle, of either hand.</summary>
    public const int MostDegrees = 90;

    private const int Decimals = 3;

    /// <summary>The text of an angle.</summary>
    public static string Of(decimal degrees) => ShortestDecimalConverter.Text(degrees);

    /// <summary>The degrees of a text; null where it is no angle with at most three decimals.</summary>
    public static decimal? Read(string text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees)
        && Math.Abs(degrees) <= MostDegrees && decimal.Round(degrees, Decimals) == degrees ? degrees : null;
}
