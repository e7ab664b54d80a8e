using FluentValidation;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Plans;

/// <summary>Rules of currency, zone and dates, which all requests with a clock share.</summary>
internal static class ClockRules
{
    private const int FirstYear = 2000;
    private const int LastYear = 2199;
    private const int CurrencyLetters = 3;

    public static void IsCurrency<T>(this IRuleBuilder<T, string?> rule) =>
        rule.Must(currency => currency is null || (currency.Length == CurrencyLetters && currency.All(char.IsAsciiLetterUpper)))
            .WithFault(FaultCode.InvalidCurrency, "Must be three upper-case letters of ISO 4217, such as EUR.");

    public static void IsTimeZone<T>(this IRuleBuilderInitial<T, string?> rule) => rule.Custom((zone, context) =>
    {
        if (zone is not null && !PlanClock.IsZone(zone))
            context.Fault("", FaultCode.UnknownTimeZone, $"{Quoted.Text(zone)} is not a time zone of the IANA list, such as Europe/Vienna.{NearestName.Question(zone, PlanClock.Zones)}");
    });

    public static void IsPlanStart<T>(this IRuleBuilder<T, DateTimeOffset> rule) =>
        rule.Must(start => start.Year is >= FirstYear and <= LastYear)
            .WithFault(FaultCode.DateOutOfRange, $"Must lie between the years {FirstYear} and {LastYear}.");

    /// <summary>Recurrences count from a day that is not long before the start of the plan.</summary>
    public static void CheckFirstDays<T>(this ValidationContext<T> context, ShopJson shop, DateTimeOffset planStart)
    {
        var start = DateOnly.FromDateTime(planStart.DateTime).DayNumber;
        for (var i = 0; i < shop.Calendars.Count; i++)
        {
            Check(shop.Calendars[i].RecurringShifts, $"{nameof(shop.Calendars)}[{i}].{nameof(CalendarJson.RecurringShifts)}");
            Check(shop.Calendars[i].RecurringHolidays, $"{nameof(shop.Calendars)}[{i}].{nameof(CalendarJson.RecurringHolidays)}");
        }
        for (var i = 0; i < shop.Saws.Count; i++)
            Check(shop.Saws[i].Maintenance, $"{nameof(shop.Saws)}[{i}].{nameof(SawJson.Maintenance)}");

        void Check(IReadOnlyList<IRecurring> recurrences, string path)
        {
            for (var i = 0; i < recurrences.Count; i++)
            {
                if (recurrences[i].FirstDay.DayNumber - start is < -PlanLimits.RecurrenceDaysBefore or > PlanLimits.DaysAroundStart)
                    context.Fault(
                        $"{path}[{i}].{nameof(IRecurring.FirstDay)}",
                        FaultCode.DateOutOfRange,
                        $"Must lie within {PlanLimits.RecurrenceDaysBefore} days before or {PlanLimits.DaysAroundStart} days after `planStart`: an earlier day on which the rule counts alike will do.");
            }
        }
    }

    /// <summary>A date lies near the start of the plan.</summary>
    public static void CheckDate<T>(this ValidationContext<T> context, DateTimeOffset? date, DateTimeOffset planStart, string path)
    {
        if (date is { } stated && (stated - planStart).Duration() > TimeSpan.FromDays(PlanLimits.DaysAroundStart))
            context.Fault(path, FaultCode.DateOutOfRange, $"Must lie within {PlanLimits.DaysAroundStart} days before or after `planStart`.");
    }
}
