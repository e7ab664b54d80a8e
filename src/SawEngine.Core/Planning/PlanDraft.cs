using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>A plan with what it was made from.</summary>
/// <param name="Variants">Groups, by index, that are nested otherwise than for the least material.</param>
/// <param name="Nests">The nests of each group.</param>
/// <param name="Jobs">What its schedule was made from.</param>
/// <param name="Plan">The plan.</param>
internal sealed record PlanDraft(IReadOnlyDictionary<int, NestVariant> Variants, IReadOnlyList<IReadOnlyList<GroupNest>> Nests, ScheduleProblem Jobs, Plan Plan)
{
    /// <summary>Pieces that are planned.</summary>
    public int Planned { get; } = Plan.Orders.Sum(order => order.Lines.Sum(line => line.Planned));

    /// <summary>Cost of all lines and of what is late, in millionths.</summary>
    public Int128 CostMicros { get; } = (Int128)(Plan.Cost.Amount * 1_000_000m) + Plan.Orders.Aggregate((Int128)0, (sum, order) => sum + TardinessMicros(order));

    /// <summary>Orders that are late at a cost, the dearest first.</summary>
    public IReadOnlyList<PlannedOrder> LateOrders { get; } =
        Plan.Orders.Where(order => TardinessMicros(order) > 0).OrderByDescending(TardinessMicros).ThenBy(order => order.Order.OrderId, StringComparer.Ordinal).ToList();

    /// <summary>Whether as many pieces are planned, or more, at less cost.</summary>
    public bool IsBetterThan(PlanDraft other) => Planned > other.Planned || (Planned == other.Planned && CostMicros < other.CostMicros);

    private static Int128 TardinessMicros(PlannedOrder order) => ScheduleCost.Tardiness((long)(order.Order.CostPerHourLate.Amount * 1_000_000m), order.SecondsLate);
}
