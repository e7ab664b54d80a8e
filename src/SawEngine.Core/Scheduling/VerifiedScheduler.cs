namespace SawEngine.Core.Scheduling;

/// <summary>Holds every schedule against the independent verifier and withholds one that breaks a rule.</summary>
public sealed class VerifiedScheduler(IScheduler scheduler) : IScheduler
{
    /// <inheritdoc/>
    public Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation)
    {
        var schedule = scheduler.Solve(problem, effort, cancellation);
        return ScheduleVerifier.Verify(problem, schedule).Count == 0
            ? schedule
            : Schedule.Nothing with { Unscheduled = problem.Jobs.Select(job => new UnscheduledJob(job.JobId, UnscheduledReason.NotVerified)).ToList() };
    }
}
