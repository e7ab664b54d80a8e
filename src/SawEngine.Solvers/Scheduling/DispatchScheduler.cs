using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Dispatching rules that mind set-ups, each as a list schedule on unlike saws, the best kept: least jobs left out, then least cost,
/// then earliest deliveries, then shortest, then the earlier rule; where there is an earlier schedule, that is one more to begin with. At the least effort
/// single jobs are moved where that costs less. From <see cref="Effort.Standard"/> up what that gives is improved by a search on arrays of sequences, and proved
/// where jobs are few; then by its own times, with operators, cranes and overtime; late jobs that may be split are split. All within a fixed amount of work.
/// </summary>
public sealed class DispatchScheduler : IScheduler
{
    // Some microseconds each.
    private const long QuickPlacementsPerJob = 300;
    private const long StandardPlacementsPerJob = 3_000;
    private const long MostStandardPlacements = 1_000_000;
    private const int ThoroughTimes = 8;
    private const long MostThoroughPlacements = 6_000_000;
    private const int ShareOfProved = 10;
    private const int ShareOfSplit = 2;
    private const int ShareOfDescent = 6;
    private const string Improved = "_improved";
    private const string Earlier = "earlier_schedule";

    // Tenths. Lee, Bhaskaran and Pinedo estimate k1 = 4.5 + R or 6 - 2R and k2 = tau / (2 sqrt(eta)) from the problem (from memory);
    // a grid around these values needs no estimate.
    private static readonly int[] SlackLookAheads = [5, 15, 30, 60];
    private static readonly int[] SetUpLookAheads = [2, 6, 15];

    private readonly IReadOnlyList<DispatchRule> rules;
    private readonly bool isRuleAlone;

    /// <summary>All rules.</summary>
    public DispatchScheduler()
        : this(Enum.GetValues<DispatchRule>()) => isRuleAlone = false;

    /// <summary>The named rules only; at the least effort nothing but they.</summary>
    public DispatchScheduler(params IReadOnlyList<DispatchRule> rules)
    {
        this.rules = rules.Count > 0 ? rules : throw new ArgumentException("At least one rule is needed.", nameof(rules));
        isRuleAlone = true;
    }

    /// <inheritdoc/>
    public Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation)
    {
        var shop = new Shop(problem);
        var first = First(shop, cancellation);
        if (effort == Effort.Quick && isRuleAlone)
            return Named(first.Plan, first);
        // More effort starts from what less effort ends with, so that it never costs more.
        var quick = Descent.Run(first.Plan, new(shop.Jobs.Length * QuickPlacementsPerJob, cancellation));
        if (effort == Effort.Quick)
            return Named(quick, first);
        var (best, isLeast) = Improve(quick, Effort.Standard, cancellation);
        if (effort == Effort.Thorough && !isLeast)
            (best, isLeast) = Improve(best, effort, cancellation);
        return Named(best, first, isLeast);
    }

    /// <summary>The best plan found, no worse than where it starts; whether no plan of the same jobs costs less.</summary>
    private static (SawPlan Plan, bool IsLeast) Improve(SawPlan start, Effort effort, CancellationToken cancellation)
    {
        var shop = start.Shop;
        var (searched, isLeast) = PlanSearch.Run(start, effort, cancellation);
        var best = searched is null || searched.Score().CompareTo(start.Score()) > 0 ? start : searched;
        isLeast &= best.Score().Unscheduled == start.Score().Unscheduled && !shop.Jobs.Any(job => job.MostParts > 1);
        // Where nothing costs less, something may still be done earlier.
        best = DecodedSearch.Run(best, new(Placements(shop, effort) / (isLeast ? ShareOfProved : 1), cancellation));
        best = Descent.Run(best, new(Placements(shop, effort) / ShareOfDescent, cancellation));
        return (Splitting.Run(best, plan => DecodedSearch.Run(plan, new(Placements(plan.Shop, effort) / ShareOfSplit, cancellation)), cancellation), isLeast);
    }

    private static Schedule Named(SawPlan plan, Candidate first, bool isLeast = false) =>
        plan.ToSchedule(plan.Score().CompareTo(first.Score) < 0 ? first.Name + Improved : first.Name, isLeast);

    private static long Placements(Shop shop, Effort effort) =>
        effort == Effort.Standard
            ? Math.Min(MostStandardPlacements, shop.Jobs.Length * StandardPlacementsPerJob)
            : Math.Min(MostThoroughPlacements, shop.Jobs.Length * StandardPlacementsPerJob * ThoroughTimes);

    /// <summary>The best plan to search from: the earlier schedule as it stands, or a dispatched one.</summary>
    private Candidate First(Shop shop, CancellationToken cancellation)
    {
        var dispatched = Dispatched(shop, cancellation);
        if (shop.Problem.Previous is null)
            return dispatched;
        var kept = EarlierPlan.Of(shop, cancellation);
        return kept.Score() is var score && score.CompareTo(dispatched.Score) < 0 ? new(Earlier, kept, score) : dispatched;
    }

    /// <summary>The best plan of all rules, without and with overtime; after cancellation of those made so far.</summary>
    private Candidate Dispatched(Shop shop, CancellationToken cancellation)
    {
        var hasOvertime = Array.Exists(shop.Saws, saw => saw.Overtime.Count > 0);
        Candidate? best = null;
        foreach (var (rule, priority) in Priorities(shop))
            foreach (var onQuickestSaw in (bool[])[true, false])
                foreach (var worksOvertime in hasOvertime ? (bool[])[false, true] : [false])
                {
                    if (best is not null && cancellation.IsCancellationRequested)
                        return best;
                    var plan = Dispatching.Run(shop, priority, onQuickestSaw, worksOvertime);
                    if (plan.Score() is var score && (best is null || score.CompareTo(best.Score) < 0))
                        best = new(Name(rule), plan, score);
                }
        return best!;
    }

    private IEnumerable<(DispatchRule Rule, Priority Priority)> Priorities(Shop shop)
    {
        var averages = ShopAverages.Of(shop);
        foreach (var rule in rules)
        {
            if (rule != DispatchRule.ApparentTardinessCost)
            {
                yield return (rule, new(shop, rule, averages));
                continue;
            }
            foreach (var slack in SlackLookAheads)
                foreach (var setUp in averages.SetUpSeconds > 0 ? SetUpLookAheads : [SetUpLookAheads[0]])
                    yield return (rule, new(shop, rule, averages, slack, setUp));
        }
    }

    private static string Name(DispatchRule rule) => rule switch
    {
        DispatchRule.EarliestDueDate => "earliest_due_date",
        DispatchRule.WeightedShortestProcessingTime => "weighted_shortest_processing_time",
        DispatchRule.ApparentTardinessCost => "apparent_tardiness_cost",
        DispatchRule.LongestProcessingTime => "longest_processing_time",
        DispatchRule.ShortestSetUp => "shortest_set_up",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Not a rule."),
    };

    private sealed record Candidate(string Name, SawPlan Plan, Score Score);
}
