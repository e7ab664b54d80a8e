using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire;

/// <summary>How JSON is read and written, everywhere.</summary>
public static class WireJson
{
    /// <summary>The one set of options. What a caller may send is decided by <see cref="ShapeWalk"/>, which is stricter.</summary>
    public static readonly JsonSerializerOptions Options = Configure(new JsonSerializerOptions { TypeInfoResolver = new DefaultJsonTypeInfoResolver() });

    /// <summary>Sets options.</summary>
    public static JsonSerializerOptions Configure(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.PropertyNameCaseInsensitive = false;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new WireEnum.ConverterFactory());
        options.Converters.Add(new ShortestDecimalConverter());
        options.Converters.Add(new ClockTimeConverter());
        return options;
    }
}
