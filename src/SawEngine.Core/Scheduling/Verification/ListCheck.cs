namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether every job is listed, as often as it may be and in order, and those left out are so for a reason.</summary>
internal sealed class ListCheck(ScheduleProblem problem, Schedule schedule, ProblemIndex index, Findings found)
{
    private readonly Dictionary<string, int> scheduled = new(StringComparer.Ordinal);
    private readonly HashSet<string> leftOut = new(StringComparer.Ordinal);

    /// <summary>Answers whether every job is known and listed no more often than it may be.</summary>
    public bool Run()
    {
        var isSound = true;
        foreach (var job in schedule.Jobs)
            isSound &= CheckScheduled(job);
        foreach (var job in schedule.Unscheduled)
            isSound &= CheckLeftOut(job);
        foreach (var job in problem.Jobs.Where(job => !scheduled.ContainsKey(job.JobId) && !leftOut.Contains(job.JobId)))
            found.Note(ScheduleRule.JobMissing, job.JobId, $"Job {job.JobId} is neither scheduled nor left out.");
        foreach (var job in schedule.Unscheduled)
            CheckReason(job);
        CheckOrder();
        CheckSequences();
        return isSound;
    }

    private bool CheckScheduled(ScheduledJob listed)
    {
        var parts = scheduled[listed.JobId] = scheduled.GetValueOrDefault(listed.JobId) + 1;
        return IsKnown(listed.JobId) & IsOnce(listed.JobId, parts == 1 || index.Job(listed.JobId)?.MostParts > 1);
    }

    private bool CheckLeftOut(UnscheduledJob listed) =>
        IsKnown(listed.JobId) & IsOnce(listed.JobId, leftOut.Add(listed.JobId) && !scheduled.ContainsKey(listed.JobId));

    private bool IsKnown(string jobId)
    {
        if (index.Job(jobId) is not null)
            return true;
        found.Note(ScheduleRule.UnknownJob, jobId, $"Job {jobId} is not in the problem.");
        return false;
    }

    private bool IsOnce(string jobId, bool isOnce)
    {
        if (!isOnce)
            found.Note(ScheduleRule.JobListedTwice, jobId, $"Job {jobId} is listed more than once.");
        return isOnce;
    }

    private void CheckReason(UnscheduledJob listed)
    {
        if (index.Job(listed.JobId) is not { } job)
            return;
        if (IsTrue(listed.Reason, job) is not { } isTrue)
            found.Note(ScheduleRule.UnknownReason, listed.JobId, $"Job {listed.JobId} is left out for the unknown reason {listed.Reason}.");
        else if (!isTrue)
            found.Note(ScheduleRule.ReasonWrong, listed.JobId, $"Job {listed.JobId} is left out for the reason {listed.Reason}, which is not so.");
    }

    /// <summary>Whether a reason holds, as far as that is seen without a schedule of one's own; null where it is not on the list.</summary>
    private bool? IsTrue(string reason, ScheduleJob job) => reason switch
    {
        UnscheduledReason.NoSaw => !job.Options.Any(option => index.Saw(option.SawId) is not null),
        UnscheduledReason.PredecessorUnscheduled => job.Frozen is null && job.After.Any(id => !scheduled.ContainsKey(id)),
        UnscheduledReason.FrozenSawCannotTakeIt => job.Frozen is not null,
        UnscheduledReason.CutExceedsBladeLife => job.Options.Any(option => option.Steps.Any(run => run.BladeShare > ScheduleSaw.FullBladeLife)),
        UnscheduledReason.NoOneToSetUp => problem.Operators.Count + problem.Cranes.Count > 0,
        UnscheduledReason.NoShift or UnscheduledReason.StepLongerThanShift or UnscheduledReason.NotVerified => true,
        _ => null,
    };

    private void CheckOrder()
    {
        for (var i = 1; i < schedule.Jobs.Count; i++)
        {
            var (before, after) = (schedule.Jobs[i - 1], schedule.Jobs[i]);
            var bySaw = string.CompareOrdinal(before.SawId, after.SawId);
            if (bySaw > 0 || (bySaw == 0 && before.Sequence > after.Sequence))
                found.Note(ScheduleRule.ListOutOfOrder, i, after, $"is listed after job {before.JobId}");
        }
        for (var i = 1; i < schedule.Unscheduled.Count; i++)
            if (string.CompareOrdinal(schedule.Unscheduled[i - 1].JobId, schedule.Unscheduled[i].JobId) > 0)
                found.Note(ScheduleRule.ListOutOfOrder, schedule.Unscheduled[i].JobId, $"Job {schedule.Unscheduled[i].JobId}, left out, is not listed by id.");
    }

    private void CheckSequences()
    {
        foreach (var saw in schedule.Jobs.Index().GroupBy(job => job.Item.SawId, StringComparer.Ordinal))
        {
            var due = 0;
            foreach (var (index, job) in saw.OrderBy(job => job.Item.Sequence))
                if (job.Sequence != ++due)
                    found.Note(ScheduleRule.SequenceBroken, index, job, $"has sequence {job.Sequence} where {due} is due");
        }
    }
}
