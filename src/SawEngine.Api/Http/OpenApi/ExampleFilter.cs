using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SawEngine.Api.Operations;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Puts the example of an operation on its request, and the preferences that it honors.</summary>
internal sealed class ExampleFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<Operation>().FirstOrDefault() is not { } offered)
            return;
        foreach (var media in operation.RequestBody!.Content!.Values.OfType<OpenApiMediaType>())
            media.Example = JsonNode.Parse(offered.Example);
        if (operation.RequestBody is OpenApiRequestBody body)
            body.Required = true;
        operation.Parameters = [.. operation.Parameters ?? [], Prefer()];
    }

    private static OpenApiParameter Prefer() => new()
    {
        Name = "Prefer",
        In = ParameterLocation.Header,
        Description = "`handling=lenient` turns unknown members into warnings; `wait=N` limits the calculation to N seconds where the request states no limit "
            + "(RFC 7240).",
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 200 },
    };
}
