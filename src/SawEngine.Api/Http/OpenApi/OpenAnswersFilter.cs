using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Leaves answers open: clients must expect members that they do not know. Requests stay closed.</summary>
internal sealed class OpenAnswersFilter : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var answers = swaggerDoc.Paths.Values.SelectMany(path => path.Operations!.Values).SelectMany(operation => operation.Responses!.Values);
        foreach (var media in answers.SelectMany(answer => answer.Content?.Values ?? []))
            Open(media.Schema, swaggerDoc, reached);
    }

    private static void Open(IOpenApiSchema? schema, OpenApiDocument document, HashSet<string> reached)
    {
        if (schema is OpenApiSchemaReference { Reference.Id: { } id } && reached.Add(id))
            Open(document.Components!.Schemas![id], document, reached);
        if (schema is not OpenApiSchema answer)
            return;
        answer.AdditionalPropertiesAllowed = true;
        Open(answer.Items, document, reached);
        foreach (var member in answer.Properties?.Values ?? [])
            Open(member, document, reached);
    }
}
