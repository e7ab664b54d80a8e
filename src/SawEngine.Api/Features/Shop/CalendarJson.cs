using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>When saws are attended, in local time of the request's time zone. Times that a change of the clock skips count as the first instant after it;
/// times that it repeats count as the first of the two.</summary>
public sealed record CalendarJson
{
    /// <summary>Id of the calendar, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string CalendarId { get; init; }

    /// <summary>Shifts; where two overlap the saw is attended in both. It is never attended where there is none.</summary>
    [MaxLength(PlanLimits.Shifts)]
    public required IReadOnlyList<ShiftJson> Shifts { get; init; }

    /// <summary>Days on which no shift is worked.</summary>
    [MaxLength(PlanLimits.Holidays)]
    public IReadOnlyList<DateOnly> Holidays { get; init; } = [];
}
