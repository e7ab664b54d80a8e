using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SawEngine.Api.Wire;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>
/// Writes what the types say and the generator does not: null is never a value of its own, defaults are the initial values of the members, open texts list
/// their known values, and texts of requests have a longest length.
/// </summary>
internal sealed class MemberSchemaFilter : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema changed)
            return;
        if (changed.Type is { } type)
            changed.Type = type & ~JsonSchemaType.Null;
        if (context.MemberInfo?.GetCustomAttribute<KnownValuesAttribute>() is { } known)
            ListKnownValues(changed, known);
        if (changed.Properties is { Count: > 0 } && context.Type is { IsAbstract: false, IsClass: true })
            FillDefaults(changed, context.Type);
    }

    private static void ListKnownValues(OpenApiSchema schema, KnownValuesAttribute known)
    {
        schema.Examples = [.. known.Values.Select(value => (JsonNode)value)];
        schema.Description = $"{schema.Description} Known values: {string.Join(", ", known.Values)}; others may be added.".Trim();
    }

    private static void FillDefaults(OpenApiSchema schema, Type type)
    {
        if (type.GetConstructor(Type.EmptyTypes) is null)
            return;
        var initial = Activator.CreateInstance(type)!;
        foreach (var property in WireJson.Options.GetTypeInfo(type).Properties.Where(p => !p.IsRequired && IsPlain(p.PropertyType)))
        {
            if (property.Get?.Invoke(initial) is { } value && schema.Properties![property.Name] is OpenApiSchema member)
                member.Default = JsonSerializer.SerializeToNode(value, property.PropertyType, WireJson.Options);
        }
    }

    private static bool IsPlain(Type type) => type == typeof(string) || type.IsValueType;
}
