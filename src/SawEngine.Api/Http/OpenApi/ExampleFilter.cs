using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using SawEngine.Api.Operations;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Puts the example of an operation on its request, and the preferences that it honors.</summary>
internal sealed class ExampleFilter : IOperationFilter
{
    private const string FirstExample = "first";

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<Operation>().FirstOrDefault() is not { } offered)
            return;
        foreach (var media in operation.RequestBody!.Content!.Values.OfType<OpenApiMediaType>())
            SetExamples(media, offered);
        if (operation.RequestBody is OpenApiRequestBody body)
            body.Required = true;
        operation.Parameters = [.. operation.Parameters ?? [], Prefer()];
    }

    /// <summary>A document has either one example or several with names.</summary>
    private static void SetExamples(OpenApiMediaType media, Operation offered)
    {
        if (offered.MoreExamples.Count == 0)
        {
            media.Example = JsonNode.Parse(offered.Example);
            return;
        }
        media.Examples = new Dictionary<string, IOpenApiExample>(StringComparer.Ordinal);
        foreach (var (name, summary, json) in offered.MoreExamples.Prepend((FirstExample, "A first request", offered.Example)))
            media.Examples.Add(name, new OpenApiExample { Summary = summary, Value = JsonNode.Parse(json) });
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
