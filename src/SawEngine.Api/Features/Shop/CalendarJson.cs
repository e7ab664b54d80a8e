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

    /// <summary>Shifts of the week; where two overlap the saw is attended in both. It is never attended where there is no shift at all.</summary>
    [MaxLength(PlanLimits.Shifts)]
    public required IReadOnlyList<ShiftJson> Shifts { get; init; }

    /// <summary>Shifts by recurrence rules, beside those of the week.</summary>
    [MaxLength(PlanLimits.Recurrences)]
    public IReadOnlyList<RecurringShiftJson> RecurringShifts { get; init; } = [];

    /// <summary>Times of the week in which the saw can be attended at an extra price. A schedule uses them where that pays. What lies in a shift is no overtime; where two overlap, the cheaper counts.</summary>
    [MaxLength(PlanLimits.Shifts)]
    public IReadOnlyList<OvertimeJson> Overtime { get; init; } = [];

    /// <summary>Days on which no shift and no overtime begins.</summary>
    [MaxLength(PlanLimits.Holidays)]
    public IReadOnlyList<DateOnly> Holidays { get; init; } = [];

    /// <summary>Days by recurrence rules on which no shift and no overtime begins.</summary>
    [MaxLength(PlanLimits.Recurrences)]
    public IReadOnlyList<RecurringHolidayJson> RecurringHolidays { get; init; } = [];

    /// <summary>Spans of days on which no shift and no overtime begins.</summary>
    [MaxLength(PlanLimits.Closures)]
    public IReadOnlyList<ClosureJson> Closures { get; init; } = [];
}
