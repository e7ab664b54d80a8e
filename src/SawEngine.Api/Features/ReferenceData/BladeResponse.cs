using System.Text.Json.Serialization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>One blade.</summary>
public sealed record BladeResponse : VersionedResponse
{
    /// <summary>Unit of every length in the answer.</summary>
    [JsonPropertyOrder(-5), KnownValues(typeof(LengthUnit))]
    public required string LengthUnit { get; init; }

    /// <summary>The blade.</summary>
    public required BladeItemJson Item { get; init; }
}
