using Ical.Net.DataTypes;
using Ical.Net.Evaluation;
using NodaTime;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop.Recurrences;

/// <summary>A recurrence of RFC 5545: a rule, dates beside it, dates that fall out.</summary>
internal sealed class Recurrence
{
    /// <summary>Days, weeks, months or years without an occurrence after which none is expected any more. With days: more than from the first day that counts to the end of all calendars.</summary>
    private const int MostUnmatched = 2_000;

    private readonly List<RecurrenceDate> _added = [];
    private readonly List<RecurrenceDate> _left = [];
    private RecurrenceRuleText? _rule;

    private Recurrence()
    {
    }

    /// <summary>The recurrence of some lines; where one is faulty, it is said by its number, and the others count.</summary>
    public static Recurrence Read(IReadOnlyList<string> lines, Action<int, LeafFault>? onFault = null)
    {
        var recurrence = new Recurrence();
        for (var i = 0; i < lines.Count; i++)
            if (recurrence.Add(lines[i]) is { } fault)
                onFault?.Invoke(i, fault);
        return recurrence;
    }

    /// <summary>The local starts from a day to another, ascending, each once.</summary>
    /// <param name="first">The first day and time, from which the rule counts.</param>
    /// <param name="from">The first day that is wanted.</param>
    /// <param name="to">The last.</param>
    /// <param name="zone">The zone of local times.</param>
    public IEnumerable<LocalDateTime> Starts(LocalDateTime first, LocalDate from, LocalDate to, DateTimeZone zone)
    {
        var days = _left.Where(date => date.Time is null).Select(date => date.Day).ToHashSet();
        var times = _left.Where(date => date.Time is not null).Select(Local).ToHashSet();
        return ByRule(first, from, to, zone).Concat(_added.Select(Local))
            .Where(start => start.Date >= from && start.Date <= to && !days.Contains(start.Date) && !times.Contains(start))
            .Distinct().Order();

        LocalDateTime Local(RecurrenceDate date) => date.In(zone, first.TimeOfDay);
    }

    private List<LocalDateTime> ByRule(LocalDateTime first, LocalDate from, LocalDate to, DateTimeZone zone)
    {
        if (_rule is null)
            return [first];
        var found = new List<LocalDateTime>();
        var evaluator = new RecurrencePatternEvaluator(new RecurrenceRule(_rule.In(zone)));
        try
        {
            foreach (var period in evaluator.Evaluate(Floating(first), Floating(LocalDateTime.Max(first, from.AtMidnight())), new() { MaxUnmatchedIncrementsLimit = MostUnmatched }))
            {
                var start = LocalDateTime.FromDateTime(period.StartTime.Value);
                if (start.Date > to)
                    break;
                found.Add(start);
            }
        }
        catch (EvaluationException)
        {
            // Nothing more is found, or the calendar ends: what was found counts.
        }
        return found;
    }

    private static CalDateTime Floating(LocalDateTime local) => new(local.ToDateTimeUnspecified(), true);

    private LeafFault? Add(string line)
    {
        // The name, its parameters and the value; a rule may stand alone.
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        var parameters = (colon < 0 ? "RRULE" : line[..colon]).Split(';');
        var value = line[(colon + 1)..];
        return parameters[0].ToUpperInvariant() switch
        {
            "RRULE" when parameters.Length == 1 => AddRule(value),
            "RDATE" => AddDates(_added, parameters, value),
            "EXDATE" => AddDates(_left, parameters, value),
            _ => Fault("State lines of RFC 5545 that begin with RRULE, RDATE or EXDATE; the first day, the time of day and the duration stand beside them."),
        };
    }

    private LeafFault? AddRule(string value)
    {
        if (_rule is not null)
            return Fault("State one rule; give another one as a recurrence of its own.");
        _rule = RecurrenceRuleText.Read(value, out var fault);
        return fault;
    }

    private static LeafFault? AddDates(List<RecurrenceDate> dates, string[] parameters, string value)
    {
        DateTimeZone? zone = null;
        foreach (var parameter in parameters.Skip(1))
        {
            if (parameter.ToUpperInvariant() is "VALUE=DATE" or "VALUE=DATE-TIME")
                continue;
            if (!parameter.StartsWith("TZID=", StringComparison.OrdinalIgnoreCase))
                return Fault($"{Quoted.Text(parameter)} is not read here: dates, or dates with times, stand with VALUE=DATE, VALUE=DATE-TIME or a TZID, or without.");
            var name = parameter["TZID=".Length..].Trim('"');
            if (!PlanClock.IsZone(name))
                return Fault($"{Quoted.Text(name)} is not a time zone of the IANA list, such as Europe/Vienna.");
            zone = DateTimeZoneProviders.Tzdb[name];
        }
        foreach (var text in value.Split(','))
        {
            if (RecurrenceDate.Read(text.ToUpperInvariant(), zone) is not { } date)
                return Fault($"{Quoted.Text(text)} is not a date, or date and time, such as 20261224, 20261224T060000 or 20261224T050000Z.");
            dates.Add(date);
        }
        return null;
    }

    private static LeafFault Fault(string detail) => new(FaultCode.InvalidRecurrence, detail);
}
