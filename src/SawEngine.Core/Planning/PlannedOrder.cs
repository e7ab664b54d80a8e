using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>What the plan does for a sales order.</summary>
public sealed record PlannedOrder
{
    /// <summary>The order.</summary>
    public required SalesOrder Order { get; init; }

    /// <summary>Its lines, by id.</summary>
    public required IReadOnlyList<PlannedLine> Lines { get; init; }

    /// <summary>When its last planned piece is done, in seconds since the start of the plan; null where none is planned.</summary>
    public long? Finish { get; init; }

    /// <summary>Seconds that <see cref="Finish"/> is after the promise; 0 where it is in time or nothing is promised.</summary>
    public required long SecondsLate { get; init; }

    /// <summary>Sum of its lines.</summary>
    public Money Cost => new(Lines.Sum(line => line.Cost.Total.Amount));
}
