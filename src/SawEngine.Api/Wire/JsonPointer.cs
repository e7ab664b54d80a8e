using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SawEngine.Api.Wire;

/// <summary>JSON Pointers in their form as a URI fragment (RFC 6901, section 6).</summary>
public static class JsonPointer
{
    /// <summary>The whole body.</summary>
    public const string Root = "#";

    /// <summary>A member of an object.</summary>
    public static string Member(string parent, string name) => parent + "/" + (name.All(char.IsAsciiLetterOrDigit) ? name : Escaped(name));

    /// <summary>An item of a list.</summary>
    public static string Item(string parent, int index) => parent + "/" + index.ToString(CultureInfo.InvariantCulture);

    /// <summary>The pointer for a property path such as <c>Pieces[3].Length</c>.</summary>
    public static string OfPropertyPath(string path)
    {
        var pointer = new StringBuilder(Root);
        foreach (var step in path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
            pointer.Append('/').Append(JsonNamingPolicy.CamelCase.ConvertName(step));
        return pointer.ToString();
    }

    private static string Escaped(string name) =>
        Uri.EscapeDataString(name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
}
