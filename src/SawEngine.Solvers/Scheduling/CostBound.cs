using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// A cost that no schedule of the same jobs undercuts: each job on its cheapest saw, and each delivery as late as the slowest of its
/// jobs if that had its quickest saw to itself. Only set-ups count that no other job of the saw could have left behind.
/// </summary>
internal sealed class CostBound
{
    private readonly Shop shop;
    private readonly Predicate<int> scheduled;
    private readonly Values[] sections;
    private readonly Values[] gradeGroups;
    private readonly Values[] blades;

    private CostBound(Shop shop, Predicate<int> scheduled)
    {
        this.shop = shop;
        this.scheduled = scheduled;
        sections = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.Section));
        gradeGroups = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.GradeGroup));
        blades = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.BladeId));
        foreach (var (_, saw, work) in Works())
        {
            sections[saw].Add(work.SetUp.Section);
            gradeGroups[saw].Add(work.SetUp.GradeGroup);
            blades[saw].Add(work.SetUp.BladeId);
        }
    }

    public static Int128 Micros(Shop shop, Predicate<int> scheduled) => new CostBound(shop, scheduled).Micros();

    private Int128 Micros()
    {
        var finish = new long[shop.Jobs.Length];
        var cost = new Int128[shop.Jobs.Length];
        Array.Fill(finish, long.MaxValue);
        Array.Fill(cost, Int128.MaxValue);
        foreach (var (job, saw, work) in Works())
        {
            var from = EasiestState(saw, work);
            // Blade changes are left out: where a worn blade comes first, a change can fall into time that is lost anyway, so that
            // counting those of a new blade would not bound from below.
            var alone = shop.Clocks[saw].FinishAlone(from, work.WithoutWear());
            if (alone == SawClock.NoRoom)
                continue;
            finish[job] = Math.Min(finish[job], alone);
            var seconds = work.Seconds + SetUpRules.Seconds(from, work.SetUp, shop.Saws[saw].SetUpTimes);
            cost[job] = Int128.Min(cost[job], ScheduleCost.SawTime(work.CostMicrosPerSecond, seconds));
        }
        var jobs = Enumerable.Range(0, finish.Length).Where(job => scheduled(job));
        return jobs.Aggregate((Int128)0, (sum, job) => sum + cost[job]) + Tardiness(finish);
    }

    private Int128 Tardiness(long[] finish)
    {
        Int128 sum = 0;
        foreach (var delivery in shop.Deliveries)
        {
            var done = delivery.Jobs.Where(job => scheduled(job)).Select(job => finish[job]).DefaultIfEmpty(long.MinValue).Max();
            if (delivery.Due is { } due && done > due)
                sum += ScheduleCost.Tardiness(delivery.CostMicrosPerHourLate, done - due);
        }
        return sum;
    }

    private IEnumerable<(int Job, int Saw, SawWork Work)> Works()
    {
        for (var job = 0; job < shop.Jobs.Length; job++)
            for (var saw = 0; saw < shop.Saws.Length; saw++)
                if (scheduled(job) && shop.Work[job][saw] is { } work)
                    yield return (job, saw, work);
    }

    /// <summary>The state that leaves least to set up, with unknown where nothing can have set the saw up before.</summary>
    private SetUpState EasiestState(int saw, SawWork work) => new(
        sections[saw].Left(work.SetUp.Section), gradeGroups[saw].Left(work.SetUp.GradeGroup), blades[saw].Left(work.SetUp.BladeId));

    /// <summary>What the jobs of a saw, and its start, set one thing to.</summary>
    private sealed class Values(string? initial)
    {
        private readonly Dictionary<string, int> jobs = new(StringComparer.Ordinal);

        public void Add(string? value)
        {
            if (value is not null)
                jobs[value] = jobs.GetValueOrDefault(value) + 1;
        }

        public string? Left(string? value) =>
            value is null || string.Equals(value, initial, StringComparison.Ordinal) || jobs[value] > 1 ? value : null;
    }
}
