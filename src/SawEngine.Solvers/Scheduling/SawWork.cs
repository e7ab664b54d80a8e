using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A job on one saw, with the sums that make placing it quick.</summary>
internal sealed record SawWork
{
    public SawWork(JobOption option, SetUpState setUp, int blade, long release)
    {
        Runs = [.. option.Steps];
        SetUp = setUp;
        Blade = blade;
        Release = release;
        MayPause = option.MayPause;
        CostMicrosPerSecond = option.CostMicrosPerSecond;
        Milliseconds = option.WorkMilliseconds;
        BladeShare = Runs.Aggregate((Int128)0, (sum, run) => sum + ((Int128)run.BladeShare * run.Count));
        Steps = Runs.Sum(run => run.Count);
        LongestStep = Runs.Select(run => run.Milliseconds).DefaultIfEmpty(0).Max();
    }

    public StepRun[] Runs { get; init; }

    public SetUpState SetUp { get; }

    /// <summary>Index of its blade on the saw; -1 where any will do.</summary>
    public int Blade { get; init; }

    public long Release { get; init; }

    public bool MayPause { get; }

    public long CostMicrosPerSecond { get; }

    public long Milliseconds { get; }

    public Int128 BladeShare { get; init; }

    public int Steps { get; }

    public long LongestStep { get; }

    /// <summary>Fewest seconds that it keeps a saw.</summary>
    public long Seconds => SawClock.RoundUp(Milliseconds);

    /// <summary>The same work with a blade that lasts.</summary>
    public SawWork WithoutWear() => this with { Runs = [.. Runs.Select(run => run with { BladeShare = 0 })], BladeShare = 0 };
}
