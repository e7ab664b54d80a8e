using System.Text.RegularExpressions;

namespace SawEngine.Core.Sections;

/// <summary>The form in which designations are compared: case, spaces, the signs for times and inch, and zeros at the end of decimals and before their point make no difference.</summary>
internal static partial class DesignationForm
{
    public static string Of(string designation)
    {
        var text = designation.Trim().ToUpperInvariant().Replace('×', 'X').Replace("\"", "IN", StringComparison.Ordinal).Replace("INCH", "IN", StringComparison.Ordinal)
            .Replace("SCH.", "SCH", StringComparison.Ordinal);
        // A space between digits has a meaning: 1 1/2 is 1-1/2 and not 11/2, and 80 12 is not 8012.
        text = MixedNumber().Replace(text, "-");
        text = SpaceBesideNoDigit().Replace(text, "");
        return ZerosAtEnd().Replace(PointInFront().Replace(text, "0."), "$1");
    }

    [GeneratedRegex(@"(?<=[0-9])\s+(?=[0-9]+/)", RegexOptions.CultureInvariant)]
    private static partial Regex MixedNumber();

    [GeneratedRegex(@"(?<![0-9])\s+|\s+(?![0-9\s])", RegexOptions.CultureInvariant)]
    private static partial Regex SpaceBesideNoDigit();

    [GeneratedRegex(@"(?<![0-9])\.(?=[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex PointInFront();

    [GeneratedRegex(@"(\.[0-9]*[1-9])0+(?![0-9])|\.0+(?![0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex ZerosAtEnd();
}
