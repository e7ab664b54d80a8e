using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>Writes decimals exactly and without trailing zeros.</summary>
internal sealed class ShortestDecimalConverter : JsonConverter<decimal>
{
    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDecimal();

    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) => writer.WriteRawValue(Text(value));

    internal static string Text(decimal value) =>
        value == 0 ? "0" : value.ToString("0.############################", CultureInfo.InvariantCulture);
}
