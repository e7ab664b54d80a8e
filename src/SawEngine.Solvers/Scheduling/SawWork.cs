using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A job, or a part of it, on one saw, with the sums that make placing it quick.</summary>
internal sealed record SawWork
{
    public SawWork(JobOption option, IReadOnlyList<StepRun> runs, SetUpNumbers setUp, int blade, long release)
    {
        Runs = [.. runs];
        SetUp = option.SetUp;
        SetUpNumbers = setUp;
        Blade = blade;
        Release = release;
        MayPause = option.MayPause;
        MayRunUnattended = option.MayRunUnattended && option.MayPause;
        CostMicrosPerSecond = option.CostMicrosPerSecond;
        SetUpCostMicrosPerSecond = option.SetUpCostMicrosPerSecond;
        Milliseconds = Runs.Sum(run => run.Milliseconds * run.Count);
        BladeShare = Runs.Aggregate((Int128)0, (sum, run) => sum + ((Int128)run.BladeShare * run.Count));
        Steps = Runs.Sum(run => run.Count);
        LongestStep = Runs.Select(run => run.Milliseconds).DefaultIfEmpty(0).Max();
        HasCraneLoads = Runs.Any(run => run.Kind == StepKind.CraneLoad);
    }

    public StepRun[] Runs { get; init; }

    public SetUpState SetUp { get; }

    public SetUpNumbers SetUpNumbers { get; }

    /// <summary>Index of its blade on the saw; -1 where any will do.</summary>
    public int Blade { get; init; }

    public long Release { get; init; }

    /// <summary>Whether it runs at the start of the plan, so that the saw is set up for it.</summary>
    public bool IsRunning { get; init; }

    public bool MayPause { get; }

    public bool MayRunUnattended { get; }

    public bool HasCraneLoads { get; init; }

    public long CostMicrosPerSecond { get; }

    public long SetUpCostMicrosPerSecond { get; }

    public long Milliseconds { get; init; }

    public Int128 BladeShare { get; init; }

    public int Steps { get; init; }

    public long LongestStep { get; init; }

    /// <summary>Fewest seconds that it keeps a saw.</summary>
    public long Seconds => SawClock.RoundUp(Milliseconds);

    /// <summary>Other work with the same set-up: a number of equal steps.</summary>
    public SawWork WithSteps(long milliseconds, int count) => this with
    {
        Runs = [new(milliseconds, count)],
        Milliseconds = milliseconds * count,
        Steps = count,
        LongestStep = milliseconds,
        BladeShare = 0,
        HasCraneLoads = false,
    };

    /// <summary>The same work with a blade that lasts and no crane to wait for.</summary>
    public SawWork Unhindered() => this with
    {
        Runs = [.. Runs.Select(run => run with { BladeShare = 0, Kind = run.Kind == StepKind.CraneLoad ? StepKind.Load : run.Kind })],
        BladeShare = 0,
        HasCraneLoads = false,
    };
}
