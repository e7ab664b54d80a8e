using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop.Recurrences;

/// <summary>The parts of a recurrence rule (RFC 5545, 3.3.10), checked one by one: by days, weeks, months or years, since the time of day stands beside the rule.</summary>
internal sealed partial class RecurrenceRuleText
{
    private const int MostInterval = 1_000;
    private const int MostCount = 100_000;
    private const string Yearly = "YEARLY";
    private const string Monthly = "MONTHLY";
    private const string Weekly = "WEEKLY";

    private static readonly LocalTime EndOfDay = new(23, 59, 59);

    private static readonly string[] Frequencies = ["DAILY", Weekly, Monthly, Yearly];
    private static readonly string[] WithinDays = ["HOURLY", "MINUTELY", "SECONDLY"];
    private static readonly string[] PartsWithinDays = ["BYHOUR", "BYMINUTE", "BYSECOND"];

    /// <summary>What the value of each part may be, in words, and whether a value is that.</summary>
    private static readonly Dictionary<string, (string Words, Func<string, bool> IsValid)> Parts = new(StringComparer.Ordinal)
    {
        ["FREQ"] = (string.Join(", ", Frequencies), value => Frequencies.Contains(value, StringComparer.Ordinal)),
        ["INTERVAL"] = ($"1 to {MostInterval}", value => IsNumber(value, 1, MostInterval)),
        ["COUNT"] = ($"1 to {MostCount}", value => IsNumber(value, 1, MostCount)),
        ["UNTIL"] = ("a date, or date and time, such as 20261231 or 20261231T140000", value => RecurrenceDate.Read(value, null) is not null),
        ["BYDAY"] = ("days such as MO or, by month or year, -1FR", value => All(value, day => WeekdayPattern().IsMatch(day))),
        ["BYMONTHDAY"] = Numbers(31),
        ["BYYEARDAY"] = Numbers(366),
        ["BYWEEKNO"] = Numbers(53),
        ["BYMONTH"] = ("1 to 12", value => All(value, month => IsNumber(month, 1, 12))),
        ["BYSETPOS"] = Numbers(366),
        ["WKST"] = ("a day such as MO", value => value.Length == 2 && WeekdayPattern().IsMatch(value)),
    };

    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);

    private RecurrenceRuleText()
    {
    }

    /// <summary>The rule of a text; null, and what is wrong with it, where it is none.</summary>
    public static RecurrenceRuleText? Read(string text, out LeafFault? fault)
    {
        var rule = new RecurrenceRuleText();
        fault = text.ToUpperInvariant().Split(';').Select(rule.Add).FirstOrDefault(found => found is not null) ?? rule.FaultOfWhole();
        return fault is null ? rule : null;
    }

    /// <summary>The rule in local time of a zone: its end too, with the whole of its last day.</summary>
    public string In(DateTimeZone zone) => string.Join(';', _values.Select(part => $"{part.Key}={(part.Key == "UNTIL" ? Until(part.Value, zone) : part.Value)}"));

    private static string Until(string value, DateTimeZone zone) =>
        RecurrenceDate.Read(value, null)!.Value.In(zone, EndOfDay).ToString("uuuuMMdd'T'HHmmss", CultureInfo.InvariantCulture);

    private LeafFault? Add(string part)
    {
        var (name, value) = part.Split('=') is [var left, var right] ? (left, right) : ("", "");
        return PartsWithinDays.Contains(name, StringComparer.Ordinal) || (name == "FREQ" && WithinDays.Contains(value, StringComparer.Ordinal))
                ? new(FaultCode.RecurrenceTooFrequent, $"{Quoted.Text(part)} recurs within a day: state days, weeks, months or years here, and the time of day beside the rule.")
            : !Parts.TryGetValue(name, out var known) ? Fault($"{Quoted.Text(part)} is no part of a recurrence rule.{NearestName.Question(name, Parts.Keys)}")
            : !known.IsValid(value) ? Fault($"{name} must be {known.Words}, but is {Quoted.Text(value)}.")
            : !_values.TryAdd(name, value) ? Fault($"{name} stands twice in the rule.")
            : null;
    }

    private LeafFault? FaultOfWhole()
    {
        var frequency = _values.GetValueOrDefault("FREQ");
        return frequency is null ? Fault("A recurrence rule states FREQ, such as FREQ=WEEKLY.")
            : _values.ContainsKey("COUNT") && _values.ContainsKey("UNTIL") ? Fault("A rule ends by COUNT or by UNTIL, not by both.")
            : _values.ContainsKey("BYWEEKNO") && frequency != Yearly ? Fault("BYWEEKNO goes with FREQ=YEARLY only.")
            : _values.ContainsKey("BYYEARDAY") && frequency != Yearly ? Fault("BYYEARDAY goes with FREQ=YEARLY only.")
            : _values.ContainsKey("BYMONTHDAY") && frequency == Weekly ? Fault("BYMONTHDAY does not go with FREQ=WEEKLY.")
            : HasOrdinals && (frequency is not (Monthly or Yearly) || _values.ContainsKey("BYWEEKNO")) ? Fault("A number before a day in BYDAY goes with FREQ=MONTHLY, or FREQ=YEARLY without BYWEEKNO.")
            : _values.ContainsKey("BYSETPOS") && !_values.Keys.Any(IsChoice) ? Fault("BYSETPOS chooses among the days of another BY part.")
            : null;
    }

    private bool HasOrdinals => _values.GetValueOrDefault("BYDAY")?.Any(char.IsAsciiDigit) == true;

    private static bool IsChoice(string part) => part.StartsWith("BY", StringComparison.Ordinal) && part != "BYSETPOS";

    private static LeafFault Fault(string detail) => new(FaultCode.InvalidRecurrence, detail);

    private static (string Words, Func<string, bool> IsValid) Numbers(int most) =>
        ($"-{most} to {most} without 0", value => All(value, number => IsNumber(number, -most, most) && !IsNumber(number, 0, 0)));

    private static bool All(string list, Func<string, bool> isValid) => list.Split(',').All(isValid);

    private static bool IsNumber(string text, int lowest, int highest) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= lowest && number <= highest;

    [GeneratedRegex("^([+-]?(5[0-3]|[1-4][0-9]|0?[1-9]))?(MO|TU|WE|TH|FR|SA|SU)$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex WeekdayPattern();
}
