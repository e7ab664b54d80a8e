using SawEngine.Core.Cautions;
using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Core.Planning;

/// <summary>The whole answer: what is cut from what, on which saw, when, and what it costs. Lists are by id, ordinal.</summary>
public sealed record Plan
{
    /// <summary>How much of the orders is planned.</summary>
    public required PlanStatus Status { get; init; }

    /// <summary>The orders with their lines.</summary>
    public required IReadOnlyList<PlannedOrder> Orders { get; init; }

    /// <summary>The cutting jobs.</summary>
    public required IReadOnlyList<PlannedJob> Jobs { get; init; }

    /// <summary>The bar layouts.</summary>
    public required IReadOnlyList<PlannedLayout> Layouts { get; init; }

    /// <summary>The nests, by section and grade.</summary>
    public required IReadOnlyList<PlannedNest> Nests { get; init; }

    /// <summary>Cost of the schedule and its bound; see <see cref="Scheduling.Schedule"/>.</summary>
    public required Schedule Schedule { get; init; }

    /// <summary>Why jobs are where they are, and why orders are late.</summary>
    public ScheduleExplanation Explanation { get; init; } = ScheduleExplanation.None;

    /// <summary>Pieces on no bar, by line; one row a line.</summary>
    public required IReadOnlyList<UnplacedPieces> Unplaced { get; init; }

    /// <summary>Jobs without a time.</summary>
    public required IReadOnlyList<UnscheduledJob> Unscheduled { get; init; }

    /// <summary>Cautions, each once; jobs name them.</summary>
    public required IReadOnlyList<NumberedCaution> Cautions { get; init; }

    /// <summary>Stock that the plan counts on.</summary>
    public required IReadOnlyList<Claim> Claims { get; init; }

    /// <summary>Warnings, by code and subject.</summary>
    public required IReadOnlyList<Warning> Warnings { get; init; }

    /// <summary>What ended the search of the nests: the weakest.</summary>
    public StoppedBy StoppedBy => Nests.Select(nest => nest.StoppedBy).DefaultIfEmpty(StoppedBy.Effort).Max();

    /// <summary>Bars that are cut.</summary>
    public int BarsUsed => Layouts.Sum(layout => layout.Layout.Repeat);

    /// <summary>Mass of pieces and remnants over mass of the bars used; 0 where none is.</summary>
    public required decimal MaterialYield { get; init; }

    /// <summary>Sum of the orders' costs.</summary>
    public Money Cost => new(Orders.Sum(order => order.Cost.Amount));

    /// <summary>End of the last job in seconds since the start of the plan; null where nothing is scheduled.</summary>
    public long? Finish => Schedule.Jobs.Count == 0 ? null : Schedule.Jobs.Max(job => job.Finish);
}
