using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Plans;

/// <summary>A span of work without a pause.</summary>
public sealed record WorkSpanJson
{
    /// <summary>Its start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Its end.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>How many steps of the job are done in it, in a schedule of given jobs.</summary>
    [Range(0, int.MaxValue)]
    public int? Steps { get; init; }

    /// <summary>Whose hands are busy with it: a load by crane on a saw with operators of its own.</summary>
    public string? OperatorId { get; init; }

    /// <summary>The crane that loads in it.</summary>
    public string? CraneId { get; init; }
}
