using System.Text.Json.Serialization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>One section.</summary>
public sealed record SectionResponse : VersionedResponse
{
    /// <summary>Unit of every length in the answer.</summary>
    [JsonPropertyOrder(-5), KnownValues(typeof(LengthUnit))]
    public required string LengthUnit { get; init; }

    /// <summary>The section.</summary>
    public required SectionItemJson Item { get; init; }
}
