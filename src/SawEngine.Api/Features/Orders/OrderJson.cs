using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Orders;

/// <summary>Order lines that are promised together.</summary>
public sealed record OrderJson
{
    /// <summary>Id of the order, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string OrderId { get; init; }

    /// <summary>Promised finish; it may be past. Nothing is promised where absent.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Nothing of the order starts earlier; it may start at once where absent.</summary>
    public DateTimeOffset? Release { get; init; }

    /// <summary>Cost of each hour that the order is finished after due, in the request's currency.</summary>
    [CostRange(PlanLimits.CostPerHourLate)]
    public decimal CostPerHourLate { get; init; }

    /// <summary>Who is served where stock is short, from 1, which is first, to 9; of equal ones the earlier promised.</summary>
    [Range(1, 9)]
    public int Priority { get; init; } = OrderLine.UsualPriority;

    /// <summary>What is wanted.</summary>
    [MinLength(1), MaxLength(PlanLimits.Lines)]
    public required IReadOnlyList<OrderLineJson> Lines { get; init; }

    /// <summary>Free marks of the caller, which come back unchanged.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
