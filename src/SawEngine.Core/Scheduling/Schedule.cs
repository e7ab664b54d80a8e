namespace SawEngine.Core.Scheduling;

/// <summary>Which job runs on which saw, in what order and when.</summary>
public sealed record Schedule
{
    /// <summary>A schedule of no jobs.</summary>
    public static Schedule Nothing { get; } = new() { Jobs = [], Unscheduled = [], CostMicros = 0, BoundMicros = 0, Rule = "none" };

    /// <summary>The jobs, by saw id and sequence.</summary>
    public required IReadOnlyList<ScheduledJob> Jobs { get; init; }

    /// <summary>Jobs left out, by id.</summary>
    public required IReadOnlyList<UnscheduledJob> Unscheduled { get; init; }

    /// <summary>Tardiness of the deliveries, and set-up and work time, at their costs, in millionths of the currency.</summary>
    public required long CostMicros { get; init; }

    /// <summary>No schedule of the same jobs costs less.</summary>
    public required long BoundMicros { get; init; }

    /// <summary>How the bound was found.</summary>
    public ScheduleBoundRule BoundRule { get; init; }

    /// <summary>The rule that made it.</summary>
    public required string Rule { get; init; }
}
