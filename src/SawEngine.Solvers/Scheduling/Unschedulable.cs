using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Why a job could not be placed.</summary>
internal static class Unschedulable
{
    public static string Reason(Shop shop, int job)
    {
        var known = shop.Jobs[job].Options.Any(option => shop.Saws.Any(saw => saw.SawId == option.SawId));
        if (!known)
            return UnscheduledReason.NoSaw;
        var saws = Enumerable.Range(0, shop.Saws.Length).Where(saw => shop.Work[job][saw] is not null).ToList();
        if (saws.Count == 0)
            return UnscheduledReason.CutExceedsBladeLife;
        var attended = saws.FindAll(saw => shop.Clocks[saw].LongestWindow > 0);
        return attended.Count > 0 && attended.TrueForAll(saw => TooLong(shop.Clocks[saw], shop.Work[job][saw]!))
            ? UnscheduledReason.StepLongerThanShift
            : UnscheduledReason.NoShift;
    }

    private static bool TooLong(SawClock clock, SawWork work) => work.MayPause
        ? work.LongestStep > clock.LongestWindow * 1000
        : clock.FinishAlone(work.SetUp, work with { Release = 0 }) == SawClock.NoRoom;
}
