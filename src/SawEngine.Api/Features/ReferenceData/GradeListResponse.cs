using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>The grades that were asked for.</summary>
public sealed record GradeListResponse : VersionedResponse
{
    /// <summary>The grades.</summary>
    public required IReadOnlyList<GradeItemJson> Items { get; init; }
}
