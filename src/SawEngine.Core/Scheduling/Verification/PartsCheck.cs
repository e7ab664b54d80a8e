namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether a job, in one part or in several, does each of its steps once.</summary>
internal sealed class PartsCheck(Findings found)
{
    public void Run(IEnumerable<ListedJob> all)
    {
        foreach (var parts in all.GroupBy(listed => listed.Job.JobId, StringComparer.Ordinal).Select(parts => parts.ToList()))
        {
            if (parts.Count > 1 && parts[0].Job.MostParts > 1)
                CheckParts(parts[0].Job, [.. parts.OrderBy(part => part.Scheduled.FirstStep)]);
            else
                parts.ForEach(CheckWhole);
        }
    }

    private void CheckWhole(ListedJob whole)
    {
        if (whole.Scheduled.FirstStep != 0)
            found.Note(ScheduleRule.WorkSteps, whole, $"begins with step {whole.Scheduled.FirstStep} and does none before");
        else if (Steps(whole) < StepsOf(whole.Option))
            found.Note(ScheduleRule.WorkSteps, whole, "does not do all its steps");
    }

    private void CheckParts(ScheduleJob job, List<ListedJob> parts)
    {
        if (parts.Count > job.MostParts)
            found.Note(ScheduleRule.TooManyParts, parts[^1], $"is one of {parts.Count} parts where {job.MostParts} may be");
        var done = 0L;
        foreach (var part in parts)
        {
            if (part.Scheduled.FirstStep != done)
                found.Note(ScheduleRule.PartSteps, part, $"begins with step {part.Scheduled.FirstStep} where step {done} is due");
            done = part.Scheduled.FirstStep + Steps(part);
        }
        if (done != StepsOf(parts[^1].Option))
            found.Note(ScheduleRule.PartSteps, parts[^1], $"ends before step {done}, and the job has {StepsOf(parts[^1].Option)}");
    }

    private static long Steps(ListedJob listed) => listed.Scheduled.Work.Sum(span => (long)span.Steps);

    private static long StepsOf(JobOption option) => option.Steps.Sum(run => (long)run.Count);
}
