using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Jobs and the shop whose saws they run on.</summary>
public abstract record ScheduleProblemRequest : OperationRequest, ITimeLimited
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

    /// <summary>The request's own grades, which jobs may name.</summary>
    [MaxLength(PlanLimits.Grades)]
    public IReadOnlyList<GradeJson> Grades { get; init; } = [];

    /// <summary>Where they run. Capacities and blades are not checked against the jobs: a job names the saws that can take it.</summary>
    public required ShopJson Shop { get; init; }

    /// <summary>How much each cause of cost counts.</summary>
    public ScheduleWeightsJson Weights { get; init; } = new();

    /// <summary>Cost of each hour until the last job is done, in the request's currency.</summary>
    [CostRange(PlanLimits.CostPerHourLate)]
    public decimal MakespanCostPerHour { get; init; }

    /// <summary>An earlier schedule, and what it costs to leave it; there is none where absent.</summary>
    public PreviousScheduleJson? Previous { get; init; }

    /// <summary>How much work may be spent.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>Stops the search early; effort alone limits it where absent.</summary>
    [Range(0, Limits.Seconds, MinimumIsExclusive = true)]
    public decimal? TimeLimitSeconds { get; init; }
}
