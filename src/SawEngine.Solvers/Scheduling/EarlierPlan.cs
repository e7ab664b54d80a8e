namespace SawEngine.Solvers.Scheduling;

/// <summary>An earlier schedule on the saws as they are now: the same saws and sequences, as early as it goes, and jobs that are new where they are done first.</summary>
internal static class EarlierPlan
{
    public static SawPlan Of(Shop shop)
    {
        var plan = new SawPlan(shop);
        for (var saw = 0; saw < shop.Saws.Length; saw++)
            plan.Sequences[saw].AddRange(shop.Frozen[saw]);
        var known = Enumerable.Range(0, shop.Jobs.Length).Where(job => !shop.IsFrozen(job)).OrderBy(job => shop.Previous[job]?.Start ?? long.MaxValue).ToList();
        foreach (var job in known)
            if (shop.Previous[job] is { } place && Array.FindIndex(shop.Saws, saw => saw.SawId == place.SawId) is >= 0 and var saw && shop.Work[job][saw] is not null)
                plan.Sequences[saw].Add(job);
        var decoding = new Decoding(shop);
        decoding.Run(plan);
        foreach (var job in known.Where(job => plan.Finish[job] == SawPlan.NotScheduled))
            plan = WithInserted(decoding, plan, job);
        return plan;
    }

    private static SawPlan WithInserted(Decoding decoding, SawPlan plan, int job)
    {
        var (best, bestScore) = (plan, plan.Score());
        for (var saw = 0; saw < plan.Sequences.Length; saw++)
            for (var place = plan.Shop.Frozen[saw].Length; plan.Shop.Work[job][saw] is not null && place <= plan.Sequences[saw].Count; place++)
            {
                var trial = new SawPlan(plan);
                trial.Sequences[saw].Insert(place, job);
                decoding.Run(trial);
                if (trial.Score() is var score && score.CompareTo(bestScore) < 0)
                    (best, bestScore) = (trial, score);
            }
        return best;
    }
}
