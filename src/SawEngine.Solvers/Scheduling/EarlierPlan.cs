namespace SawEngine.Solvers.Scheduling;

/// <summary>An earlier schedule on the saws as they are now: the same saws and sequences, as early as it goes or, where moving costs, no earlier than before, and jobs that are new where they cost least.</summary>
internal static class EarlierPlan
{
    private const int PlacesPerSaw = 3;

    public static SawPlan Of(Shop shop, CancellationToken cancellation)
    {
        var plan = new SawPlan(shop);
        for (var saw = 0; saw < shop.Saws.Length; saw++)
            plan.Sequences[saw].AddRange(shop.Frozen[saw]);
        foreach (var job in Enumerable.Range(0, shop.Jobs.Length).Where(job => !shop.IsFrozen(job)).OrderBy(job => shop.Previous[job]?.Start ?? long.MaxValue))
            if (shop.Previous[job] is { } place && Array.FindIndex(shop.Saws, saw => saw.SawId == place.SawId) is >= 0 and var saw && shop.Work[job][saw] is not null)
            {
                plan.Sequences[saw].Add(job);
                plan.KeepsStart[job] = shop.Problem.Previous!.CostMicrosPerHourMoved > 0;
            }
        var decoding = new Decoding(shop);
        decoding.Run(plan);
        foreach (var job in Enumerable.Range(0, shop.Jobs.Length).Where(job => plan.Finish[job] == SawPlan.NotScheduled && !shop.IsFrozen(job)).ToList())
        {
            if (cancellation.IsCancellationRequested)
                break;
            plan = Inserted(decoding, plan, job, cancellation);
        }
        return plan;
    }

    private static SawPlan Inserted(Decoding decoding, SawPlan plan, int job, CancellationToken cancellation)
    {
        var best = plan;
        for (var saw = 0; saw < plan.Sequences.Length; saw++)
            if (plan.Shop.Work[job][saw] is not null)
            {
                var last = new SawPlan(plan);
                last.Sequences[saw].Add(job);
                decoding.Run(last);
                best = Better(best, last);
            }
        if (ReferenceEquals(best, plan))
            return plan;
        foreach (var (_, other) in new Placements(best, new(long.MaxValue, cancellation)).Best(job, _ => true, PlacesPerSaw))
            best = Better(best, other);
        return best;
    }

    private static SawPlan Better(SawPlan plan, SawPlan other) => other.Score().CompareTo(plan.Score()) < 0 ? other : plan;
}
