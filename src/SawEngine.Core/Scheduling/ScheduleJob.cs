namespace SawEngine.Core.Scheduling;

/// <summary>Layouts that are cut together on one saw with one set-up.</summary>
public sealed record ScheduleJob
{
    /// <summary>Its id, unique.</summary>
    public required string JobId { get; init; }

    /// <summary>Its work does not start earlier (seconds since the start of the plan); a set-up may.</summary>
    public long Release { get; init; }

    /// <summary>The saws that it may run on, by id; empty where none can take it.</summary>
    public required IReadOnlyList<JobOption> Options { get; init; }

    /// <summary>Jobs whose work is finished before its own starts.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Where it stays; null where it may go anywhere.</summary>
    public FrozenPlace? Frozen { get; init; }

    /// <summary>Into how many parts its steps may be split, each on a saw of its own or at another time; all its options then have the same number of steps. 1: it stays whole.</summary>
    public int MostParts { get; init; } = 1;
}
