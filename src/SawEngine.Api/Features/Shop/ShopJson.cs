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

    /// <summary>Rates.</summary>
    public RatesJson Rates { get; init; } = new();

    /// <summary>Trim by end condition.</summary>
    public TrimJson Trim { get; init; } = new();

    /// <summary>Remnant rule; nothing is kept or credited where absent.</summary>
    public RemnantRulesJson? Remnants { get; init; }
}
