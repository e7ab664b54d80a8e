using System.Globalization;
using System.Text;

namespace SawEngine.Api.Wire;

/// <summary>Text of the caller, made safe to stand in a message: bounded, without control characters.</summary>
public static class Quoted
{
    private const int Longest = 60;

    public static string Text(string text)
    {
        var shown = string.Concat(text.EnumerateRunes().Take(Longest));
        return text.Length > Longest ? $"`{Plain(shown)}…`" : $"`{Plain(shown)}`";
    }

    /// <summary>The text with a replacement for everything that controls a terminal or the direction of text.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            plain.Append(IsControl(rune) ? "\uFFFD" : rune.ToString());
        return plain.ToString();
    }

    /// <summary>Whether a character controls a terminal or the direction of text instead of being read.</summary>
    internal static bool IsControl(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
