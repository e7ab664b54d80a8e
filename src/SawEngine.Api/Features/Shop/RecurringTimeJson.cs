using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A time that comes again by a recurrence rule of iCalendar (RFC 5545), in local time. It ends its minutes later by the clock, on the same day or a later one.</summary>
public abstract record RecurringTimeJson : IRecurring
{
    /// <summary>The day from which the rule counts: the first one where the rule names it, or where there is no rule. At most 3 years before planStart.</summary>
    [JsonPropertyOrder(-4)]
    public required DateOnly FirstDay { get; init; }

    /// <summary>Local start.</summary>
    [JsonPropertyOrder(-3)]
    public required TimeOnly Start { get; init; }

    /// <summary>Minutes until its end, by the clock.</summary>
    [JsonPropertyOrder(-2), Range(1, PlanLimits.RecurrenceMinutes)]
    public required int Minutes { get; init; }

    /// <summary>
    /// Lines of RFC 5545: at most one `RRULE`, such as `RRULE:FREQ=WEEKLY;BYDAY=FR`, with days, weeks, months or years; `RDATE` for further times and `EXDATE` for those
    /// that fall out, as dates or dates with times, local, in UTC (`Z`) or of a `TZID`. Once, on firstDay, where absent.
    /// </summary>
    [JsonPropertyOrder(-1), MaxLength(PlanLimits.RecurrenceLines)]
    public IReadOnlyList<string> Recurrence { get; init; } = [];
}
