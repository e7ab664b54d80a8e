namespace SawEngine.Core.Scheduling;

/// <summary>A strategy that schedules. Every strategy passes the same contract tests: clean by the verifier, deterministic, honors cancellation.</summary>
public interface IScheduler
{
    /// <summary>The best verified schedule that the effort allows. Cancellation returns the best so far.</summary>
    Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation);
}
