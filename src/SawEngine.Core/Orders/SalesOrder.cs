using SawEngine.Core.Quantities;

namespace SawEngine.Core.Orders;

/// <summary>Order lines that are promised together.</summary>
public sealed record SalesOrder
{
    /// <summary>The caller's id.</summary>
    public required string OrderId { get; init; }

    /// <summary>The promised finish; null where nothing is promised.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>Nothing of the order may start earlier; null where it may at once.</summary>
    public DateTimeOffset? Release { get; init; }

    /// <summary>Cost of each hour that the order is finished after <see cref="Due"/>.</summary>
    public Money CostPerHourLate { get; init; }

    /// <summary>What is wanted.</summary>
    public required IReadOnlyList<OrderLine> Lines { get; init; }
}
