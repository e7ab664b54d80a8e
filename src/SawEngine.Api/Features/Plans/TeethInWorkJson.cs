using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Teeth of the blade in the work.</summary>
public sealed record TeethInWorkJson
{
    /// <summary>In the shortest run of material.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Min { get; init; }

    /// <summary>In the mean width, area over travel.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Mean { get; init; }

    /// <summary>In the longest run of material.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Max { get; init; }
}
