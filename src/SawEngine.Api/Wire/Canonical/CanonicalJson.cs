using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SawEngine.Api.Wire.Canonical;

/// <summary>
/// The JSON Canonicalization Scheme (RFC 8785): no white space, members by their names' UTF-16 code units, numbers as ECMAScript writes doubles.
/// On demand lists that stand for sets are brought in order too: texts by themselves, objects by their id where the first member is one, else (shifts, breaks), and
/// among those of one id (used blades), by their canonical form. Numbers, and objects that begin with a number (points of an outline), are sequences and stay as they are.
/// </summary>
public static class CanonicalJson
{
    /// <summary>The canonical form of a value.</summary>
    public static string Of(JsonElement value, bool sortLists = false)
    {
        var text = new StringBuilder();
        Write(value, sortLists, text);
        return text.ToString();
    }

    private static void Write(JsonElement value, bool sortLists, StringBuilder text)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                WriteObject(value, sortLists, text);
                break;
            case JsonValueKind.Array:
                WriteList(value, sortLists, text);
                break;
            case JsonValueKind.String:
                WriteText(value.GetString()!, text);
                break;
            case JsonValueKind.Number:
                text.Append(EcmaScriptNumber.Text(value.GetDouble()));
                break;
            default:
                text.Append(value.GetRawText());
                break;
        }
    }

    private static void WriteObject(JsonElement value, bool sortLists, StringBuilder text)
    {
        var separator = '{';
        foreach (var member in value.EnumerateObject().OrderBy(m => m.Name, StringComparer.Ordinal))
        {
            text.Append(separator);
            WriteText(member.Name, text);
            text.Append(':');
            Write(member.Value, sortLists, text);
            separator = ',';
        }
        text.Append(separator == '{' ? "{}" : "}");
    }

    private static void WriteList(JsonElement value, bool sortLists, StringBuilder text)
    {
        var separator = '[';
        foreach (var item in sortLists ? Sorted(value) : value.EnumerateArray())
        {
            text.Append(separator);
            Write(item, sortLists, text);
            separator = ',';
        }
        text.Append(separator == '[' ? "[]" : "]");
    }

    private static IEnumerable<JsonElement> Sorted(JsonElement list)
    {
        var items = list.EnumerateArray().Select(item => (Item: item, Key: KeyOf(item))).ToList();
        return items.TrueForAll(item => item.Key is not null)
            ? items.GroupBy(item => item.Key!, item => item.Item, StringComparer.Ordinal).OrderBy(same => same.Key, StringComparer.Ordinal)
                .SelectMany(same => same.Skip(1).Any() ? same.OrderBy(item => Of(item, sortLists: true), StringComparer.Ordinal) : same.AsEnumerable())
            : list.EnumerateArray();
    }

    private static string? KeyOf(JsonElement item) => item.ValueKind switch
    {
        JsonValueKind.String => item.GetString(),
        JsonValueKind.Object => item.EnumerateObject().FirstOrDefault() switch
        {
            { Value.ValueKind: JsonValueKind.String } first when first.Name.EndsWith("Id", StringComparison.Ordinal) => first.Value.GetString(),
            { Value.ValueKind: JsonValueKind.Number } => null,
            _ => Of(item, sortLists: true),
        },
        _ => null,
    };

    private static void WriteText(string value, StringBuilder text)
    {
        text.Append('"');
        if (value.AsSpan().IndexOfAnyInRange('\0', '\x1f') < 0 && value.AsSpan().IndexOfAny('"', '\\') < 0)
            text.Append(value);
        else
            WriteEscaped(value, text);
        text.Append('"');
    }

    private static void WriteEscaped(string value, StringBuilder text)
    {
        foreach (var c in value)
        {
            text.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\b' => "\\b",
                '\f' => "\\f",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                < ' ' => "\\u" + ((int)c).ToString("x4", CultureInfo.InvariantCulture),
                _ => c.ToString(),
            });
        }
    }
}
