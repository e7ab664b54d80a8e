namespace SawEngine.Api.Http.Security;

/// <summary>A key that is let in. The key itself is never stored, only its hash.</summary>
/// <param name="Id">Who it was given to; stands in the log. One id may have several keys, so that they can be changed without a gap.</param>
/// <param name="Sha256">SHA-256 of the key in UTF-8.</param>
internal sealed record ApiKey(string Id, byte[] Sha256)
{
    private const int LongestId = 64;

    /// <summary>What an id is, in words.</summary>
    public const string IdForm = "1 to 64 letters, digits, dots, hyphens or underscores";

    /// <summary>Whether a text can be an id.</summary>
    public static bool IsId(string text) => text.Length is > 0 and <= LongestId && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_');
}
