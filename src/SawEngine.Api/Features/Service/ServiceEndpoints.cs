using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;
using SawEngine.Api.Http;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Service;

/// <summary>What the service says about itself.</summary>
internal static class ServiceEndpoints
{
    public static void MapService(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/v1/service", Describe)
            .WithName("getService")
            .WithTags("Service")
            .WithSummary("Versions and limits of the service.")
            .WithDescription("Names the versions of engine, schema, reference data and solvers, the operations offered, and the limits in force.")
            .Produces<ServiceResponse>(StatusCodes.Status200OK, "application/json")
            .WithHead();
        routes.MapGet("/health/live", Live).ExcludeFromDescription().AllowAnonymous().WithHead();
        routes.MapGet("/health/ready", Ready).ExcludeFromDescription().AllowAnonymous().WithHead();
    }

    private static FileContentHttpResult Describe(IReadOnlyList<Operation> operations) => TypedResults.Bytes(
        JsonSerializer.SerializeToUtf8Bytes(new ServiceResponse
        {
            EngineVersion = Versions.Engine,
            SchemaVersion = Versions.Schema,
            DataVersion = Versions.Data,
            Solvers = Solvers(),
            Operations =
            [
                .. operations.OrderBy(o => o.Path, StringComparer.Ordinal).Select(o => new OfferedOperationJson { OperationId = o.OperationId, Path = o.Path }),
            ],
            Limits = LimitsJson.InForce,
        }, WireJson.Options),
        "application/json");

    /// <summary>The engine's own solvers and the libraries that they use.</summary>
    private static IReadOnlyList<SolverJson> Solvers()
    {
        var own = System.Reflection.Assembly.Load("SawEngine.Solvers");
        return
        [
            .. own.GetReferencedAssemblies().Prepend(own.GetName())
                .Where(name => name.Name == "SawEngine.Solvers" || name.Name == "Google.OrTools")
                .Select(name => new SolverJson { Name = name.Name!, Version = name.Version!.ToString(3) }),
        ];
    }

    /// <summary>Alive as long as no calculation runs on that was given up: only a new start ends it.</summary>
    private static ContentHttpResult Live(Calculations calculations) => Health(!calculations.HasRunaways);

    /// <summary>Ready where the nester loads and places one piece.</summary>
    private static ContentHttpResult Ready(INester nester, CancellationToken cancellation) =>
        Health(nester.Solve(ReadinessNest.Problem, Effort.Quick, cancellation).Unplaced.Count == 0);

    private static ContentHttpResult Health(bool isHealthy) =>
        isHealthy
            ? TypedResults.Text("Healthy")
            : TypedResults.Text("Unhealthy", statusCode: StatusCodes.Status503ServiceUnavailable);
}
