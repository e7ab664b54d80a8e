namespace SawEngine.Solvers.Scheduling;

/// <summary>Splits late jobs that may be split, into two parts, then three and so on, as long as that costs less.</summary>
internal static class Splitting
{
    /// <summary>The best plan found.</summary>
    /// <param name="plan">The plan with all jobs whole.</param>
    /// <param name="improve">Improves a plan without changing what is split.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static SawPlan Run(SawPlan plan, Func<SawPlan, SawPlan> improve, CancellationToken cancellation)
    {
        for (var parts = 2; !cancellation.IsCancellationRequested && LateJobs(plan, parts) is { Count: > 0 } late; parts++)
        {
            var split = new Dictionary<string, int>(plan.Shop.SplitJobs);
            foreach (var jobId in late)
                split[jobId] = parts;
            var other = Rejoined(improve(plan.In(new(plan.Shop.Problem, split))), cancellation);
            if (!HasAllParts(other) || other.Score().CompareTo(plan.Score()) >= 0)
                break;
            plan = other;
        }
        return plan;
    }

    private static HashSet<string> LateJobs(SawPlan plan, int parts)
    {
        var late = new HashSet<string>(StringComparer.Ordinal);
        foreach (var delivery in plan.Shop.Deliveries.Where(delivery => delivery.CostMicrosPerHourLate > 0))
            foreach (var job in delivery.Jobs)
                if (plan.Finish[job] > delivery.Due && plan.Shop.Jobs[job].MostParts >= parts && !plan.Shop.IsFrozen(job))
                    late.Add(plan.Shop.Jobs[job].JobId);
        return late;
    }

    private static bool HasAllParts(SawPlan plan) =>
        Enumerable.Range(0, plan.Shop.Jobs.Length).All(job => plan.Finish[job] != SawPlan.NotScheduled || !plan.Shop.SplitJobs.ContainsKey(plan.Shop.Jobs[job].JobId));

    /// <summary>Makes jobs whole again where that is no worse.</summary>
    private static SawPlan Rejoined(SawPlan plan, CancellationToken cancellation)
    {
        foreach (var jobId in plan.Shop.SplitJobs.Keys.Order(StringComparer.Ordinal))
        {
            if (cancellation.IsCancellationRequested)
                break;
            var whole = new Dictionary<string, int>(plan.Shop.SplitJobs);
            whole.Remove(jobId);
            var other = plan.In(new(plan.Shop.Problem, whole));
            if (other.Score().Unscheduled <= plan.Score().Unscheduled && other.Score().CostMicros <= plan.Score().CostMicros)
                plan = other;
        }
        return plan;
    }
}
