namespace SawEngine.Core.Scheduling;

/// <summary>Replays a schedule against every rule, independently of how it was made.</summary>
public static class ScheduleVerifier
{
    private static readonly string[] Reasons =
    [
        UnscheduledReason.NoSaw, UnscheduledReason.NoShift, UnscheduledReason.StepLongerThanShift,
        UnscheduledReason.CutExceedsBladeLife, UnscheduledReason.PredecessorUnscheduled,
        UnscheduledReason.FrozenSawCannotTakeIt, UnscheduledReason.NoOneToSetUp, UnscheduledReason.NotVerified,
    ];

    /// <summary>The rules that the schedule breaks, in the order in which they are found; none where it is clean.</summary>
    public static IReadOnlyList<Violation> Verify(ScheduleProblem problem, Schedule schedule)
    {
        var found = new List<Violation>();
        CheckJobs(problem, schedule, found);
        CheckOrder(schedule, found);
        var resolved = CheckSaws(problem, schedule, found);
        if (resolved && found.TrueForAll(violation => violation.Code is not (ScheduleRule.UnknownJob or ScheduleRule.JobListedTwice)))
            CheckCost(problem, schedule, found);
        if (schedule.BoundMicros > schedule.CostMicros)
            found.Add(new(ScheduleRule.BoundAboveCost, $"The bound {schedule.BoundMicros} is above the cost {schedule.CostMicros}."));
        return found;
    }

    private static void CheckJobs(ScheduleProblem problem, Schedule schedule, List<Violation> found)
    {
        var known = problem.Jobs.Select(job => job.JobId).ToHashSet(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in schedule.Jobs.Select(job => job.JobId).Concat(schedule.Unscheduled.Select(job => job.JobId)))
        {
            if (!known.Contains(id))
                found.Add(new(ScheduleRule.UnknownJob, $"Job {id} is not in the problem."));
            if (!seen.Add(id))
                found.Add(new(ScheduleRule.JobListedTwice, $"Job {id} is listed more than once."));
        }
        foreach (var job in problem.Jobs.Where(job => !seen.Contains(job.JobId)))
            found.Add(new(ScheduleRule.JobMissing, $"Job {job.JobId} is neither scheduled nor left out."));
        foreach (var job in schedule.Unscheduled.Where(job => !Reasons.Contains(job.Reason, StringComparer.Ordinal)))
            found.Add(new(ScheduleRule.UnknownReason, $"Job {job.JobId} is left out for the unknown reason {job.Reason}."));
    }

    private static void CheckOrder(Schedule schedule, List<Violation> found)
    {
        for (var i = 1; i < schedule.Jobs.Count; i++)
        {
            var (before, after) = (schedule.Jobs[i - 1], schedule.Jobs[i]);
            var bySaw = string.CompareOrdinal(before.SawId, after.SawId);
            if (bySaw > 0 || (bySaw == 0 && before.Sequence > after.Sequence))
                found.Add(new(ScheduleRule.ListOutOfOrder, $"Job {after.JobId} is listed after job {before.JobId}."));
        }
        for (var i = 1; i < schedule.Unscheduled.Count; i++)
            if (string.CompareOrdinal(schedule.Unscheduled[i - 1].JobId, schedule.Unscheduled[i].JobId) > 0)
                found.Add(new(ScheduleRule.ListOutOfOrder, $"Job {schedule.Unscheduled[i].JobId}, left out, is not listed by id."));
    }

    /// <summary>Whether every job could be replayed.</summary>
    private static bool CheckSaws(ScheduleProblem problem, Schedule schedule, List<Violation> found)
    {
        var resolved = true;
        foreach (var group in schedule.Jobs.GroupBy(job => job.SawId, StringComparer.Ordinal))
        {
            var saw = problem.Saws.FirstOrDefault(saw => string.Equals(saw.SawId, group.Key, StringComparison.Ordinal));
            if (saw is null)
            {
                found.Add(new(ScheduleRule.UnknownSaw, $"Saw {group.Key} is not in the problem."));
                resolved = false;
                continue;
            }
            var replay = new SawReplay(saw, found);
            foreach (var scheduled in group.OrderBy(job => job.Sequence))
            {
                var job = problem.Jobs.FirstOrDefault(job => string.Equals(job.JobId, scheduled.JobId, StringComparison.Ordinal));
                var option = job?.Options.FirstOrDefault(option => string.Equals(option.SawId, saw.SawId, StringComparison.Ordinal));
                if (job is not null && option is null)
                    found.Add(new(ScheduleRule.SawNotEligible, $"Job {scheduled.JobId} may not run on saw {saw.SawId}."));
                if (job is null || option is null || !replay.Run(job, option, scheduled))
                    resolved = false;
            }
        }
        return resolved;
    }

    private static void CheckCost(ScheduleProblem problem, Schedule schedule, List<Violation> found)
    {
        var cost = ScheduleCost.Micros(problem, schedule.Jobs);
        if (cost != schedule.CostMicros)
            found.Add(new(ScheduleRule.CostWrong, $"The schedule costs {cost}, not {schedule.CostMicros}."));
    }
}
