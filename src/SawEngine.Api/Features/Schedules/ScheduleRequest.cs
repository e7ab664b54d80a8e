using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Jobs to be put in order on the saws of a shop.</summary>
public sealed record ScheduleRequest : OperationRequest, ITimeLimited
{
    /// <summary>ISO 4217 code of every amount, three upper-case letters. It is echoed; nothing is converted.</summary>
    [MinLength(3), MaxLength(3)]
    public string? Currency { get; init; }

    /// <summary>IANA name of the time zone of calendars and answers; the offset of planStart where absent.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? TimeZone { get; init; }

    /// <summary>The clock: nothing starts earlier.</summary>
    public required DateTimeOffset PlanStart { get; init; }

    /// <summary>The jobs.</summary>
    [MinLength(1), MaxLength(ScheduleLimits.Jobs)]
    public required IReadOnlyList<ScheduleJobJson> Jobs { get; init; }

    /// <summary>Where they run. Capacities and blades are not checked against the jobs: a job names the saws that can take it.</summary>
    public required ShopJson Shop { get; init; }

    /// <summary>How much work may be spent.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>Stops the search early; effort alone limits it where absent.</summary>
    [Range(0, Limits.Seconds, MinimumIsExclusive = true)]
    public decimal? TimeLimitSeconds { get; init; }
}
