using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SawEngine.Api.Features.Shop.Recurrences;

/// <summary>A date, or date and time, of RFC 5545 (3.3.4, 3.3.5).</summary>
/// <param name="Day">The day.</param>
/// <param name="Time">The time of day; null for the whole day.</param>
/// <param name="Zone">The zone of both; null for local time.</param>
internal readonly record struct RecurrenceDate(LocalDate Day, LocalTime? Time, DateTimeZone? Zone)
{
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    private static readonly LocalDatePattern DatePattern = LocalDatePattern.Create("uuuuMMdd", CultureInfo.InvariantCulture);
    private static readonly LocalDateTimePattern TimePattern = LocalDateTimePattern.Create("uuuuMMdd'T'HHmmss", CultureInfo.InvariantCulture);

    /// <summary>The date of a text; null where it is none, or not of the years 1900 to 2199.</summary>
    public static RecurrenceDate? Read(string text, DateTimeZone? zone)
    {
        var isUtc = text.EndsWith('Z');
        RecurrenceDate? read = DatePattern.Parse(text) is { Success: true, Value: var day } ? new(day, null, null)
            : TimePattern.Parse(isUtc ? text[..^1] : text) is { Success: true, Value: var time } ? new(time.Date, time.TimeOfDay, isUtc ? DateTimeZone.Utc : zone)
            : null;
        return read?.Day.Year is >= FirstYear and <= LastYear ? read : null;
    }

    /// <summary>The local time in a zone; of a whole day the given time.</summary>
    public LocalDateTime In(DateTimeZone zone, LocalTime wholeDay) =>
        Time is { } time && Zone is { } own ? own.ResolveLocal(Day + time, AttendedTime.Resolver).WithZone(zone).LocalDateTime : Day + (Time ?? wholeDay);
}
