using Microsoft.OpenApi;
using SawEngine.Api.Wire;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SawEngine.Api.Http.OpenApi;

/// <summary>Names the limits that no single member shows.</summary>
internal sealed class LimitsFilter : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context) => swaggerDoc.Info.Description +=
        $" Limits: bodies of {Limits.BodyBytes} bytes as sent and unpacked, {Limits.Depth} levels deep, {Limits.TotalQuantity} pieces in all,"
        + $" {Limits.Seconds} seconds; all of them stand in `GET /v1/service`.";
}
