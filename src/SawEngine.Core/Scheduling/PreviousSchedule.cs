namespace SawEngine.Core.Scheduling;

/// <summary>An earlier schedule, and what it costs to leave it. It is also where a search starts.</summary>
/// <param name="Places">Its jobs, by id; jobs that are no more are left out.</param>
public sealed record PreviousSchedule(IReadOnlyList<PreviousPlace> Places)
{
    /// <summary>Cost of each hour by which a job's start moves, earlier or later, in millionths of the currency.</summary>
    public long CostMicrosPerHourMoved { get; init; }

    /// <summary>Cost of each job that goes to another saw, in millionths of the currency.</summary>
    public long CostMicrosPerSawChange { get; init; }
}
