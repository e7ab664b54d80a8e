using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.Estimates;

/// <summary>One order whose time and cost are asked for.</summary>
public sealed record EstimateRequest : OperationRequest, ITimeLimited
{
    /// <summary>ISO 4217 code of every amount, three upper-case letters. It is echoed; nothing is converted.</summary>
    [MinLength(3), MaxLength(3)]
    public string? Currency { get; init; }

    /// <summary>The order. Its due, release and costPerHourLate do not matter to an estimate.</summary>
    public required OrderJson Order { get; init; }

    /// <summary>The request's own sections.</summary>
    [MaxLength(PlanLimits.Sections)]
    public IReadOnlyList<SectionJson> Sections { get; init; } = [];

    /// <summary>The request's own grades.</summary>
    [MaxLength(PlanLimits.Grades)]
    public IReadOnlyList<GradeJson> Grades { get; init; } = [];

    /// <summary>What it may be cut from; purchasable items serve as list lengths. Lead days do not matter to an estimate.</summary>
    [MaxLength(PlanLimits.StockItems)]
    public required IReadOnlyList<StockItemJson> Stock { get; init; }

    /// <summary>Where it is cut, as if its saws were free and attended all the time.</summary>
    public required ShopJson Shop { get; init; }

    /// <summary>Quantities for which each line is priced on its own, ascending.</summary>
    [MaxLength(EstimateLimits.PriceBreaks), Range(1, Limits.TotalQuantity)]
    public IReadOnlyList<int> PriceBreaks { get; init; } = [];

    /// <summary>How much work may be spent.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>Stops the search early; effort alone limits it where absent.</summary>
    [Range(0, Limits.Seconds, MinimumIsExclusive = true)]
    public decimal? TimeLimitSeconds { get; init; }
}
