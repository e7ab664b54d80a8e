namespace SawEngine.Api.Features.Service;

/// <summary>An operation that is offered.</summary>
public sealed record OfferedOperationJson
{
    /// <summary>Its id in the OpenAPI document.</summary>
    public required string OperationId { get; init; }

    /// <summary>Path that it is posted to.</summary>
    public required string Path { get; init; }
}
