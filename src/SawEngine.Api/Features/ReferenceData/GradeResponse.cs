using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>One grade.</summary>
public sealed record GradeResponse : VersionedResponse
{
    /// <summary>The grade.</summary>
    public required GradeItemJson Item { get; init; }
}
