using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.Shop;

/// <summary>
/// Someone who attends saws. Operators of the same saws are a team: at every moment no more of its saws are at work attended than those of them on shift attend,
/// and each set-up part, blade change and crane load has one operator's hands to itself.
/// </summary>
public sealed record OperatorJson
{
    /// <summary>Id of the operator, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string OperatorId { get; init; }

    /// <summary>When on shift: its shifts and its overtime.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string CalendarId { get; init; }

    /// <summary>The saws that are attended; all where absent. Two operators have all their saws in common, or none.</summary>
    [MinLength(1), MaxLength(PlanLimits.Saws)]
    public IReadOnlyList<string>? SawIds { get; init; }

    /// <summary>How many of them are attended at a time.</summary>
    [Range(1, PlanLimits.Saws)]
    public int MostSaws { get; init; } = SawDefaults.SawsOfOperator;
}
