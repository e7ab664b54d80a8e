using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Says what each tag stands for.</summary>
internal sealed class TagFilter : IDocumentFilter
{
    private static readonly (string Name, string Description)[] Tags =
    [
        ("Plans", "The whole chain from orders to a schedule with costs."),
        ("Estimates", "Time and cost of one order."),
        ("Nests", "Which bar gives which piece."),
        ("Schedules", "Which job runs on which saw, and when."),
        ("Cutting data", "Settings, time and blade wear of cuts."),
        ("Grades", "Reference data of materials, with sources."),
        ("Sections", "Reference data of standard sections, with sources."),
        ("Blades", "Reference data of usual blades, with sources."),
        ("Service", "What this service is and offers."),
    ];

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var tag in swaggerDoc.Tags ?? new HashSet<OpenApiTag>())
            tag.Description = Tags.FirstOrDefault(known => known.Name == tag.Name).Description;
    }
}
