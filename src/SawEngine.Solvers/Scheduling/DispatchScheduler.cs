using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Dispatching rules that mind set-ups, each as a list schedule on unlike saws, the best kept: least jobs left out, then least cost,
/// then earliest deliveries, then shortest, then the earlier rule. From <see cref="Effort.Standard"/> up the best is improved by a search
/// on arrays of sequences, and proved where jobs are few; then, by the clock itself, by moving and exchanging jobs and by taking some
/// out and putting them back. All within a fixed amount of work.
/// </summary>
public sealed class DispatchScheduler : IScheduler
{
    // Half for descent, half for the iterated greedy. 60 jobs with pauses and worn blades: 0.7 us a placement.
    private const long StandardPlacements = 1_000_000;
    private const long ThoroughPlacements = 10_000_000;
    private const int ShareOfExact = 10;
    private const int StandardRoundsPerJob = 30;
    private const int ThoroughRoundsPerJob = 300;

    // Tenths. Lee, Bhaskaran and Pinedo estimate k1 = 4.5 + R or 6 - 2R and k2 = tau / (2 sqrt(eta)) from the problem (from memory);
    // a grid around these values needs no estimate.
    private static readonly int[] SlackLookAheads = [5, 15, 30, 60];
    private static readonly int[] SetUpLookAheads = [2, 6, 15];

    private readonly IReadOnlyList<DispatchRule> rules;

    /// <summary>All rules.</summary>
    public DispatchScheduler()
        : this(Enum.GetValues<DispatchRule>())
    {
    }

    /// <summary>The named rules only.</summary>
    public DispatchScheduler(params IReadOnlyList<DispatchRule> rules) =>
        this.rules = rules.Count > 0 ? rules : throw new ArgumentException("At least one rule is needed.", nameof(rules));

    /// <inheritdoc/>
    public Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation)
    {
        var shop = new Shop(problem);
        var plans = Dispatched(shop, cancellation);
        var best = plans[0];
        if (effort == Effort.Quick)
            return best.Plan.ToSchedule(Name(best.Rule));

        var (searched, isExact, isLeast) = PlanSearch.Run(shop, best.Plan, effort, cancellation);
        if (searched is not null)
            plans = [.. plans.Prepend(new(best.Rule, searched, searched.Score())).OrderBy(plan => plan.Score)];
        // What the search has judged by the clock's own times is only looked at for a better use of ties.
        var placements = (effort == Effort.Standard ? StandardPlacements : ThoroughPlacements) / (isExact ? ShareOfExact : 1);
        var (descended, rule) = Descended(shop, plans, new(placements / 2, cancellation));
        var rounds = shop.Jobs.Length * (effort == Effort.Standard ? StandardRoundsPerJob : ThoroughRoundsPerJob);
        var improved = IteratedGreedy.Run(new(shop, descended, new(placements / 2, cancellation)), rounds);
        var score = improved.Score();
        isLeast &= score.Unscheduled == best.Score.Unscheduled;
        return improved.ToSchedule(score.CompareTo(best.Score) < 0 ? Name(rule) + "_improved" : Name(best.Rule), isLeast);
    }

    private static (SawPlan Plan, DispatchRule Rule) Descended(Shop shop, List<Candidate> plans, WorkMeter meter)
    {
        var (best, bestScore) = (plans[0], plans[0].Score);
        foreach (var start in plans.DistinctBy(plan => plan.Score).TakeWhile(_ => !meter.Stopped))
        {
            var moves = new PlanMoves(shop, start.Plan, meter);
            Descent.Run(moves);
            if (moves.Score.CompareTo(bestScore) < 0)
                (best, bestScore) = (start, moves.Score);
        }
        return (best.Plan, best.Rule);
    }

    /// <summary>The plans of all rules, best first; after cancellation only those made so far.</summary>
    private List<Candidate> Dispatched(Shop shop, CancellationToken cancellation)
    {
        var found = new List<Candidate>();
        foreach (var (rule, priority) in Priorities(shop))
            foreach (var onQuickestSaw in (bool[])[true, false])
            {
                if (found.Count > 0 && cancellation.IsCancellationRequested)
                    break;
                var plan = Dispatching.Run(shop, priority, onQuickestSaw);
                found.Add(new(rule, plan, plan.Score()));
            }
        return [.. found.OrderBy(candidate => candidate.Score)];
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

    private sealed record Candidate(DispatchRule Rule, SawPlan Plan, Score Score);
}
