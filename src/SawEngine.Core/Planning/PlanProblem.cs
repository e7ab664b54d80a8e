using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Planning;

/// <summary>
/// All that a plan is made from, checked and in canonical order: orders by id, lines by <see cref="OrderLine.Ref"/>, stock by id, saws by id, blades by id, ordinal.
/// </summary>
public sealed record PlanProblem
{
    /// <summary>The clock: nothing is planned earlier.</summary>
    public required DateTimeOffset PlanStart { get; init; }

    /// <summary>What is wanted.</summary>
    public required IReadOnlyList<SalesOrder> Orders { get; init; }

    /// <summary>What it may be cut from. Costs are on all of it or on none.</summary>
    public required IReadOnlyList<StockItem> Stock { get; init; }

    /// <summary>Whether stock costs are money; otherwise they are lengths and material is not costed.</summary>
    public required bool StockIsCosted { get; init; }

    /// <summary>The saws.</summary>
    public required IReadOnlyList<PlanSaw> Saws { get; init; }

    /// <summary>Who attends the saws, by id; a saw that none of them attends is attended whenever its calendar says so.</summary>
    public IReadOnlyList<ScheduleOperator> Operators { get; init; } = [];

    /// <summary>What loads heavy bars, by id; where there is none, they are loaded like others.</summary>
    public IReadOnlyList<ScheduleCrane> Cranes { get; init; } = [];

    /// <summary>Seconds that an operator walks from one saw to another.</summary>
    public long WalkingSeconds { get; init; }

    /// <summary>Rates of the shop.</summary>
    public required ShopRates Rates { get; init; }

    /// <summary>Trim by end condition.</summary>
    public required IReadOnlyDictionary<EndCondition, Length> Trim { get; init; }

    /// <summary>Remnant rule; null where nothing is kept or credited.</summary>
    public RemnantRules? Remnants { get; init; }

    /// <summary>Value of a kilogram of scrap in millionths of the currency; 0 where stock has no costs, since a length has no scrap value.</summary>
    public long ScrapValueMicrosPerKilogram => StockIsCosted ? (long)(Rates.ScrapValuePerKilogram.Amount * 1_000_000m) : 0;

    /// <summary>How much work the solvers may spend.</summary>
    public Effort Effort { get; init; } = Effort.Standard;
}
