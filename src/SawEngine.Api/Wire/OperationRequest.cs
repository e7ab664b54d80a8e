using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>What every request may state.</summary>
public abstract record OperationRequest
{
    /// <summary>Version of the schema that the request was written for; any minor version of the same major one is read.</summary>
    [JsonPropertyOrder(-2), MaxLength(16)]
    public string SchemaVersion { get; init; } = Versions.Schema;

    /// <summary>Unit of every length in the request and the answer.</summary>
    [JsonPropertyOrder(-1)]
    public LengthUnit LengthUnit { get; init; } = LengthUnit.Mm;
}
