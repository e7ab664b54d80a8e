using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A crane, or anything else that loads heavy bars: one at a time, with an operator's hands where there are operators.</summary>
public sealed record CraneJson
{
    /// <summary>Id of the crane, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string CraneId { get; init; }

    /// <summary>The saws that it reaches; all where absent.</summary>
    [MinLength(1), MaxLength(PlanLimits.Saws)]
    public IReadOnlyList<string>? SawIds { get; init; }
}
