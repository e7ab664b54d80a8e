using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>What every answer of a calculation states.</summary>
public abstract record OperationResponse : VersionedResponse
{
    /// <summary>SHA-256 of the request with defaults filled and lists sorted by id, in the form of RFC 8785.</summary>
    [JsonPropertyOrder(-6)]
    public required string RequestDigest { get; init; }

    /// <summary>Unit of every length in the answer.</summary>
    [JsonPropertyOrder(-5)]
    public required string LengthUnit { get; init; }

    /// <summary>What the caller should know, but need not change.</summary>
    [JsonPropertyOrder(8)]
    public IReadOnlyList<WarningJson> Warnings { get; init; } = [];

    /// <summary>How long the calculation took; the only part that differs between equal requests.</summary>
    [JsonPropertyOrder(9)]
    public required TimingJson Timing { get; init; }
}
