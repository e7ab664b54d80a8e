using System.Globalization;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Faults;

/// <summary>
/// Spoils the example of an operation at every place in every way that the OpenAPI document forbids there. The document alone says what is expected, so it and the service
/// are held against each other.
/// </summary>
internal sealed class SpoiledBodies(JsonNode document, JsonNode example)
{
    private const int LongestListToExceed = 2000;
    private const decimal LargestInteger = int.MaxValue;

    /// <summary>Lists whose items have unique ids: the list, and the id.</summary>
    private static readonly Dictionary<string, string> Ids = new(StringComparer.Ordinal)
    {
        ["orders"] = "orderId",
        ["lines"] = "lineId",
        ["pieces"] = "pieceId",
        ["stock"] = "stockId",
        ["sections"] = "sectionId",
        ["grades"] = "gradeId",
        ["saws"] = "sawId",
        ["blades"] = "bladeId",
        ["calendars"] = "calendarId",
        ["jobs"] = "jobId",
        ["operators"] = "operatorId",
        ["cranes"] = "craneId",
        ["cuts"] = "cutId",
        ["layouts"] = "layoutId",
    };

    /// <summary>Lists of that name whose items need not be unique: what an edit lists twice is part of the answer.</summary>
    private static readonly string[] NotUnique = ["#/schedule/jobs"];

    /// <summary>All bodies for a request schema.</summary>
    public IEnumerable<SpoiledBody> All(JsonNode schema) =>
        Whole().Concat(Places(example, "#", Resolved(schema)).SelectMany(place => Of(place.Pointer, place.Node, place.Schema)));

    private IEnumerable<SpoiledBody> Whole()
    {
        var text = example.ToJsonString();
        yield return new("nothing", "", 400, "#", "invalid_json");
        yield return new("half of it", text[..(text.Length / 2)], 400, "#", "invalid_json");
        yield return new("two bodies", text + text, 400, "#", "invalid_json");
        yield return new("a comment", "// all\n" + text, 400, "#", "invalid_json");
        yield return new("a trailing comma", text[..^1] + ",}", 400, "#", "invalid_json");
        yield return new("no object", $"[{text}]", 400, "#", "wrong_type");
        yield return new("null", "null", 400, "#", "wrong_type");
        yield return new("a hundred thousand brackets", new string('[', 100_000), 400, "#", "too_deep");
        yield return new("a hundred thousand objects", string.Concat(Enumerable.Repeat("{\"a\":", 100_000)), 400, "#", "too_deep");
    }

    /// <summary>All values of the example with the schema that each has; free maps are left out.</summary>
    private IEnumerable<(string Pointer, JsonNode Node, JsonNode Schema)> Places(JsonNode node, string pointer, JsonNode schema)
    {
        var below = node switch
        {
            JsonObject o when schema["properties"] is { } members =>
                o.SelectMany(member => Places(member.Value!, $"{pointer}/{member.Key}", Resolved(members[member.Key]!))),
            JsonArray a => a.SelectMany((item, i) => Places(item!, $"{pointer}/{i}", Resolved(schema["items"]!))),
            _ => [],
        };
        return below.Prepend((pointer, node, schema));
    }

    private JsonNode Resolved(JsonNode schema) =>
        schema["$ref"] is { } reference ? document["components"]!["schemas"]![((string)reference!).Split('/')[^1]]! : schema;

    private IEnumerable<SpoiledBody> Of(string at, JsonNode node, JsonNode schema) => node switch
    {
        JsonObject => OfObject(at, schema),
        JsonArray list => OfList(at, list, schema),
        _ when schema["enum"] is JsonArray values => OfEnum(at, values),
        _ => (string?)schema["type"] switch
        {
            "number" or "integer" => OfNumber(at, schema),
            "boolean" => [Put("a text for a truth value", at, "\"true\"", 400, "wrong_type")],
            _ => OfText(at, schema),
        },
    };

    private IEnumerable<SpoiledBody> OfObject(string at, JsonNode schema)
    {
        yield return Put("a list for an object", at, "[]", 400, "wrong_type");
        if (schema["properties"] is not JsonObject members)
            yield break;
        yield return new("an unknown member", Edited(at, text => text[..^1] + (text.Length > 2 ? "," : "") + "\"surprise\":1}"), 400, at + "/surprise", "unknown_member");
        if (JsonPlaces.At(example, at)!.AsObject().FirstOrDefault().Key is { } first)
            yield return new("a doubled member", Edited(at, text => text[..^1] + $",\"{first}\":null}}"), 400, $"{at}/{first}", "doubled_member");
        foreach (var name in schema["required"]?.AsArray().Select(member => (string)member!) ?? [])
        {
            yield return new($"no {name}", Edited(at, text => Without(text, name)), 400, at, "missing_member");
            yield return Put($"null for {name}", $"{at}/{name}", "null", 400, "null_not_allowed");
        }
    }

    private IEnumerable<SpoiledBody> OfList(string at, JsonArray list, JsonNode schema)
    {
        yield return Put("an object for a list", at, "{}", 400, "wrong_type");
        yield return new("null in a list", Edited(at, text => text[..^1] + (list.Count > 0 ? "," : "") + "null]"), 400, $"{at}/{list.Count}", "null_not_allowed");
        if ((int?)schema["minItems"] >= 1)
            yield return Put("an empty list", at, "[]", 422, "empty");
        if ((int?)schema["maxItems"] is { } most and <= LongestListToExceed && list.Count > 0)
            yield return Put("a list too long", at, $"[{string.Join(',', Enumerable.Repeat(list[0]!.ToJsonString(), most + 1))}]", 422, "too_many");
        if (list.Count > 0 && list[0] is JsonObject item && Ids.TryGetValue(at.Split('/')[^1], out var id) && item.ContainsKey(id) && !NotUnique.Contains(at))
            yield return new("an id twice", Edited(at, text => text[..^1] + "," + item.ToJsonString() + "]"), 422, $"{at}/{list.Count}/{id}", "duplicate_id");
    }

    private IEnumerable<SpoiledBody> OfEnum(string at, JsonArray values)
    {
        var first = (string)values[0]!;
        yield return Put("an unknown value", at, "\"unheard\"", 400, "unknown_value");
        yield return Put("a number for a value", at, "0", 400, "wrong_type");
        var otherCase = char.IsAsciiLetterLower(first[0]) ? first.ToUpperInvariant() : first.ToLowerInvariant();
        if (otherCase != first)
            yield return Put("another case", at, $"\"{otherCase}\"", 400, "unknown_value");
    }

    private IEnumerable<SpoiledBody> OfNumber(string at, JsonNode schema)
    {
        var isInteger = (string?)schema["type"] == "integer";
        yield return Put("a text for a number", at, "\"1\"", 400, "wrong_type");
        yield return new("not a number", Edited(at, _ => "NaN"), 400, "#", "invalid_json");
        yield return Put("a number beyond all", at, "1e400", 400, "out_of_range");
        yield return Put("a number below all", at, "-1e400", 400, "out_of_range");
        yield return Put("a number too small to read", at, "1e-300", 400, isInteger ? "not_an_integer" : "too_small_to_read");
        yield return Put("31 digits", at, "1.234567890123456789012345678901", 400, isInteger ? "not_an_integer" : "too_many_digits");
        if (isInteger)
            yield return Put("a fraction for an integer", at, "1.5", 400, "not_an_integer");
        if ((decimal?)schema["exclusiveMinimum"] == 0)
        {
            yield return Put("zero", at, "0", 422, "must_be_positive");
            yield return Put("a negative number", at, "-1", 422, "must_be_positive");
        }
        if ((decimal?)schema["minimum"] is { } least)
            yield return Put("less than the least", at, Text(least - 1), 422, "too_small");
        if ((decimal?)schema["maximum"] is { } most && (!isInteger || most < LargestInteger))
            yield return Put("more than the most", at, Text(most + 1), 422, "too_large");
    }

    private IEnumerable<SpoiledBody> OfText(string at, JsonNode schema)
    {
        yield return Put("a number for a text", at, "1", 400, "wrong_type");
        switch ((string?)schema["format"])
        {
            case "date-time" or "date":
                yield return Put("no date", at, "\"tomorrow\"", 400, "invalid_date_time");
                yield return Put("a date that is none", at, "\"2026-02-30\"", 400, "invalid_date_time");
                yield break;
            // Times of day alone have a pattern.
            case null when schema["pattern"] is not null:
                yield return Put("no time of day", at, "\"25:00\"", 400, "invalid_time");
                yield break;
        }
        yield return Put("half a surrogate pair", at, "\"\\ud800\"", 400, "invalid_character");
        yield return Put("a control character", at, "\"a\\u0007\"", 400, "invalid_character");
        if ((int?)schema["maxLength"] is { } most)
            yield return Put("a text too long", at, $"\"{new string('x', most + 1)}\"", 400, "too_long");
        if ((int?)schema["minLength"] >= 1)
            yield return Put("an empty text", at, "\"\"", 422, "empty");
    }

    private SpoiledBody Put(string what, string at, string text, int status, string code) => new(what, Edited(at, _ => text), status, at, code);

    private string Edited(string at, Func<string, string> edit) => JsonPlaces.With(example, at, edit);

    private static string Without(string text, string name)
    {
        var members = JsonNode.Parse(text)!.AsObject();
        members.Remove(name);
        return members.ToJsonString();
    }

    private static string Text(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
