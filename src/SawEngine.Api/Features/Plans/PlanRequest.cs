using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.Plans;

/// <summary>All that a plan is made from.</summary>
public sealed record PlanRequest : OperationRequest, ITimeLimited
{
    /// <summary>ISO 4217 code of every amount, three upper-case letters. It is echoed; nothing is converted.</summary>
    [MinLength(3), MaxLength(3)]
    public string? Currency { get; init; }

    /// <summary>IANA name of the time zone of calendars and answers; the offset of planStart where absent.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? TimeZone { get; init; }

    /// <summary>The clock: nothing is planned earlier.</summary>
    public required DateTimeOffset PlanStart { get; init; }

    /// <summary>What is wanted; the lines and pieces of all orders have limits of their own.</summary>
    [MinLength(1), MaxLength(PlanLimits.Orders)]
    public required IReadOnlyList<OrderJson> Orders { get; init; }

    /// <summary>The request's own sections.</summary>
    [MaxLength(PlanLimits.Sections)]
    public IReadOnlyList<SectionJson> Sections { get; init; } = [];

    /// <summary>The request's own grades.</summary>
    [MaxLength(PlanLimits.Grades)]
    public IReadOnlyList<GradeJson> Grades { get; init; } = [];

    /// <summary>What it may be cut from.</summary>
    [MaxLength(PlanLimits.StockItems)]
    public required IReadOnlyList<StockItemJson> Stock { get; init; }

    /// <summary>Where it is cut.</summary>
    public required ShopJson Shop { get; init; }

    /// <summary>How much work may be spent.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>Stops the search early; effort alone limits it where absent.</summary>
    [Range(0, Limits.Seconds, MinimumIsExclusive = true)]
    public decimal? TimeLimitSeconds { get; init; }
}
