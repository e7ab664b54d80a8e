using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// A cost that no schedule of the same jobs undercuts: each job on its cheapest saw without set-ups, and each delivery as late as
/// the slowest of its jobs if that had its quickest saw to itself, set up and with a blade that lasts.
/// </summary>
internal static class CostBound
{
    public static Int128 Micros(Shop shop, Predicate<int> scheduled)
    {
        Int128 sum = 0;
        var finish = new long[shop.Jobs.Length];
        for (var job = 0; job < finish.Length; job++)
        {
            finish[job] = SawPlan.NotScheduled;
            if (!scheduled(job))
                continue;
            finish[job] = EarliestFinish(shop, job);
            sum += shop.Work[job].Min(work => work is null ? Int128.MaxValue : ScheduleCost.SawTime(work.CostMicrosPerSecond, work.Seconds));
        }
        foreach (var delivery in shop.Deliveries)
        {
            var done = delivery.Jobs.Select(job => finish[job]).DefaultIfEmpty(SawPlan.NotScheduled).Max();
            if (done != SawPlan.NotScheduled && delivery.Due is { } due && done > due)
                sum += ScheduleCost.Tardiness(delivery.CostMicrosPerHourLate, done - due);
        }
        return sum;
    }

    // Blade changes are left out: where a worn blade comes first, a change can fall into time that is lost anyway, so that counting
    // those of a new blade would not bound from below.
    private static long EarliestFinish(Shop shop, int job)
    {
        var earliest = long.MaxValue;
        for (var saw = 0; saw < shop.Saws.Length; saw++)
        {
            if (shop.Work[job][saw] is not { } work)
                continue;
            var finish = shop.Clocks[saw].FinishAlone(work.WithoutWear());
            if (finish != SawClock.NoRoom)
                earliest = Math.Min(earliest, finish);
        }
        return earliest == long.MaxValue ? 0 : earliest;
    }
}
