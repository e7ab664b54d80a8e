namespace SawEngine.Core.Planning;

/// <summary>
/// Lets nests and schedule meet where promises are broken at a cost. A bar is one job's, so a late piece waits for all that shares its bars; and a nest for one
/// saw waits for that saw. Some groups are nested again, the dearest of their late orders, all late or all early promised ones apart, or for all saws, and scheduled again; what costs less in all,
/// material and lateness together, is kept, if it is clean, and only that. So a plan never costs more for it.
/// </summary>
internal sealed class LatenessLoop(Func<IReadOnlyDictionary<int, NestVariant>, PlanDraft> draft, Func<Plan, bool> isClean, Effort effort, CancellationToken cancellation)
{
    private const int MostPasses = 3;
    private const int MostGroupsPerPass = 3;

    private int draftsLeft = effort switch { Effort.Quick => 3, Effort.Standard => 12, _ => 30 };

    /// <summary>The best plan found from one for the least material.</summary>
    public PlanDraft Run(PlanDraft best)
    {
        for (var pass = 0; pass < MostPasses && best.LateOrders.Count > 0; pass++)
        {
            var before = best;
            foreach (var variants in VariantsOf(before).Take(draftsLeft).TakeWhile(_ => !cancellation.IsCancellationRequested))
            {
                draftsLeft--;
                var other = draft(variants);
                best = other.IsBetterThan(best) && isClean(other.Plan) ? other : best;
            }
            if (ReferenceEquals(best, before))
                break;
        }
        return best;
    }

    private static IEnumerable<IReadOnlyDictionary<int, NestVariant>> VariantsOf(PlanDraft plan)
    {
        var late = plan.LateOrders.Select(order => order.Order.OrderId).ToHashSet(StringComparer.Ordinal);
        var lastDue = plan.LateOrders.Max(order => order.Order.Due);
        var early = plan.Plan.Orders.Where(order => order.Order.Due <= lastDue).Select(order => order.Order.OrderId).ToHashSet(StringComparer.Ordinal);
        var groups = Enumerable.Range(0, plan.Nests.Count)
            .Where(group => OrdersOf(plan, group).Any(early.Contains))
            .OrderBy(group => OrdersOf(plan, group).Any(late.Contains) ? 0 : 1)
            .ThenByDescending(group => plan.Nests[group].Sum(nest => nest.Layouts.Sum(layout => layout.Repeat)))
            .ThenBy(group => group)
            .Take(MostGroupsPerPass);
        foreach (var group in groups)
        {
            var known = plan.Variants.GetValueOrDefault(group) ?? new();
            var orders = OrdersOf(plan, group).ToHashSet(StringComparer.Ordinal);
            var dearest = plan.LateOrders.Select(order => order.Order.OrderId).Where(orders.Contains).Take(1);
            var choices = new[] { dearest, late, early }.Select(apart => apart.Where(orders.Contains).ToHashSet(StringComparer.Ordinal))
                .Where(apart => apart.Count > 0 && apart.Count < orders.Count && known.Apart?.SetEquals(apart) != true)
                .DistinctBy(apart => string.Join('\n', apart.Order(StringComparer.Ordinal)), StringComparer.Ordinal)
                .Select(apart => known with { Apart = apart }).ToList();
            if (!known.Widest)
                choices.Add(known with { Widest = true });
            foreach (var choice in choices)
                yield return new SortedDictionary<int, NestVariant>(plan.Variants.ToDictionary()) { [group] = choice };
        }
    }

    private static IEnumerable<string> OrdersOf(PlanDraft plan, int group) => plan.Nests[group].SelectMany(nest => nest.Group.Lines).Select(line => line.Ref.OrderId);
}
