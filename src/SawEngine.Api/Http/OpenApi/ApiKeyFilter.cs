using Microsoft.OpenApi;
using SawEngine.Api.Http.Security;
using SawEngine.Api.Wire;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Says of every operation that it takes a key and how it answers without one.</summary>
internal sealed class ApiKeyFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        operation.Security = [new() { [new OpenApiSecuritySchemeReference(ApiKeyHandler.SchemeName, context.Document)] = [] }];
        operation.Responses!["401"] = new OpenApiResponse
        {
            Description = "Unauthorized",
            Headers = new Dictionary<string, IOpenApiHeader>
            {
                ["WWW-Authenticate"] = new OpenApiHeader { Description = $"`{ApiKeyHandler.SchemeName}`", Schema = new OpenApiSchema { Type = JsonSchemaType.String } },
            },
            Content = new Dictionary<string, IOpenApiMediaType>
            {
                [ProblemJson.MediaType] = new OpenApiMediaType { Schema = context.SchemaGenerator.GenerateSchema(typeof(ProblemJson), context.SchemaRepository) },
            },
        };
    }
}
