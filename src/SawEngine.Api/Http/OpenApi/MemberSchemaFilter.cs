using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SawEngine.Api.Wire;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>
/// Writes what the types say and the generator does not: null is never a value of its own, open texts list their known values, and the initial value of a
/// member is its default in a request and shows in an answer that it is always there.
/// </summary>
internal sealed class MemberSchemaFilter : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (context.MemberInfo?.GetCustomAttribute<KnownValuesAttribute>() is { } known)
            ListKnownValues(schema, known);
        if (schema is not OpenApiSchema changed)
            return;
        changed.Description = OneLine(changed.Description);
        if (changed.Type is { } type)
            changed.Type = type & ~JsonSchemaType.Null;
        if (changed is { Type: JsonSchemaType.Array, Items: OpenApiSchema items })
            WriteNumbersOfList(changed, items);
        if (changed.Properties is { Count: > 0 } && context.Type.GetConstructor(Type.EmptyTypes) is not null)
            WriteInitialValues(changed, context.Type);
    }

    private static void ListKnownValues(IOpenApiSchema schema, KnownValuesAttribute known)
    {
        if (schema is not OpenApiSchema open)
            return;
        // Of a list each item is one of them.
        var named = open is { Type: { } type, Items: OpenApiSchema item } && type.HasFlag(JsonSchemaType.Array) ? item : open;
        named.Examples = [.. known.Values.Select(value => (JsonNode)value)];
        open.Description = $"{open.Description} Known values: {string.Join(", ", known.Values)}; others may be added.".Trim();
    }

    /// <summary>A range on a list of numbers bounds each of them. In lists they are <c>double</c>: a common client cannot read lists of <c>decimal</c>.</summary>
    private static void WriteNumbersOfList(OpenApiSchema list, OpenApiSchema items)
    {
        items.Format = items.Format == "decimal" ? "double" : items.Format;
        (items.Minimum, items.Maximum) = (list.Minimum ?? items.Minimum, list.Maximum ?? items.Maximum);
        (items.ExclusiveMinimum, items.ExclusiveMaximum) = (list.ExclusiveMinimum ?? items.ExclusiveMinimum, list.ExclusiveMaximum ?? items.ExclusiveMaximum);
        (list.Minimum, list.Maximum, list.ExclusiveMinimum, list.ExclusiveMaximum) = (null, null, null, null);
    }

    private static void WriteInitialValues(OpenApiSchema schema, Type type)
    {
        var initial = Activator.CreateInstance(type)!;
        foreach (var property in WireJson.Options.GetTypeInfo(type).Properties.Where(p => !p.IsRequired))
        {
            if (property.Get?.Invoke(initial) is not { } value)
                continue;
            if (initial is VersionedResponse)
                (schema.Required ??= new SortedSet<string>(StringComparer.Ordinal)).Add(property.Name);
            else if (value is string or ValueType)
                WriteDefault(schema.Properties![property.Name], JsonSerializer.SerializeToNode(value, property.PropertyType, WireJson.Options));
        }
    }

    private static void WriteDefault(IOpenApiSchema member, JsonNode? value)
    {
        if (member is OpenApiSchema own)
            own.Default = value;
        else if (member is OpenApiSchemaReference reference)
            reference.Default = value;
    }

    private static string? OneLine(string? text) =>
        text is null ? null : string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
