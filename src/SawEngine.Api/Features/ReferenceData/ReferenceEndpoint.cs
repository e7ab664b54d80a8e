namespace SawEngine.Api.Features.ReferenceData;

/// <summary>What an endpoint serves, for the OpenAPI document.</summary>
/// <param name="Resource">The data.</param>
/// <param name="IsList">Whether it serves the list; else one item.</param>
internal sealed record ReferenceEndpoint(ReferenceResource Resource, bool IsList);
