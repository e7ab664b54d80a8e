using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>How enum values are written: in camelCase, or as their <see cref="JsonStringEnumMemberNameAttribute"/> says; read by exact case.</summary>
public static class WireEnum
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<string>> KnownTexts = new();

    /// <summary>The text of a value.</summary>
    public static string Text<T>(T value) where T : struct, Enum => Text(typeof(T), value.ToString());

    /// <summary>All texts of an enum, in its order.</summary>
    public static IReadOnlyList<string> Texts(Type type) =>
        KnownTexts.GetOrAdd(type, static known => [.. Enum.GetNames(known).Select(name => Text(known, name))]);

    private static string Text(Type type, string name) =>
        type.GetField(name)?.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(name);

    internal sealed class ConverterFactory : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert))!;
    }

    private sealed class Converter<T> : JsonConverter<T> where T : struct, Enum
    {
        private readonly Dictionary<string, T> _values = Enum.GetValues<T>().ToDictionary(Text, StringComparer.Ordinal);

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String && _values.TryGetValue(reader.GetString()!, out var value) ? value : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Text(value));
    }
}
