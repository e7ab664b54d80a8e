namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether work starts only once the jobs are done that it follows. What is frozen waits for none.</summary>
internal sealed class PrecedenceCheck(Findings found)
{
    public void Run(IReadOnlyList<ListedJob> all, IReadOnlyList<ScheduledJob> scheduled)
    {
        var present = scheduled.Select(job => job.JobId).ToHashSet(StringComparer.Ordinal);
        var finishes = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var listed in all)
            finishes[listed.Job.JobId] = Math.Max(listed.Finish, finishes.GetValueOrDefault(listed.Job.JobId, long.MinValue));
        foreach (var listed in all.Where(listed => listed.Job.Frozen is null))
            foreach (var before in listed.Job.After)
            {
                if (!present.Contains(before))
                    found.Note(ScheduleRule.PredecessorLeftOut, listed, $"follows job {before}, which is not scheduled");
                else if (finishes.TryGetValue(before, out var finish) && listed.Start < finish)
                    found.Note(ScheduleRule.WorkBeforePredecessor, listed, $"starts at {listed.Start}, before job {before} is done at {finish}");
            }
    }
}
