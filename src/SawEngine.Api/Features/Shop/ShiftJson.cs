using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A shift on some days of the week. It begins and ends on the same day: one over midnight is given as two.</summary>
public record ShiftJson
{
    /// <summary>Days on which it is worked, each once.</summary>
    [MinLength(1), MaxLength(7)]
    public required IReadOnlyList<Weekday> Days { get; init; }

    /// <summary>Local start.</summary>
    public required TimeOnly Start { get; init; }

    /// <summary>Local end, after start; 00:00 is midnight at the end of the day.</summary>
    public required TimeOnly End { get; init; }

    /// <summary>Breaks inside the shift, not overlapping.</summary>
    [MaxLength(PlanLimits.Breaks)]
    public IReadOnlyList<BreakJson> Breaks { get; init; } = [];
}
