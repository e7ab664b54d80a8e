namespace SawEngine.Api.Features.Shop;

/// <summary>Times of day as the starts and ends of spans: an end of 00:00 is midnight at the end of the day.</summary>
public static class ClockTimes
{
    /// <summary>Time since midnight.</summary>
    public static TimeSpan AsStart(this TimeOnly start) => start.ToTimeSpan();

    /// <summary>Time since midnight; 24 hours for 00:00.</summary>
    public static TimeSpan AsEnd(this TimeOnly end) => end == TimeOnly.MinValue ? TimeSpan.FromDays(1) : end.ToTimeSpan();

    /// <summary>Whether a span runs forward.</summary>
    public static bool IsBeforeEnd(this TimeOnly start, TimeOnly end) => start.AsStart() < end.AsEnd();
}
