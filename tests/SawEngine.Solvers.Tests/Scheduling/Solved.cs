using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Schedules that the verifier has passed.</summary>
internal static class Solved
{
    public static Schedule By(ScheduleProblem problem, Effort effort, params DispatchRule[] rules)
    {
        var scheduler = rules.Length == 0 ? new DispatchScheduler() : new DispatchScheduler(rules);
        var schedule = scheduler.Solve(problem, effort, CancellationToken.None);
        Assert.Empty(ScheduleVerifier.Verify(problem, schedule));
        return schedule;
    }

    public static Schedule By(ScheduleProblem problem) => By(problem, Effort.Standard);

    public static long Makespan(this Schedule schedule) => schedule.Jobs.Max(job => job.Finish);

    public static long MaxLateness(this Schedule schedule, ScheduleProblem problem) => problem.Deliveries.Max(delivery =>
        schedule.Jobs.Where(job => delivery.JobIds.Contains(job.JobId)).Max(job => job.Finish) - delivery.Due!.Value);

    public static ScheduledJob Job(this Schedule schedule, int number) => schedule.Jobs.Single(job => job.JobId == ProblemOf.Id(number));
}
