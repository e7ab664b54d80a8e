using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests;

/// <summary>Resolves JSON Pointers by RFC 6901 alone, independently of how the service makes them.</summary>
internal static class Pointers
{
    public static bool Resolves(string pointer, JsonNode? body)
    {
        if (!pointer.StartsWith('#'))
            return false;
        var node = body;
        foreach (var escaped in pointer[1..].Split('/').Skip(1))
        {
            var name = Uri.UnescapeDataString(escaped).Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            switch (node)
            {
                case JsonObject o when o.ContainsKey(name):
                    node = o[name];
                    break;
                case JsonArray a when int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < a.Count:
                    node = a[index];
                    break;
                default:
                    return false;
            }
        }
        return true;
    }

    /// <summary>The body as a plain reader sees it; null where it is no JSON that one can hold.</summary>
    public static JsonNode? Read(ReadOnlyMemory<byte> body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return Copy(document.RootElement);
        }
        catch (Exception unreadable) when (unreadable is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    public static JsonNode? Read(string body) => Read(Encoding.UTF8.GetBytes(body));

    /// <summary>Objects and lists only: what pointers walk through. The last of doubled members counts.</summary>
    private static JsonNode Copy(JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                var copy = new JsonObject();
                foreach (var member in value.EnumerateObject())
                    copy[member.Name] = Copy(member.Value);
                return copy;
            case JsonValueKind.Array:
                return new JsonArray([.. value.EnumerateArray().Select(Copy)]);
            default:
                return JsonValue.Create(true);
        }
    }
}
