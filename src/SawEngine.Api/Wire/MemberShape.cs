using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire;

/// <summary>What a wire type says of one of its members.</summary>
internal sealed class MemberShape(JsonPropertyInfo property)
{
    /// <summary>Name in JSON.</summary>
    public string Name { get; } = property.Name;

    /// <summary>Type in JSON.</summary>
    public JsonTypeInfo Type { get; } = WireJson.Options.GetTypeInfo(property.PropertyType);

    /// <summary>Whether it must be sent.</summary>
    public bool IsRequired { get; } = property.IsRequired;

    /// <summary>Bounds of a number; null where there are none.</summary>
    public RangeAttribute? Range { get; } = Attribute<RangeAttribute>(property);

    /// <summary>Fewest characters or entries.</summary>
    public int Least { get; } = Attribute<MinLengthAttribute>(property)?.Length ?? 0;

    /// <summary>Most characters or entries; null where none are stated.</summary>
    public int? Most { get; } = Attribute<MaxLengthAttribute>(property)?.Length;

    /// <summary>The value of the member in an object.</summary>
    public object? Of(object value) => property.Get?.Invoke(value);

    private static T? Attribute<T>(JsonPropertyInfo property) where T : Attribute =>
        property.AttributeProvider?.GetCustomAttributes(typeof(T), true) is [T attribute, ..] ? attribute : null;
}
