namespace SawEngine.Api.Features.Plans;

/// <summary>Teeth of the blade in the work.</summary>
public sealed record TeethInWorkJson
{
    /// <summary>In the shortest run of material.</summary>
    public required decimal Min { get; init; }

    /// <summary>Over the cut.</summary>
    public required decimal Mean { get; init; }

    /// <summary>In the longest run.</summary>
    public required decimal Max { get; init; }
}
