namespace SawEngine.Api.Features.Service;

/// <summary>Versions and limits of this service.</summary>
public sealed record ServiceResponse
{
    /// <summary>Version of the engine.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Version of the schema that is read and written.</summary>
    public required string SchemaVersion { get; init; }

    /// <summary>Version of the reference data.</summary>
    public required string DataVersion { get; init; }

    /// <summary>What calculates.</summary>
    public required IReadOnlyList<SolverJson> Solvers { get; init; }

    /// <summary>What can be asked for, by path.</summary>
    public required IReadOnlyList<OfferedOperationJson> Operations { get; init; }

    /// <summary>Limits in force.</summary>
    public required LimitsJson Limits { get; init; }
}
