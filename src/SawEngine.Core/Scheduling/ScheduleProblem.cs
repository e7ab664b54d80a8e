namespace SawEngine.Core.Scheduling;

/// <summary>Jobs, saws and promises. Lists are in canonical order, by id, ordinal.</summary>
public sealed record ScheduleProblem
{
    /// <summary>The saws.</summary>
    public required IReadOnlyList<ScheduleSaw> Saws { get; init; }

    /// <summary>The jobs.</summary>
    public required IReadOnlyList<ScheduleJob> Jobs { get; init; }

    /// <summary>What is promised; a job may serve several deliveries.</summary>
    public required IReadOnlyList<Delivery> Deliveries { get; init; }

    /// <summary>Cost of every second until the last job is done, in millionths of the currency, not negative; 0 where only promises and saw time count.</summary>
    public long MakespanCostMicrosPerSecond { get; init; }
}
