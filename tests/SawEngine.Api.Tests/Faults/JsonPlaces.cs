using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Faults;

/// <summary>Finds the places of a JSON body and writes it again with the text of one place changed: what a tree could not hold.</summary>
internal static class JsonPlaces
{
    /// <summary>Pointers of all values, parents first.</summary>
    public static IEnumerable<string> Of(JsonNode? node, string at = "#") => (node switch
    {
        JsonObject o => o.SelectMany(member => Of(member.Value, $"{at}/{member.Key}")),
        JsonArray a => a.SelectMany((item, i) => Of(item, $"{at}/{i}")),
        _ => [],
    }).Prepend(at);

    /// <summary>The value at a pointer.</summary>
    public static JsonNode? At(JsonNode? root, string pointer) =>
        pointer.Split('/').Skip(1).Aggregate(root, static (node, step) => node is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)] : node![step]);

    /// <summary>The body with the text of one place edited.</summary>
    public static string With(JsonNode? root, string place, Func<string, string> edit) => Write(root, "#", place, edit);

    private static string Write(JsonNode? node, string at, string place, Func<string, string> edit)
    {
        var text = node switch
        {
            JsonObject o => "{" + string.Join(',', o.Select(member => $"{JsonValue.Create(member.Key).ToJsonString()}:{Write(member.Value, $"{at}/{member.Key}", place, edit)}")) + "}",
            JsonArray a => "[" + string.Join(',', a.Select((item, i) => Write(item, $"{at}/{i}", place, edit))) + "]",
            null => "null",
            _ => node.ToJsonString(),
        };
        return at == place ? edit(text) : text;
    }
}
