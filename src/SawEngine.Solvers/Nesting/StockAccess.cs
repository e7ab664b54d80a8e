using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>What tells lines apart by the stock that they may touch: owner, plant, and a reservation where there is one for them.</summary>
internal sealed class StockAccess(NestProblem problem)
{
    private readonly HashSet<string> _reserved = problem.Stock.SelectMany(item => item.ReservedFor ?? []).ToHashSet(StringComparer.Ordinal);

    /// <summary>Equal for lines that may touch the same stock.</summary>
    public (string? Owner, string? Plant, string? Reservation) Of(OrderLine line) =>
        (line.Owner, line.Plant, _reserved.Contains(line.Ref.ReservationId) ? line.Ref.ReservationId : null);
}
