using System.Text.Json.Serialization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>The sections that were asked for.</summary>
public sealed record SectionListResponse : VersionedResponse
{
    /// <summary>Unit of every length in the answer.</summary>
    [JsonPropertyOrder(-5), KnownValues(typeof(LengthUnit))]
    public required string LengthUnit { get; init; }

    /// <summary>The sections.</summary>
    public required IReadOnlyList<SectionItemJson> Items { get; init; }
}
