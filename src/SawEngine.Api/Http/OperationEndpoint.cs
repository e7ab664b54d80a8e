using System.Globalization;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Offers operations by HTTP.</summary>
internal static class OperationEndpoint
{
    /// <summary>Name of the policy that bounds how many calculations run at once.</summary>
    public const string ConcurrencyPolicy = "calculations";

    private static readonly int[] ProblemStatuses = [400, 413, 415, 422, 503];

    public static void MapOperations(this IEndpointRouteBuilder routes, IReadOnlyList<Operation> operations)
    {
        foreach (var operation in operations)
            Map(routes, operation);
    }

    private static void Map(IEndpointRouteBuilder routes, Operation operation)
    {
        var endpoint = routes.MapPost(operation.Path, (Delegate)(Func<HttpContext, Task>)(http => Handle(operation, http)))
            .WithName(operation.OperationId)
            .WithTags(operation.Tag)
            .WithSummary(operation.Summary)
            .WithDescription(operation.Description)
            .WithMetadata(operation)
            .Accepts(operation.RequestType, "application/json")
            .Produces(StatusCodes.Status200OK, operation.ResponseType, "application/json")
            .RequireRateLimiting(ConcurrencyPolicy);
        foreach (var status in ProblemStatuses)
            endpoint.Produces<ProblemJson>(status, ProblemJson.MediaType);
    }

    private static async Task Handle(Operation operation, HttpContext http)
    {
        var body = await RequestBody.Read(http);
        if (body.Refusal is { } refusal)
        {
            await ProblemWriter.Write(http, refusal);
            return;
        }
        var preferences = Preferences.Parse(http.Request.Headers["Prefer"]);
        switch (operation.Run(body.Bytes, preferences, http.RequestAborted))
        {
            case Refused refused:
                await ProblemWriter.Write(http, refused.ToProblem());
                break;
            case Answered answered:
                await Write(http, answered);
                break;
        }
    }

    private static async Task Write(HttpContext http, Answered answered)
    {
        if (answered.PreferencesApplied.Count > 0)
            http.Response.Headers.Append("Preference-Applied", string.Join(", ", answered.PreferencesApplied));
        http.Response.ContentType = "application/json";
        http.Response.ContentLength = answered.Body.Length;
        http.Response.Headers.CacheControl = "no-store";
        http.Response.Headers["Server-Timing"] = string.Create(CultureInfo.InvariantCulture, $"engine;dur={answered.Calculation.TotalMilliseconds:0.###}");
        await http.Response.Body.WriteAsync(answered.Body, http.RequestAborted);
    }
}
