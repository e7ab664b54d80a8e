using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Tests;

/// <summary>
/// The twin in millimeters of a request in inches, and the comparison of their answers. Which members are lengths is read from the marks on the types of the
/// interface, so that none is forgotten; the arithmetic is this file's own, decimal and exact.
/// </summary>
internal static partial class MetricTwin
{
    private const decimal MillimetersPerInch = 25.4m;

    /// <summary>Customary twins, by the end of the metric member's name: its own end, what one of it is in the metric unit, and the step that it is rounded to.</summary>
    private static readonly (string Metric, string Customary, decimal Factor, decimal Step)[] Customary =
    [
        ("Cm2PerMin", "In2PerMin", 6.4516m, 0.01m),
        ("MmPerMin", "InPerMin", 25.4m, 0.01m),
        ("MPerMin", "FtPerMin", 0.3048m, 0.1m),
        ("Kg", "Lb", 0.45359237m, 0.001m),
        ("Kw", "Hp", 0.7456998715822702m, 0.01m),
    ];

    /// <summary>Their value and bound are lengths where stock has no costs, and money where it has: in inches rounded down to six decimals.</summary>
    private static readonly Type[] CarriersOfValue = [typeof(NestObjectiveJson), typeof(NestRemainderJson)];

    /// <summary>The same request in millimeters.</summary>
    public static JsonObject Of(JsonObject request, Type type)
    {
        var twin = Converted(request, WireJson.Options.GetTypeInfo(type), isLength: false)!.AsObject();
        twin["lengthUnit"] = "mm";
        return twin;
    }

    /// <summary>A length in feet and inches in millimeters.</summary>
    public static decimal Millimeters(string text)
    {
        var parts = Numbers().Matches(text.Replace('′', '\'').Replace('″', '"'));
        var inches = 0m;
        foreach (var part in parts.Select(match => match.Groups))
        {
            var number = decimal.Parse(part["whole"].Value, CultureInfo.InvariantCulture) / (part["bottom"].Success ? decimal.Parse(part["bottom"].Value, CultureInfo.InvariantCulture) : 1m);
            inches += number * (part["feet"].Success ? 12m : 1m);
        }
        return inches * MillimetersPerInch;
    }

    /// <summary>Where the two answers differ other than by their unit; empty where they are twins.</summary>
    public static IReadOnlyList<string> Differences(JsonObject inches, JsonObject millimeters, Type type, bool isCosted)
    {
        var (one, other) = (inches.DeepClone().AsObject(), millimeters.DeepClone().AsObject());
        foreach (var answer in new[] { one, other })
        {
            Assert.True(answer.Remove("timing") && answer.Remove("requestDigest"));
        }
        return [.. Differences(one, other, WireJson.Options.GetTypeInfo(type), isLength: false, isCosted, "#")];
    }

    private static JsonNode? Converted(JsonNode? node, JsonTypeInfo type, bool isLength) => node switch
    {
        JsonObject members when type.Kind == JsonTypeInfoKind.Object => new JsonObject(members.Select(member => ConvertedMember(member, type))),
        JsonArray items => new JsonArray([.. items.Select(item => Converted(item, Info(type.ElementType!), isLength))]),
        JsonValue value when isLength => JsonValue.Create(value.GetValue<decimal>() * MillimetersPerInch),
        _ => node?.DeepClone(),
    };

    private static KeyValuePair<string, JsonNode?> ConvertedMember(KeyValuePair<string, JsonNode?> member, JsonTypeInfo type)
    {
        if (member.Key == "lengthText" && typeof(IStatedLength).IsAssignableFrom(type.Type))
            return new("length", JsonValue.Create(Millimeters((string)member.Value!)));
        var property = Property(type, member.Key)!;
        return new(member.Key, Converted(member.Value, Info(property.PropertyType), IsLength(property)));
    }

    private static IEnumerable<string> Differences(JsonNode? inches, JsonNode? millimeters, JsonTypeInfo type, bool isLength, bool isCosted, string at)
    {
        switch (inches, millimeters)
        {
            case (JsonObject one, JsonObject other) when type.Kind == JsonTypeInfoKind.Object:
                return DifferencesOfMembers(one, other, type, isCosted, at);
            case (JsonArray one, JsonArray other) when one.Count == other.Count:
                return Enumerable.Range(0, one.Count).SelectMany(i => Differences(one[i], other[i], Info(type.ElementType!), isLength, isCosted, $"{at}/{i}"));
            case (JsonValue one, JsonValue other) when isLength && one.GetValue<decimal>() * MillimetersPerInch == other.GetValue<decimal>():
                return [];
            default:
                return !isLength && JsonNode.DeepEquals(inches, millimeters) ? [] : [$"{at}: {inches?.ToJsonString()} in, {millimeters?.ToJsonString()} mm"];
        }
    }

    private static IEnumerable<string> DifferencesOfMembers(JsonObject inches, JsonObject millimeters, JsonTypeInfo type, bool isCosted, string at)
    {
        var unread = millimeters.Select(member => member.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, value) in inches)
        {
            var here = $"{at}/{name}";
            unread.Remove(name);
            if (Customary.Any(twin => name.EndsWith(twin.Customary, StringComparison.Ordinal)))
            {
                if (millimeters.ContainsKey(name))
                    yield return $"{here}: stands in millimeters too";
                continue;
            }
            foreach (var difference in MemberDifferences(name, value, inches, millimeters, type, isCosted, here))
                yield return difference;
        }
        foreach (var name in unread)
            yield return $"{at}/{name}: missing in inches";
    }

    private static IEnumerable<string> MemberDifferences(string name, JsonNode? value, JsonObject inches, JsonObject millimeters, JsonTypeInfo type, bool isCosted, string at)
    {
        var other = millimeters[name];
        if (name == "lengthUnit")
            return ((string?)value, (string?)other) == ("in", "mm") ? [] : [$"{at}: {value} and {other}"];
        if (name == "detail" && value is not null && other is not null)
            return IsSameSentence((string)value!, (string)other!) ? [] : [$"{at}: {value} in, {other} mm"];
        if (type.Type == typeof(DefaultJson) && (string?)millimeters["unit"] == "mm" && name is "unit" or "value")
            return IsDefaultInInches(inches, millimeters) ? [] : [$"{at}: {inches.ToJsonString()} and {millimeters.ToJsonString()}"];
        if (!isCosted && CarriersOfValue.Contains(type.Type) && name is "value" or "bound")
            return value!.GetValue<decimal>() == decimal.Floor(other!.GetValue<decimal>() / MillimetersPerInch * 1_000_000m) / 1_000_000m ? [] : [$"{at}: {value} in, {other} mm"];
        var property = Property(type, name)!;
        return Differences(value, other, Info(property.PropertyType), IsLength(property), isCosted, at).Concat(CustomaryDifferences(name, value, inches, at));
    }

    /// <summary>Sentences are the same but for the lengths in them, which are written to six decimals of the unit.</summary>
    private static bool IsSameSentence(string inches, string millimeters)
    {
        // What the engine itself says stays metric in both.
        if (inches == millimeters)
            return true;
        var (one, other) = (LengthInText().Matches(inches), LengthInText().Matches(millimeters));
        return LengthInText().Replace(inches, "#") == LengthInText().Replace(millimeters, "#")
            && one.Zip(other).All(pair => (pair.First.Groups[2].Value, pair.Second.Groups[2].Value) == ("in", "mm")
                && Math.Abs(Figure(pair.First) * MillimetersPerInch - Figure(pair.Second)) <= 0.000001m * MillimetersPerInch);

        static decimal Figure(Match length) => decimal.Parse(length.Groups[1].Value, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"(-?\d+(?:\.\d+)?) (in|mm)\b")]
    private static partial Regex LengthInText();

    /// <summary>The customary twin of a metric quantity stands beside it, the nearest to what it stands for within the rounding of both.</summary>
    private static IEnumerable<string> CustomaryDifferences(string name, JsonNode? value, JsonObject beside, string at)
    {
        if (Customary.FirstOrDefault(twin => name.EndsWith(twin.Metric, StringComparison.Ordinal)) is not { Metric: { } metric } found)
            yield break;
        var twin = beside[name[..^metric.Length] + found.Customary];
        var exact = value!.GetValue<decimal>() / found.Factor;
        var written = 0.5m * (metric == "Kg" ? 0.001m : metric == "Kw" ? 0.01m : 0.1m) / found.Factor;
        if (twin is null || Math.Abs(twin.GetValue<decimal>() - exact) > 0.5m * found.Step + written)
            yield return $"{at}: {value} has the customary twin {twin?.ToJsonString() ?? "none"}";
    }

    private static bool IsDefaultInInches(JsonObject inches, JsonObject millimeters) =>
        (string?)inches["unit"] == "in" && (decimal)inches["value"]! == Math.Round((decimal)millimeters["value"]! / MillimetersPerInch, 6, MidpointRounding.ToEven);

    private static bool IsLength(JsonPropertyInfo property) => property.AttributeProvider!.GetCustomAttributes(typeof(LengthRangeAttribute), inherit: true).Length > 0;

    private static JsonPropertyInfo? Property(JsonTypeInfo type, string name) => type.Properties.SingleOrDefault(property => property.Name == name);

    private static JsonTypeInfo Info(Type type) => WireJson.Options.GetTypeInfo(type);

    [GeneratedRegex("(?<whole>[0-9.]+)(/(?<bottom>[0-9]+))? *(?<feet>'|ft)?")]
    private static partial Regex Numbers();
}
