using System.Globalization;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Offers operations by HTTP.</summary>
internal static class OperationEndpoint
{
    private static readonly int[] ProblemStatuses = [400, 406, 408, 413, 415, 422, 503];

    public static void MapOperations(this IEndpointRouteBuilder routes, IReadOnlyList<Operation> operations, Calculations calculations)
    {
        foreach (var operation in operations)
            Map(routes, operation, calculations);
    }

    private static void Map(IEndpointRouteBuilder routes, Operation operation, Calculations calculations)
    {
        var endpoint = routes.MapPost(operation.Path, (Delegate)(Func<HttpContext, Task>)(http => Handle(operation, calculations, http)))
            .WithName(operation.OperationId)
            .WithTags(operation.Tag)
            .WithSummary(operation.Summary)
            .WithDescription(operation.Description)
            .WithMetadata(operation)
            .Accepts(operation.RequestType, "application/json")
            .Produces(StatusCodes.Status200OK, operation.ResponseType, "application/json")
            .RequireRateLimiting(Gate.Policy);
        foreach (var status in ProblemStatuses)
            endpoint.Produces<ProblemJson>(status, ProblemJson.MediaType);
    }

    private static async Task Handle(Operation operation, Calculations calculations, HttpContext http)
    {
        var body = await RequestBody.Read(http);
        if (body.Refusal is { } unread)
        {
            await ProblemWriter.Write(http, unread);
            return;
        }
        var (preferences, caller) = (Preferences.Parse(http.Request.Headers["Prefer"]), http.RequestAborted);
        var calculated = await calculations.Run(() => operation.Run(body.Bytes, preferences, caller), caller);
        if (calculated.Outcome is Answered answered)
            await Write(http, answered);
        else
            await ProblemWriter.Write(http, calculated.Refusal ?? ((Refused)calculated.Outcome!).ToProblem());
    }

    private static async Task Write(HttpContext http, Answered answered)
    {
        if (answered.PreferencesApplied.Count > 0)
            http.Response.Headers.Append("Preference-Applied", string.Join(", ", answered.PreferencesApplied));
        http.Response.ContentType = "application/json";
        http.Response.ContentLength = answered.Body.Length;
        http.Response.Headers["Server-Timing"] = string.Create(CultureInfo.InvariantCulture, $"engine;dur={answered.Calculation.TotalMilliseconds:0.###}");
        await http.Response.Body.WriteAsync(answered.Body, http.RequestAborted);
    }
}
