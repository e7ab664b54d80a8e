using System.Globalization;
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
}
