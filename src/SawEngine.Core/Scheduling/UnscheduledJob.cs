namespace SawEngine.Core.Scheduling;

/// <summary>A job that is not in the schedule, and why.</summary>
/// <param name="JobId">The job.</param>
/// <param name="Reason">A code of the published list (see <see cref="UnscheduledReason"/>).</param>
public sealed record UnscheduledJob(string JobId, string Reason);
