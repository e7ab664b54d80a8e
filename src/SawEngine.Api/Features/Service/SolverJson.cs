namespace SawEngine.Api.Features.Service;

/// <summary>A library that calculates.</summary>
public sealed record SolverJson
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }
}
