using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Why a job could not be placed.</summary>
internal static class Unschedulable
{
    /// <summary>The jobs that a plan leaves out, by id.</summary>
    public static IEnumerable<UnscheduledJob> Of(SawPlan plan) => Enumerable.Range(0, plan.Finish.Length).Where(job => plan.Finish[job] == SawPlan.NotScheduled)
        .Select(job => new UnscheduledJob(plan.Shop.Jobs[job].JobId, Reason(plan.Shop, plan, job))).DistinctBy(job => job.JobId);

    private static string Reason(Shop shop, SawPlan plan, int job)
    {
        var known = shop.Jobs[job].Options.Any(option => shop.Saws.Any(saw => saw.SawId == option.SawId));
        if (!known)
            return UnscheduledReason.NoSaw;
        var saws = Enumerable.Range(0, shop.Saws.Length).Where(saw => shop.Work[job][saw] is not null).ToList();
        if (saws.Count == 0)
            return IsRefusedByFrozenSaw(shop, shop.Jobs[job]) ? UnscheduledReason.FrozenSawCannotTakeIt : UnscheduledReason.CutExceedsBladeLife;
        if (Array.Exists(shop.Before[job], before => plan.Finish[before] == SawPlan.NotScheduled))
            return UnscheduledReason.PredecessorUnscheduled;
        var attended = saws.FindAll(saw => shop.Clocks[saw].LongestWindow > 0);
        if (attended.Count > 0 && attended.TrueForAll(saw => TooLong(shop.Clocks[saw], shop.Work[job][saw]!)))
            return UnscheduledReason.StepLongerThanShift;
        return shop.Resources.Any && attended.Exists(saw => HasRoomAlone(shop, saw, shop.Work[job][saw]!)) ? UnscheduledReason.NoOneToSetUp : UnscheduledReason.NoShift;
    }

    private static bool IsRefusedByFrozenSaw(Shop shop, ScheduleJob job) =>
        job.Frozen is { } place && !job.Options.Any(option => option.SawId == place.SawId && shop.Saws.Any(saw => saw.SawId == option.SawId));

    private static bool TooLong(SawClock clock, SawWork work) => work.MayPause
        ? !work.MayRunUnattended && work.LongestStep > clock.LongestWindow * 1000
        : clock.FinishAlone(work.SetUp, work with { Release = 0 }) == SawClock.NoRoom;

    private static bool HasRoomAlone(Shop shop, int saw, SawWork work) => shop.Clocks[saw].FinishAlone(work.SetUp, work) != SawClock.NoRoom;
}
