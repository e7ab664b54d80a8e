using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Problems and schedules, written shortly and changed in one place.</summary>
internal static class Edit
{
    public static ScheduledJob Placed(string jobId, string sawId, int sequence, IReadOnlyList<ScheduledSetUp> setUps, params WorkSpan[] work) =>
        new() { JobId = jobId, SawId = sawId, Sequence = sequence, SetUps = setUps, Work = work };

    public static Schedule Of(long cost, params ScheduledJob[] jobs) =>
        new() { Jobs = jobs, Unscheduled = [], CostMicros = cost, BoundMicros = 0, Rule = "by hand" };

    public static Schedule Change(this Schedule schedule, string jobId, Func<ScheduledJob, ScheduledJob> change) =>
        schedule with { Jobs = [.. schedule.Jobs.Select(job => job.JobId == jobId ? change(job) : job)] };

    public static Schedule Works(this Schedule schedule, string jobId, params WorkSpan[] work) => schedule.Change(jobId, job => job with { Work = work });

    public static Schedule SetsUp(this Schedule schedule, string jobId, params ScheduledSetUp[] parts) => schedule.Change(jobId, job => job with { SetUps = parts });

    public static ScheduleProblem Job(this ScheduleProblem problem, string jobId, Func<ScheduleJob, ScheduleJob> change) =>
        problem with { Jobs = [.. problem.Jobs.Select(job => job.JobId == jobId ? change(job) : job)] };

    public static ScheduleProblem Option(this ScheduleProblem problem, string jobId, Func<JobOption, JobOption> change) =>
        problem.Job(jobId, job => job with { Options = [.. job.Options.Select(change)] });

    public static ScheduleProblem Saw(this ScheduleProblem problem, string sawId, Func<ScheduleSaw, ScheduleSaw> change) =>
        problem with { Saws = [.. problem.Saws.Select(saw => saw.SawId == sawId ? change(saw) : saw)] };
}
