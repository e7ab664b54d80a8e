using System.Globalization;
using System.Text;

namespace SawEngine.Api.Wire;

/// <summary>Text of the caller, made safe to stand in a message: bounded, without control characters.</summary>
public static class Quoted
{
    private const int Longest = 60;

    public static string Text(string text)
    {
        var shown = new StringBuilder("`");
        foreach (var rune in text.EnumerateRunes().Take(Longest))
            shown.Append(IsControl(rune) ? "\uFFFD" : rune.ToString());
        return shown.Append(text.Length > Longest ? "…`" : "`").ToString();
    }

    /// <summary>Whether a character controls a terminal or the direction of text instead of being read.</summary>
    internal static bool IsControl(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
