using SawEngine.Core.Quantities;
using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling;

/// <summary>How a job runs on one saw.</summary>
public sealed record JobOption
{
    /// <summary>The saw.</summary>
    public required string SawId { get; init; }

    /// <summary>What it has to be set up for.</summary>
    public required SetUpState SetUp { get; init; }

    /// <summary>The steps in order: loading, cut cycles, handling.</summary>
    public required IReadOnlyList<StepRun> Steps { get; init; }

    /// <summary>Whether the saw may stand still over a break between two steps; otherwise the job runs through in one window.</summary>
    public bool MayPause { get; init; } = true;

    /// <summary>Whether it may run where the saw runs by itself.</summary>
    public bool MayRunUnattended { get; init; }

    /// <summary>Cost of a second of work on this saw (machine and labor), in millionths of the currency.</summary>
    public long CostMicrosPerSecond { get; init; }

    /// <summary>Cost of a second of set-up on this saw, in millionths of the currency; that of work where not set.</summary>
    public long SetUpCostMicrosPerSecond { get => setUpCost ?? CostMicrosPerSecond; init => setUpCost = value; }

    private readonly long? setUpCost;

    /// <summary>Sum of all steps in milliseconds.</summary>
    public long WorkMilliseconds
    {
        get
        {
            var sum = 0L;
            foreach (var run in Steps)
                sum += run.Milliseconds * run.Count;
            return sum;
        }
    }

    /// <summary>An hourly cost in millionths of the currency per second, rounded down.</summary>
    public static long MicrosPerSecond(Money perHour) => (long)decimal.Floor(perHour.Amount * 1_000_000m / 3600m);
}
