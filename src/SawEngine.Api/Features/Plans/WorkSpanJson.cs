namespace SawEngine.Api.Features.Plans;

/// <summary>A span of work without a pause, in one shift.</summary>
public sealed record WorkSpanJson
{
    /// <summary>Its start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Its end.</summary>
    public required DateTimeOffset Finish { get; init; }
}
