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
    private readonly SawClock[] forParts;
    private readonly Values[] sections;
    private readonly Values[] gradeGroups;
    private readonly Values[] blades;
    private readonly Values[] angles;

    private CostBound(Shop shop, Predicate<int> scheduled)
    {
        this.shop = shop;
        this.scheduled = scheduled;
        forParts = Array.ConvertAll(shop.Clocks, clock => clock.ForAnySteps());
        sections = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.Section));
        gradeGroups = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.GradeGroup));
        blades = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.BladeId));
        angles = Array.ConvertAll(shop.Saws, saw => new Values(saw.InitialState.Angle));
        foreach (var (_, saw, work) in Works())
        {
            sections[saw].Add(work.SetUp.Section);
            gradeGroups[saw].Add(work.SetUp.GradeGroup);
            blades[saw].Add(work.SetUp.BladeId);
            angles[saw].Add(work.SetUp.Angle);
        }
    }

    /// <summary>The bound on the cost of those jobs that are scheduled, and how it was found.</summary>
    public static (Int128 Micros, ScheduleBoundRule Rule) Of(Shop shop, Predicate<int> scheduled) => new CostBound(shop, scheduled).Bound();

    /// <summary>The earliest end of each job, all its parts done, if it had its quickest saw to itself; by job.</summary>
    public static Dictionary<string, long> FinishesAlone(Shop shop)
    {
        var (finish, _) = new CostBound(shop, _ => true).FinishesAlone();
        return Enumerable.Range(0, finish.Length).Where(job => finish[job] < long.MaxValue).GroupBy(job => shop.Jobs[job].JobId, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Max(job => finish[job]), StringComparer.Ordinal);
    }

    private (Int128 Micros, ScheduleBoundRule Rule) Bound()
    {
        var (finish, cost) = FinishesAlone();
        var jobs = Enumerable.Range(0, finish.Length).Where(job => scheduled(job));
        var micros = jobs.Aggregate((Int128)0, (sum, job) => sum + cost[job]) + Tardiness(finish);
        if (shop.MakespanCostMicrosPerSecond == 0)
            return (micros, ScheduleBoundRule.JobsAlone);
        var longest = finish.Where((_, job) => scheduled(job)).DefaultIfEmpty(0).Max();
        var all = Math.Max(longest, FinishOfAll());
        return (micros + ScheduleCost.SawTime(shop.MakespanCostMicrosPerSecond, all), all > longest ? ScheduleBoundRule.Load : ScheduleBoundRule.JobsAlone);
    }

    private (long[] Finish, Int128[] Cost) FinishesAlone()
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
            var alone = shop.Jobs[job].MostParts == 1 ? shop.Clocks[saw].FinishAlone(from, work) : forParts[saw].FinishAlone(from, LargestPart(job, saw, work));
            if (alone == SawClock.NoRoom)
                continue;
            finish[job] = Math.Min(finish[job], alone);
            cost[job] = Int128.Min(cost[job], CostOf(job, saw, from, work));
        }
        return (finish, cost);
    }

    /// <summary>Of a job that may be split, the fewest and shortest steps that its largest part can have.</summary>
    private SawWork LargestPart(int job, int saw, SawWork work)
    {
        var runs = StepsOn(job, saw);
        var (steps, most) = (runs.Sum(run => run.Count), shop.Jobs[job].MostParts);
        return work.WithSteps(runs.Min(run => run.Milliseconds), (steps + most - 1) / most);
    }

    /// <summary>Cost of work and set-up; of a job that may be split only its work, as if all its steps were as short as the shortest.</summary>
    private Int128 CostOf(int job, int saw, SetUpState from, SawWork work)
    {
        if (shop.Jobs[job].MostParts > 1)
            return ScheduleCost.SawTime(work.CostMicrosPerSecond, LeastSeconds(job, saw, work));
        var setUp = work.IsRunning ? 0 : SetUpRules.Seconds(from, work.SetUp, shop.Saws[saw].SetUpTimes);
        return ScheduleCost.SawTime(work.CostMicrosPerSecond, work.Seconds) + ScheduleCost.SawTime(work.SetUpCostMicrosPerSecond, setUp);
    }

    private long LeastSeconds(int job, int saw, SawWork work) =>
        shop.Jobs[job].MostParts == 1 ? work.Seconds : StepsOn(job, saw).Min(run => run.Milliseconds) * work.Steps / 1000;

    private IReadOnlyList<StepRun> StepsOn(int job, int saw) => shop.Jobs[job].Options.First(option => option.SawId == shop.Saws[saw].SawId).Steps;

    /// <summary>Second before which the saws together are not attended long enough for all jobs, each at its quickest.</summary>
    private long FinishOfAll()
    {
        var quickest = new long[shop.Jobs.Length];
        foreach (var (job, saw, work) in Works())
        {
            var seconds = LeastSeconds(job, saw, work);
            quickest[job] = quickest[job] == 0 ? seconds : Math.Min(quickest[job], seconds);
        }
        var needed = quickest.Aggregate((Int128)0, (sum, seconds) => sum + seconds);
        var windows = shop.Clocks.SelectMany(clock => clock.Widest.Concat(clock.Saw.Unattended?.Windows ?? [])).ToList();
        var (low, high) = (0L, windows.Select(window => window.End).DefaultIfEmpty(0).Max());
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            var attended = windows.Aggregate((Int128)0, (sum, window) => sum + Math.Clamp(middle - window.Start, 0, window.Seconds));
            (low, high) = attended >= needed ? (low, middle) : (middle + 1, high);
        }
        return low;
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

    /// <summary>
    /// The state that leaves least to set up, with unknown where nothing can have set the saw up before. Where pairs take different times, another value may
    /// be easier to come from than none.
    /// </summary>
    private SetUpState EasiestState(int saw, SawWork work)
    {
        var (times, setUp) = (shop.Saws[saw].SetUpTimes, work.SetUp);
        return new(
            times.SectionChanges is null ? sections[saw].Left(setUp.Section) : setUp.Section,
            times.GradeGroupChanges is null ? gradeGroups[saw].Left(setUp.GradeGroup) : setUp.GradeGroup,
            blades[saw].Left(setUp.BladeId),
            times.AngleChanges is null ? angles[saw].Left(setUp.Angle) : setUp.Angle);
    }

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
