using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>What every answer states.</summary>
public abstract record VersionedResponse
{
    /// <summary>Version of the schema of this answer.</summary>
    [JsonPropertyOrder(-9)]
    public string SchemaVersion { get; init; } = Versions.Schema;

    /// <summary>Version of the engine that gave it.</summary>
    [JsonPropertyOrder(-8)]
    public string EngineVersion { get; init; } = Versions.Engine;

    /// <summary>Version of the reference data.</summary>
    [JsonPropertyOrder(-7)]
    public string DataVersion { get; init; } = Versions.Data;
}
