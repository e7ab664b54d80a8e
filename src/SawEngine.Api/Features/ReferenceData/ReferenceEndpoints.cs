using System.Collections.Concurrent;
using SawEngine.Api.Http;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>Serves reference data. They never wait for calculations: each answer is made once.</summary>
internal sealed class ReferenceEndpoints
{
    private const string JsonType = "application/json";
    private const string CacheControl = "public, max-age=3600";

    private static readonly IReadOnlyList<ReferenceResource> Resources = [new Grades(), new Sections(), new Blades()];

    private readonly ReferenceResource _resource;

    /// <summary>As many as the resource has known answers.</summary>
    private readonly ConcurrentDictionary<string, Representation> _made = new(StringComparer.Ordinal);

    private ReferenceEndpoints(ReferenceResource resource) => _resource = resource;

    public static void Map(IEndpointRouteBuilder routes)
    {
        foreach (var resource in Resources)
            new ReferenceEndpoints(resource).MapResource(routes);
    }

    private void MapResource(IEndpointRouteBuilder routes)
    {
        var name = _resource.ItemName;
        Describe(
            routes.MapGet(_resource.Path, (Delegate)(Func<HttpContext, Task>)List),
            new(_resource, IsList: true), $"list{name}s", $"All {_resource.Tag.ToLowerInvariant()}, or some.", _resource.ListType);
        Describe(
            routes.MapGet(_resource.Path + "/{**designation}", (Delegate)(Func<HttpContext, Task>)Item),
            new(_resource, IsList: false), $"get{name}", $"One {name.ToLowerInvariant()} by its designation.", _resource.ItemType);
    }

    private void Describe(RouteHandlerBuilder endpoint, ReferenceEndpoint about, string operationId, string summary, Type answer) => endpoint
        .WithName(operationId)
        .WithTags(_resource.Tag)
        .WithSummary(summary)
        .WithDescription(_resource.Description)
        .WithMetadata(about)
        .Produces(StatusCodes.Status200OK, answer, JsonType)
        .Produces(StatusCodes.Status304NotModified)
        .Produces<ProblemJson>(StatusCodes.Status400BadRequest, ProblemJson.MediaType)
        .Produces<ProblemJson>(StatusCodes.Status404NotFound, ProblemJson.MediaType)
        .WithHead();

    private Task List(HttpContext http)
    {
        var faults = new FaultList();
        return ReferenceQuery.Read(http.Request.Query, _resource.ListParameters, faults) is { } query
            ? Answer(http, _resource.List(query), query.Designation)
            : ProblemWriter.Write(http, ProblemJson.Of(ProblemType.InvalidShape, faults));
    }

    private Task Item(HttpContext http)
    {
        var faults = new FaultList();
        var designation = Unescaped((string)http.Request.RouteValues[ReferenceQuery.DesignationName]!);
        if (ReferenceParameter.Designation.FaultOf(designation) is { } fault)
            faults.AddParameter(ReferenceQuery.DesignationName, fault.Code, fault.Detail);
        return ReferenceQuery.Read(http.Request.Query, _resource.UnitParameters, faults) is { } query
            ? Answer(http, _resource.Item(designation, query.Unit), designation)
            : ProblemWriter.Write(http, ProblemJson.Of(ProblemType.InvalidShape, faults));
    }

    /// <summary>The server decodes every escape in a path but that of the slash.</summary>
    private static string Unescaped(string path) => path.Replace("%2F", "/", StringComparison.OrdinalIgnoreCase);

    private Task Answer(HttpContext http, ReferenceAnswer? answer, string? designation)
    {
        if (answer is null)
            return ProblemWriter.Write(http, ProblemJson.Of(ProblemType.NotFound, Unknown(designation!)));
        var made = answer.Key is { } key
            ? _made.GetOrAdd(key, static (_, make) => Representation.Of(make()), answer.Make)
            : Representation.Of(answer.Make());
        http.Response.Headers.CacheControl = CacheControl;
        return TypedResults.Bytes(made.Bytes, JsonType, entityTag: made.Tag).ExecuteAsync(http);
    }

    private FaultList Unknown(string designation)
    {
        var faults = new FaultList();
        var nearest = string.Join(", ", _resource.Nearest(designation).Select(Quoted.Text));
        faults.AddParameter(ReferenceQuery.DesignationName, _resource.UnknownCode, $"{Quoted.Text(designation)} is not a designation of the catalog. Nearest: {nearest}.");
        return faults;
    }
}
