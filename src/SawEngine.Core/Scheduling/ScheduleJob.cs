namespace SawEngine.Core.Scheduling;

/// <summary>Layouts that are cut together on one saw with one set-up.</summary>
public sealed record ScheduleJob
{
    /// <summary>Its id, unique.</summary>
    public required string JobId { get; init; }

    /// <summary>It does not start earlier (seconds since the start of the plan); a set-up may.</summary>
    public long Release { get; init; }

    /// <summary>The saws that it may run on, by id; empty where none can take it.</summary>
    public required IReadOnlyList<JobOption> Options { get; init; }
}
