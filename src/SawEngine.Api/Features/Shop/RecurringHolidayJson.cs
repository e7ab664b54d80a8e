using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Whole days by a recurrence rule of iCalendar (RFC 5545).</summary>
public sealed record RecurringHolidayJson : IRecurring
{
    /// <summary>The day from which the rule counts: the first one where the rule names it, or where there is no rule. At most 3 years before planStart.</summary>
    public required DateOnly FirstDay { get; init; }

    /// <summary>
    /// Lines of RFC 5545: at most one `RRULE`, such as `RRULE:FREQ=YEARLY`, with days, weeks, months or years; `RDATE` for further days and `EXDATE` for those that fall
    /// out. Once, on firstDay, where absent.
    /// </summary>
    [MaxLength(PlanLimits.RecurrenceLines)]
    public IReadOnlyList<string> Recurrence { get; init; } = [];
}
