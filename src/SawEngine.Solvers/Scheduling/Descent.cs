namespace SawEngine.Solvers.Scheduling;

/// <summary>Moves single jobs to where they cost less, and works or leaves single windows of overtime, until nothing helps or the work is spent.</summary>
internal static class Descent
{
    private const int PlacesPerSaw = 2;

    public static SawPlan Run(SawPlan plan, WorkMeter meter)
    {
        var placements = new Placements(plan, meter);
        var isBetter = true;
        while (isBetter)
        {
            isBetter = false;
            for (var job = 0; job < plan.Shop.Jobs.Length && !meter.Stopped; job++)
                if (plan.Finish[job] != SawPlan.NotScheduled && !plan.Shop.IsFrozen(job) && Moved(placements, plan, job) is { } other)
                {
                    (plan, isBetter) = (other, true);
                    placements.Use(plan);
                }
            for (var saw = 0; saw < plan.Shop.Saws.Length; saw++)
                for (var window = 0; window < plan.Shop.Saws[saw].Overtime.Count && !meter.Stopped; window++)
                    if (placements.WithOvertime(saw, window, !plan.OvertimeWorked[saw][window]) is var other && other.Score().CompareTo(plan.Score()) < 0)
                    {
                        (plan, isBetter) = (other, true);
                        placements.Use(plan);
                    }
        }
        return plan;
    }

    private static SawPlan? Moved(Placements placements, SawPlan plan, int job)
    {
        foreach (var (_, other) in placements.Best(job, _ => true, PlacesPerSaw))
            if (other.Score().CompareTo(plan.Score()) < 0)
                return other;
        return null;
    }
}
