using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>What is placed as one: a job, or some of the steps of one that is split.</summary>
/// <param name="Job">The job.</param>
/// <param name="FirstStep">Its first step here, from 0.</param>
/// <param name="Steps">How many; null for all that follow.</param>
internal sealed record JobPart(ScheduleJob Job, int FirstStep, int? Steps)
{
    /// <summary>A job in equal parts, the first ones longer where steps do not divide; in fewer where it has fewer steps.</summary>
    public static IEnumerable<JobPart> Of(ScheduleJob job, int parts)
    {
        var steps = job.Options.Count == 0 ? 0 : job.Options[0].Steps.Sum(run => run.Count);
        parts = Math.Min(parts, Math.Max(1, steps));
        if (parts == 1)
            return [new(job, 0, null)];
        return Enumerable.Range(0, parts).Select(part =>
        {
            var first = (part * (steps / parts)) + Math.Min(part, steps % parts);
            return new JobPart(job, first, (steps / parts) + (part < steps % parts ? 1 : 0));
        });
    }

    /// <summary>Its steps on a saw.</summary>
    public IReadOnlyList<StepRun> Runs(JobOption option)
    {
        if (FirstStep == 0 && Steps is null)
            return option.Steps;
        var (runs, skip, left) = (new List<StepRun>(), FirstStep, Steps ?? int.MaxValue);
        foreach (var run in option.Steps)
        {
            var count = Math.Min(left, Math.Max(0, run.Count - skip));
            skip = Math.Max(0, skip - run.Count);
            left -= count;
            if (count > 0)
                runs.Add(run with { Count = count });
        }
        return runs;
    }
}
