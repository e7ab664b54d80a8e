using NodaTime;
using NodaTime.TimeZones;
using SawEngine.Api.Features.Shop;

namespace SawEngine.Api.Features.Plans;

/// <summary>Turns seconds since the start of the plan into times of the request's zone.</summary>
/// <param name="Start">The start of the plan.</param>
/// <param name="Zone">The zone.</param>
public sealed record PlanClock(DateTimeOffset Start, DateTimeZone Zone)
{
    /// <summary>The clock of a request whose zone is known; without one the offset of its start counts.</summary>
    public static PlanClock Of(DateTimeOffset start, string? timeZone) =>
        new(start, timeZone is null ? DateTimeZone.ForOffset(Offset.FromTimeSpan(start.Offset)) : DateTimeZoneProviders.Tzdb[timeZone]);

    /// <summary>Whether a name is that of a zone of the IANA data.</summary>
    public static bool IsZone(string timeZone) => TzdbDateTimeZoneSource.Default.CanonicalIdMap.ContainsKey(timeZone);

    /// <summary>Names of all zones, in ordinal order.</summary>
    public static IEnumerable<string> Zones => TzdbDateTimeZoneSource.Default.CanonicalIdMap.Keys.Order(StringComparer.Ordinal);

    /// <summary>The time so many seconds after the start, with the zone's offset.</summary>
    public DateTimeOffset At(long seconds) => InZone(Start.AddSeconds(seconds));

    /// <summary>A local time of the zone; one that a change of the clock skips is the first instant after it, one that it repeats the first of the two.</summary>
    public DateTimeOffset At(LocalDateTime local) => Zone.ResolveLocal(local, AttendedTime.Resolver).ToDateTimeOffset();

    /// <summary>The same instant with the zone's offset.</summary>
    public DateTimeOffset InZone(DateTimeOffset time) => Instant.FromDateTimeOffset(time).InZone(Zone).ToDateTimeOffset();

    /// <summary>Whole seconds from the start to a time, rounded down: the last second not after it.</summary>
    public long SecondsBefore(DateTimeOffset time) => (long)decimal.Floor(SecondsTo(time));

    /// <summary>Whole seconds from the start to a time, rounded up: the first second not before it.</summary>
    public long SecondsAfter(DateTimeOffset time) => (long)decimal.Ceiling(SecondsTo(time));

    private decimal SecondsTo(DateTimeOffset time) => (time - Start).Ticks / (decimal)TimeSpan.TicksPerSecond;
}
