using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Average seconds of a job's work and of a set-up, rounded down: the scales of the apparent tardiness cost.</summary>
internal sealed record ShopAverages(long WorkSeconds, long SetUpSeconds)
{
    public static ShopAverages Of(Shop shop)
    {
        Int128 work = 0, setUp = 0;
        var (works, setUps) = (0, 0);
        for (var saw = 0; saw < shop.Saws.Length; saw++)
        {
            var before = shop.Saws[saw].InitialState;
            foreach (var job in shop.Work.Select(options => options[saw]).OfType<SawWork>())
            {
                work += job.Seconds;
                works++;
                setUp += SetUpRules.Seconds(before, job.SetUp, shop.Saws[saw].SetUpTimes);
                setUps++;
                before = job.SetUp;
            }
        }
        return new((long)(work / Math.Max(1, works)), (long)(setUp / Math.Max(1, setUps)));
    }
}
