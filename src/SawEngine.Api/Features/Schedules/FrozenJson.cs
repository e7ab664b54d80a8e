using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Where a job stays, whatever would be better.</summary>
public sealed record FrozenJson
{
    /// <summary>Its saw, one of the shop's.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>
    /// Start of its work. The frozen jobs of a saw come first on it, in the order of their starts; each starts then, or as soon after as the saw is attended, set up and
    /// done with those before. At or before planStart the job is running, and the saw is set up for it. Release and after do not hold it back.
    /// </summary>
    public required DateTimeOffset Start { get; init; }
}
