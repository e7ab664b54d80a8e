using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// The shop in arrays of whole numbers, each saw on an axis of its attended seconds: what a search looks at millions of times.
/// Exact where each saw has one window, blades last, and each job has one promise of its own; elsewhere near, and the clock decides.
/// Jobs are numbered from 1; 0 is a saw as it stands at the start.
/// </summary>
internal sealed class AxisShop
{
    private const long LongestTime = 1L << 40;
    private const int CostBits = 60;
    private const long LargestCost = 1L << 50;

    private readonly Shop shop;

    private AxisShop(Shop shop, int[] jobs)
    {
        this.shop = shop;
        Index = [-1, .. jobs];
        var saws = shop.Saws.Length;
        Start = new long[saws];
        Seconds = Rows(saws, jobs.Length + 1);
        Release = Rows(saws, jobs.Length + 1);
        Due = Rows(saws, jobs.Length + 1);
        Weight = Rows(saws, jobs.Length + 1);
        WorkCost = Rows(saws, jobs.Length + 1);
        SetUpRate = Rows(saws, jobs.Length + 1);
        Axes = new AttendedAxis[saws];
        SetUp = [.. Enumerable.Range(0, saws).Select(_ => new int[(jobs.Length + 1) * (jobs.Length + 1)])];
    }

    /// <summary>Index in the shop by job.</summary>
    public int[] Index { get; }

    public int Jobs => Index.Length - 1;

    public int Saws => Start.Length;

    /// <summary>Where each saw's axis begins: with its first attended second, or after its frozen jobs.</summary>
    public long[] Start { get; }

    /// <summary>By saw and job; -1 where the job cannot run.</summary>
    public long[][] Seconds { get; }

    /// <summary>By saw and job, on the axis of the saw.</summary>
    public long[][] Release { get; }

    /// <summary>By saw and job, as time passes.</summary>
    public long[][] Due { get; }

    /// <summary>By saw and job: cost of a second late, in the units of the search.</summary>
    public long[][] Weight { get; }

    /// <summary>By saw and job: cost of the work, in the units of the search.</summary>
    public long[][] WorkCost { get; }

    /// <summary>By saw and job: cost of a second of set-up, in the units of the search.</summary>
    public long[][] SetUpRate { get; }

    /// <summary>The axis of each saw.</summary>
    public AttendedAxis[] Axes { get; }

    /// <summary>By saw, then job before times (jobs + 1) plus job: seconds.</summary>
    public int[][] SetUp { get; }

    /// <summary>Whether any set-up takes time.</summary>
    public bool HasSetUps => SetUp.Any(row => row.Any(seconds => seconds > 0));

    /// <summary>Cost of a second until the last job is done, in the units of the search.</summary>
    public long MakespanRate { get; private set; }

    /// <summary>Whether sums here are those of the clock.</summary>
    public bool IsExact { get; private set; } = true;

    /// <summary>The jobs that a plan has scheduled; null where numbers are too large to be summed safely.</summary>
    public static AxisShop? Of(Shop shop, SawPlan plan)
    {
        var jobs = Enumerable.Range(0, shop.Jobs.Length).Where(job => plan.Finish[job] != SawPlan.NotScheduled && !shop.IsFrozen(job)).ToArray();
        var axis = new AxisShop(shop, jobs) { IsExact = !shop.IsCoupled && Array.TrueForAll(shop.Saws, IsPlain) && shop.Problem.Previous is null && !Array.Exists(shop.Jobs, job => job.Frozen is not null) };
        return jobs.Length > 0 && axis.Fill(plan) ? axis : null;
    }

    private static bool IsPlain(ScheduleSaw saw) => saw.Overtime.Count == 0 && saw.Unattended is null;

    private bool Fill(SawPlan plan)
    {
        Int128 longest = 0;
        for (var saw = 0; saw < Saws; saw++)
        {
            Axes[saw] = new(plan.Windows(saw));
            longest = Int128.Max(longest, FillTimes(saw, plan));
        }
        if (!IsExact && longest < LongestTime)
            Stretch(plan);
        return longest < LongestTime && FillCosts((long)longest);
    }

    /// <summary>An upper limit of all finishes.</summary>
    private Int128 FillTimes(int saw, SawPlan plan)
    {
        var axis = Axes[saw];
        var (start, before) = AfterFrozen(saw, plan);
        Start[saw] = Math.Max(axis.Start, axis.Of(start));
        Int128 sum = Start[saw], latest = 0, share = 0;
        for (var job = 1; job <= Jobs; job++)
        {
            Seconds[saw][job] = -1;
            if (shop.Work[Index[job]][saw] is not { } work || axis.IsEmpty)
                continue;
            Seconds[saw][job] = work.Seconds + SecondsOfWornBlades(saw, work);
            Release[saw][job] = axis.Of(work.Release);
            Due[saw][job] = shop.Due[Index[job]] == Shop.NeverDue ? LongestTime : shop.Due[Index[job]];
            latest = Int128.Max(latest, Int128.Max(work.Release, Due[saw][job] == LongestTime ? 0 : Int128.Abs(Due[saw][job])));
            sum += Seconds[saw][job] + FillSetUps(saw, job, work, before);
            share += work.BladeShare;
        }
        IsExact &= axis.IsOneWindow && share <= shop.Saws[saw].RemainingBladeLife;
        return axis.TimeOf((long)Int128.Min(sum, LongestTime)) + latest;
    }

    /// <summary>Makes work longer, on all saws alike, by what the plan loses to what the axes do not know: hands, cranes, walks and blades.</summary>
    private void Stretch(SawPlan plan)
    {
        var place = new int[shop.Jobs.Length];
        for (var job = 1; job <= Jobs; job++)
            place[Index[job]] = job;
        long lost = 0, work = 0;
        for (var saw = 0; saw < Saws; saw++)
        {
            var (before, at) = (0, Start[saw]);
            foreach (var index in plan.Sequences[saw])
            {
                if (place[index] is not (> 0 and var job))
                    continue;
                var finish = Axes[saw].Of(plan.Finish[index]);
                lost += finish - Math.Max(at + SetUp[saw][(before * (Jobs + 1)) + job], Release[saw][job]) - Seconds[saw][job];
                work += Seconds[saw][job];
                (before, at) = (job, finish);
            }
        }
        lost = Math.Clamp(lost, -work / 2, work);
        foreach (var seconds in Seconds)
            for (var job = 1; job <= Jobs; job++)
                if (seconds[job] >= 0)
                    seconds[job] = Math.Max(1, seconds[job] + (long)((Int128)seconds[job] * lost / Math.Max(1, work)));
    }

    private (long Start, SetUpNumbers State) AfterFrozen(int saw, SawPlan plan)
    {
        var (start, state) = (0L, shop.NewState(saw).SetUp);
        foreach (var job in plan.Sequences[saw].Take(plan.FrozenCount(saw)))
            (start, state) = (plan.Finish[job], shop.Work[job][saw]!.SetUpNumbers.After(state));
        return (start, state);
    }

    /// <summary>The share of its blade changes that a job will need in the long run.</summary>
    private long SecondsOfWornBlades(int saw, SawWork work) => (long)(work.BladeShare * shop.Saws[saw].SetUpTimes.Blade / ScheduleSaw.FullBladeLife);

    /// <summary>The longest set-up before a job.</summary>
    private long FillSetUps(int saw, int job, SawWork work, SetUpNumbers first)
    {
        var (table, longest) = (shop.Clocks[saw].SetUps, 0L);
        IsExact &= SetsAll(saw, work.SetUp, shop.Saws[saw].SetUpTimes);
        for (var before = 0; before <= Jobs; before++)
        {
            if (before == job || (before > 0 && shop.Work[Index[before]][saw] is null))
                continue;
            var seconds = table.Seconds(before == 0 ? first : shop.Work[Index[before]][saw]!.SetUpNumbers.After(first), work.SetUpNumbers);
            SetUp[saw][(before * (Jobs + 1)) + job] = (int)Math.Min(seconds, int.MaxValue);
            longest = Math.Max(longest, seconds);
        }
        return longest <= int.MaxValue ? longest : LongestTime;
    }

    /// <summary>Whether the job before alone tells what there is to set up: what takes time is set by all jobs of a saw or by none.</summary>
    private bool SetsAll(int saw, SetUpState setUp, SetUpTimes times)
    {
        var first = shop.Work[Array.Find(Index, job => job >= 0 && shop.Work[job][saw] is not null)][saw]!.SetUp;
        return ((times.GradeGroup == 0 && times.GradeGroupChanges is null) || (first.GradeGroup is null) == (setUp.GradeGroup is null))
            && (times.Blade == 0 || (first.BladeId is null) == (setUp.BladeId is null))
            && ((times.Section == 0 && times.SectionChanges is null) || (first.Section is null) == (setUp.Section is null))
            && ((times.Angle == 0 && times.AngleChanges is null) || (first.Angle is null) == (setUp.Angle is null));
    }

    private bool FillCosts(long longest)
    {
        var weights = Weights();
        if (shop.MakespanCostMicrosPerSecond > LargestCost || Enumerable.Range(1, Jobs).Any(job => weights[job] > LargestCost || LargestRate(job) > LargestCost))
            return false;
        Int128 sum = (Int128)shop.MakespanCostMicrosPerSecond * ScheduleCost.SecondsPerHour * longest * 128 * Saws;
        for (var job = 1; job <= Jobs; job++)
            sum += (weights[job] + (LargestRate(job) * ScheduleCost.SecondsPerHour)) * longest * 2;
        var shift = 0; // smaller units where sums would not fit
        while (sum >> shift >= (Int128)1 << CostBits)
            shift++;
        IsExact &= shift == 0;
        MakespanRate = (long)(((Int128)shop.MakespanCostMicrosPerSecond * ScheduleCost.SecondsPerHour) >> shift);
        for (var saw = 0; saw < Saws; saw++)
        {
            for (var job = 1; job <= Jobs; job++)
            {
                Weight[saw][job] = (long)(weights[job] >> shift);
                if (shop.Work[Index[job]][saw] is not { } work)
                    continue;
                WorkCost[saw][job] = (long)(((Int128)work.CostMicrosPerSecond * ScheduleCost.SecondsPerHour * work.Seconds) >> shift);
                SetUpRate[saw][job] = (long)(((Int128)work.SetUpCostMicrosPerSecond * ScheduleCost.SecondsPerHour) >> shift);
            }
        }
        return true;
    }

    private Int128 LargestRate(int job) => shop.Work[Index[job]].OfType<SawWork>()
        .Select(work => (Int128)Math.Max(work.CostMicrosPerSecond, work.SetUpCostMicrosPerSecond)).Aggregate(Int128.Max);

    /// <summary>Cost of each job's second late; a promise of several jobs is shared by them, which is not exact.</summary>
    private Int128[] Weights()
    {
        var place = new int[shop.Jobs.Length];
        for (var job = 1; job <= Jobs; job++)
            place[Index[job]] = job;
        var weights = new Int128[Jobs + 1];
        var promised = new bool[Jobs + 1];
        foreach (var delivery in shop.Deliveries.Where(delivery => delivery.Due is not null && delivery.CostMicrosPerHourLate > 0))
        {
            var jobs = Array.FindAll(delivery.Jobs, job => place[job] > 0);
            IsExact &= jobs.Length <= 1;
            foreach (var job in jobs)
            {
                IsExact &= !promised[place[job]];
                promised[place[job]] = true;
                weights[place[job]] += delivery.CostMicrosPerHourLate / jobs.Length;
            }
        }
        return weights;
    }

    private static long[][] Rows(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new long[columns])];
}
