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

    /// <summary>Who attends the saws; a saw that none of them attends is attended whenever its calendar says so.</summary>
    public IReadOnlyList<ScheduleOperator> Operators { get; init; } = [];

    /// <summary>What loads heavy bars; a saw that none of them reaches needs none.</summary>
    public IReadOnlyList<ScheduleCrane> Cranes { get; init; } = [];

    /// <summary>Seconds that an operator walks from one saw to another between two things that need hands, not negative.</summary>
    public long WalkingSeconds { get; init; }

    /// <summary>An earlier schedule that this one should not leave needlessly; null where there is none.</summary>
    public PreviousSchedule? Previous { get; init; }

    /// <summary>Cost of every second until the last job is done, in millionths of the currency, not negative; 0 where only promises and saw time count.</summary>
    public long MakespanCostMicrosPerSecond { get; init; }
}
