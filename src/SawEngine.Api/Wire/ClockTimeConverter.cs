using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>Times of day as <c>HH:mm</c>.</summary>
internal sealed class ClockTimeConverter : JsonConverter<TimeOnly>
{
    /// <summary>The same in the documents, whose format <c>time</c> asks for seconds and an offset.</summary>
    internal const string Pattern = "^([01][0-9]|2[0-3]):[0-5][0-9]$";

    private const string Format = "HH:mm";

    public override TimeOnly Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        TryRead(reader.GetString()!, out var time) ? time : throw new JsonException();

    public override void Write(Utf8JsonWriter writer, TimeOnly value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(Format, CultureInfo.InvariantCulture));

    internal static bool TryRead(string text, out TimeOnly time) =>
        TimeOnly.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out time);
}
