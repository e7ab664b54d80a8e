using FluentValidation;
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

    /// <summary>A date lies near the start of the plan.</summary>
    public static void CheckDate<T>(this ValidationContext<T> context, DateTimeOffset? date, DateTimeOffset planStart, string path)
    {
        if (date is { } stated && (stated - planStart).Duration() > TimeSpan.FromDays(PlanLimits.DaysAroundStart))
            context.Fault(path, FaultCode.DateOutOfRange, $"Must lie within {PlanLimits.DaysAroundStart} days before or after `planStart`.");
    }
}
