using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Saws, blades, calendars, rates and rules of one shop.</summary>
public sealed record ShopJson
{
    /// <summary>The saws.</summary>
    [MinLength(1), MaxLength(PlanLimits.Saws)]
    public required IReadOnlyList<SawJson> Saws { get; init; }

    /// <summary>Blades that the saws refer to.</summary>
    [MaxLength(PlanLimits.Blades)]
    public IReadOnlyList<BladeJson> Blades { get; init; } = [];

    /// <summary>When saws are attended.</summary>
    [MinLength(1), MaxLength(PlanLimits.Calendars)]
    public required IReadOnlyList<CalendarJson> Calendars { get; init; }

    /// <summary>Who attends the saws; a saw that none of them attends is attended whenever its calendar says so.</summary>
    [MaxLength(PlanLimits.Operators)]
    public IReadOnlyList<OperatorJson> Operators { get; init; } = [];

    /// <summary>What loads bars and bundles that are too heavy for hands; where there is none, they are loaded like others.</summary>
    [MaxLength(PlanLimits.Cranes)]
    public IReadOnlyList<CraneJson> Cranes { get; init; } = [];

    /// <summary>Seconds that an operator walks from one saw to another between two things that need hands.</summary>
    [Range(0, 86400)]
    public int WalkingSeconds { get; init; }

    /// <summary>Rates.</summary>
    public RatesJson Rates { get; init; } = new();

    /// <summary>Trim by end condition.</summary>
    public TrimJson Trim { get; init; } = new();

    /// <summary>Remnant rule; nothing is kept or credited where absent.</summary>
    public RemnantRulesJson? Remnants { get; init; }
}
