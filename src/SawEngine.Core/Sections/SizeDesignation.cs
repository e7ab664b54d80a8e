using System.Globalization;
using System.Text.RegularExpressions;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// Designations of solid bars that say their own size: <c>Round 37</c>, <c>Square 45</c>, <c>Hex 22</c> (across flats), <c>Flat 80x12</c> (width x height)
/// in mm with up to 3 decimals, or in inches where they end so or have a fraction: <c>Round 1.5 in</c>, <c>Round 1-1/2</c>, <c>Flat 4x1/2</c>.
/// </summary>
internal static partial class SizeDesignation
{
    private const string Source = "dimensions in the designation";

    /// <summary>The bar of a designation in normal form (see <see cref="DesignationForm"/>), or null where it is no such designation or no possible size.</summary>
    public static CatalogSection? Find(string normalForm)
    {
        var match = Pattern().Match(normalForm);
        if (!match.Success)
            return null;
        // Nobody writes millimeters as fractions.
        var inches = match.Groups["in"].Success || (normalForm.Contains('/', StringComparison.Ordinal) && !match.Groups["mm"].Success);
        decimal?[] sizes = [.. match.Groups["size"].Captures.Select(c => Number(c.Value, inches))];
        if (Dimensions(match.Groups["shape"].Value, [.. sizes.Select(s => ToLength(s, inches))]) is not { } bare)
            return null;
        var dimensions = bare with { Designation = bare.Designation + " " + string.Join('x', sizes.Select(Text)) + (inches ? " in" : "") };
        return OutlineSection.Create(dimensions, Source, Confidence.Caller, out _) is { } section
            ? new(section, dimensions, Standard: null, Aliases: [], Published: null, Note: null)
            : null;
    }

    private static SectionDimensions? Dimensions(string shape, Length?[] sizes) => (shape, sizes) switch
    {
        ("ROUND", [{ } diameter]) => new() { Designation = "Round", Shape = SectionShape.Round, Diameter = diameter },
        ("SQUARE", [{ } side]) => new() { Designation = "Square", Shape = SectionShape.Square, Width = side },
        ("HEX", [{ } acrossFlats]) => new() { Designation = "Hex", Shape = SectionShape.Hexagon, AcrossFlats = acrossFlats },
        ("FLAT", [{ } width, { } height]) => new() { Designation = "Flat", Shape = SectionShape.Flat, Width = width, Height = height },
        _ => null,
    };

    private static decimal? Number(string text, bool inches)
    {
        if (!inches)
            return Millimeters().IsMatch(text) ? decimal.Parse(text, CultureInfo.InvariantCulture) : null;
        var match = Inches().Match(text);
        if (!match.Success)
            return null;
        var whole = Part(match, "whole", 0);
        return Part(match, "bottom", 1) is var bottom && bottom > 0 ? whole + Part(match, "top", 0) / bottom : null;
    }

    private static decimal Part(Match match, string group, decimal absent) =>
        match.Groups[group].Success ? decimal.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : absent;

    /// <summary>The length, where it is a whole number of nanometers: 1/3 in is none.</summary>
    private static Length? ToLength(decimal? size, bool inches)
    {
        var nanometers = size * (inches ? Length.NanometersPerInch : Length.NanometersPerMillimeter);
        return nanometers is { } whole && decimal.IsInteger(whole) ? Length.FromNanometers((long)whole) : null;
    }

    private static string? Text(decimal? size) => size?.ToString("0.######", CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<shape>ROUND|SQUARE|HEX|FLAT)(?<size>[0-9./-]+)(((IN)?X(?<size>[0-9./-]+))?(?<in>IN)|((MM)?X(?<size>[0-9./-]+))?(?<mm>MM)|X(?<size>[0-9./-]+))?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"^[0-9]{1,5}(\.[0-9]{1,3})?$", RegexOptions.CultureInvariant)]
    private static partial Regex Millimeters();

    [GeneratedRegex(@"^(?<whole>[0-9]{1,3}(\.[0-9]{1,6})?)$|^((?<whole>[0-9]{1,3})-)?(?<top>[0-9]{1,3})/(?<bottom>[0-9]{1,3})$", RegexOptions.CultureInvariant)]
    private static partial Regex Inches();
}
