using Microsoft.OpenApi;
using SawEngine.Api.Http.OpenApi;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>The OpenAPI documents, version 3.1 and its 3.0 twin, and the page that shows them.</summary>
internal static class OpenApiDocuments
{
    /// <summary>Name of the documents.</summary>
    public const string Version = "v1";

    /// <summary>Path of the 3.1 document.</summary>
    public const string Path = "/openapi/v1.json";

    /// <summary>Path of the 3.0 document.</summary>
    public const string Path30 = "/openapi/3.0/v1.json";

    public static void AddOpenApiDocuments(this IServiceCollection services)
    {
        services.ConfigureHttpJsonOptions(static options => WireJson.Configure(options.SerializerOptions));
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(static options =>
        {
            options.SwaggerDoc(Version, new()
            {
                Title = "SawEngine",
                Version = Versions.Schema,
                Description = "Calculation engine for companies that cut metal bar, tube and structural shapes on production band saws. "
                    + "Stateless: a request holds all that is needed, the answer all that was found. "
                    + $"Limits: bodies of {Limits.BodyBytes} bytes as sent and unpacked, {Limits.Depth} levels deep, {Limits.TotalQuantity} pieces in all, "
                    + $"{Limits.Seconds} seconds; all limits stand in `GET /v1/service`.",
                License = new() { Name = "Apache-2.0", Identifier = "Apache-2.0" },
            });
            options.DocInclusionPredicate(static (_, api) => api.HttpMethod != HttpMethods.Head);
            options.SupportNonNullableReferenceTypes();
            options.CustomSchemaIds(SchemaId);
            options.MapType<decimal>(static () => new OpenApiSchema { Type = JsonSchemaType.Number, Format = "decimal" });
            options.AddServer(new() { Url = "/" });
            // The comments come first: the filters add to the descriptions.
            foreach (var assembly in new[] { typeof(Operation).Assembly, typeof(Core.Effort).Assembly })
                options.IncludeXmlComments(assembly);
            options.SchemaFilter<MemberSchemaFilter>();
            options.OperationFilter<ExampleFilter>();
            options.OperationFilter<ReferenceFilter>();
            options.DocumentFilter<OpenAnswersFilter>();
        });
    }

    public static void MapOpenApiDocuments(this WebApplication app)
    {
        app.MapSwagger("/openapi/{documentName}.json", static options => options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1).WithHead();
        app.MapSwagger("/openapi/3.0/{documentName}.json", static options => options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_0).WithHead();
        app.UseSwaggerUI(static options =>
        {
            options.RoutePrefix = "docs";
            options.DocumentTitle = "SawEngine";
            options.SwaggerEndpoint(Path, "OpenAPI 3.1");
            options.SwaggerEndpoint(Path30, "OpenAPI 3.0");
        });
    }

    /// <summary>Components carry the names of their types, without the suffix that marks them as JSON.</summary>
    private static string SchemaId(Type type) => type.Name.EndsWith("Json", StringComparison.Ordinal) ? type.Name[..^4] : type.Name;
}
