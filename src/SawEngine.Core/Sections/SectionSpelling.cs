using System.Globalization;
using System.Text.RegularExpressions;

namespace SawEngine.Core.Sections;

/// <summary>
/// Other spellings of sections, from the form in which designations are compared to that of the word the catalog uses: abbreviated solid bars (Rd, Fl, Vkt, Skt in mm;
/// RB, FB, SB, the American ones, in inches), pipe in any order of words (<c>4" SCH 40 PIPE</c>), inch marks on shapes that are in inches anyway.
/// </summary>
internal static partial class SectionSpelling
{
    private static readonly Dictionary<string, string> s_words = new(StringComparer.Ordinal)
    {
        ["ROUNDBAR"] = "ROUND",
        ["RD"] = "ROUND",
        ["RND"] = "ROUND",
        ["FLATBAR"] = "FLAT",
        ["FL"] = "FLAT",
        ["FLT"] = "FLAT",
        ["SQUAREBAR"] = "SQUARE",
        ["SQ"] = "SQUARE",
        ["VKT"] = "SQUARE",
        ["HEXAGON"] = "HEX",
        ["HEXBAR"] = "HEX",
        ["SKT"] = "HEX",
    };

    private static readonly Dictionary<string, string> s_wordsInInches = new(StringComparer.Ordinal)
    {
        ["RB"] = "ROUND",
        ["FB"] = "FLAT",
        ["SB"] = "SQUARE",
    };

    /// <summary>What a form may stand for, itself first.</summary>
    public static IEnumerable<string> ReadingsOf(string form)
    {
        yield return form;
        var bar = Bar().Match(form);
        var (word, size) = (bar.Groups["word"].Value, bar.Groups["size"].Value);
        if (s_words.TryGetValue(word, out var plain))
            yield return plain + size;
        if (s_wordsInInches.TryGetValue(word, out var inInches))
            yield return inInches + size + (size.EndsWith("IN", StringComparison.Ordinal) || size.EndsWith("MM", StringComparison.Ordinal) ? "" : "IN");
        if (Pipe().Match(form) is { Success: true } pipe)
            yield return PipeOf(pipe.Groups["size"].Value, pipe.Groups["schedule"].Value);
        if (InInches().IsMatch(form))
            yield return InchMark().Replace(form, "");
    }

    /// <summary>The form with its fractions as decimals, where those end: 1-1/4 is 1.25, and .25 and 1/4 are alike.</summary>
    public static string InDecimals(string form) => Fraction().Replace(form, match =>
    {
        var bottom = decimal.Parse(match.Groups["bottom"].Value, CultureInfo.InvariantCulture);
        if (bottom == 0)
            return match.Value;
        var whole = match.Groups["whole"].Success ? decimal.Parse(match.Groups["whole"].Value, CultureInfo.InvariantCulture) : 0;
        var part = decimal.Parse(match.Groups["top"].Value, CultureInfo.InvariantCulture) / bottom;
        return decimal.Round(part, 6) == part ? (whole + part).ToString("0.######", CultureInfo.InvariantCulture) : match.Value;
    });

    private static string PipeOf(string size, string schedule) => schedule switch
    {
        "STD" or "XS" => "PIPE" + size + schedule,
        "XSTRONG" or "X-STRONG" or "EXTRASTRONG" => $"PIPE{size}XS",
        _ => $"NPS{size}SCH{schedule}",
    };

    [GeneratedRegex("^(?<word>[A-Z]+)(?<size>[0-9.].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Bar();

    [GeneratedRegex(@"^(?=.*(PIPE|NPS))(PIPE)?(NPS)?(?<size>[0-9./-]+)(IN)?(PIPE)?(SCH(EDULE)?(?<schedule>[0-9]+)|(?<schedule>STD|XS|X-?STRONG|EXTRASTRONG))(PIPE)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pipe();

    [GeneratedRegex("^(HSS|L|W|C|PIPE)[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex InInches();

    [GeneratedRegex("(?<=[0-9])IN", RegexOptions.CultureInvariant)]
    private static partial Regex InchMark();

    [GeneratedRegex("(?<![0-9.])((?<whole>[0-9]{1,4})-)?(?<top>[0-9]{1,4})/(?<bottom>[0-9]{1,4})(?![0-9.])", RegexOptions.CultureInvariant)]
    private static partial Regex Fraction();
}
