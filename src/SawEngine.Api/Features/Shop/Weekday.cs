using System.Text.Json.Serialization;

namespace SawEngine.Api.Features.Shop;

/// <summary>A day of the week, by the two letters of RFC 5545.</summary>
public enum Weekday
{
    /// <summary>Monday.</summary>
    [JsonStringEnumMemberName("MO")]
    Monday,

    /// <summary>Tuesday.</summary>
    [JsonStringEnumMemberName("TU")]
    Tuesday,

    /// <summary>Wednesday.</summary>
    [JsonStringEnumMemberName("WE")]
    Wednesday,

    /// <summary>Thursday.</summary>
    [JsonStringEnumMemberName("TH")]
    Thursday,

    /// <summary>Friday.</summary>
    [JsonStringEnumMemberName("FR")]
    Friday,

    /// <summary>Saturday.</summary>
    [JsonStringEnumMemberName("SA")]
    Saturday,

    /// <summary>Sunday.</summary>
    [JsonStringEnumMemberName("SU")]
    Sunday,
}
