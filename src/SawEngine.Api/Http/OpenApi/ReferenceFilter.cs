using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SawEngine.Api.Features.ReferenceData;
using SawEngine.Api.Wire;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Writes the parameters of reference data, with their values, and an example of the answer.</summary>
internal sealed class ReferenceFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<ReferenceEndpoint>().FirstOrDefault() is not { } served)
            return;
        operation.Parameters = served.IsList
            ? [.. served.Resource.ListParameters.Select(InQuery), IfNoneMatch()]
            : [Designation(served.Resource), .. served.Resource.UnitParameters.Select(InQuery), IfNoneMatch()];
        foreach (var media in operation.Responses!["200"].Content!.Values.OfType<OpenApiMediaType>())
            media.Example = ExampleOf(served);
    }

    private static OpenApiParameter InQuery(ReferenceParameter parameter) => new()
    {
        Name = parameter.Name,
        In = ParameterLocation.Query,
        Description = parameter.Description,
        Schema = parameter.Values is { } values
            ? new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. values.Select(value => (JsonNode)value)] }
            : Text(),
    };

    private static OpenApiParameter Designation(ReferenceResource resource) => new()
    {
        Name = ReferenceQuery.DesignationName,
        In = ParameterLocation.Path,
        Required = true,
        Description = "The designation: the rest of the path, escaped, in which a slash may stand as it is.",
        Schema = Text(),
        Example = resource.Example,
    };

    private static OpenApiParameter IfNoneMatch() => new()
    {
        Name = "If-None-Match",
        In = ParameterLocation.Header,
        Description = "ETags of answers that the caller has; 304 where one of them is still right.",
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 1000 },
    };

    private static OpenApiSchema Text() => new() { Type = JsonSchemaType.String, MinLength = 1, MaxLength = Limits.IdLength };

    private static JsonNode? ExampleOf(ReferenceEndpoint served)
    {
        var answer = served.IsList
            ? served.Resource.List(new(LengthUnit.Mm, served.Resource.Example, null))
            : served.Resource.Item(served.Resource.Example, LengthUnit.Mm);
        return JsonNode.Parse(JsonSerializer.SerializeToUtf8Bytes(answer!.Make(), WireJson.Options));
    }
}
