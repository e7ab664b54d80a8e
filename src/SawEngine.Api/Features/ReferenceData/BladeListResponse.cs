using System.Text.Json.Serialization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>The blades that were asked for.</summary>
public sealed record BladeListResponse : VersionedResponse
{
    /// <summary>Unit of every length in the answer.</summary>
    [JsonPropertyOrder(-5), KnownValues(typeof(LengthUnit))]
    public required string LengthUnit { get; init; }

    /// <summary>The blades.</summary>
    public required IReadOnlyList<BladeItemJson> Items { get; init; }
}
