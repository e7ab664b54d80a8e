using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Times given sequences by the saws' clocks, each saw by itself.</summary>
public sealed class SequenceTimer : IScheduleTimer
{
    /// <inheritdoc/>
    public Schedule Time(ScheduleProblem problem, IReadOnlyList<GivenSequence> sequences)
    {
        var shop = new Shop(problem);
        var jobs = new List<ScheduledJob>();
        var left = new SortedDictionary<string, UnscheduledJob>(StringComparer.Ordinal);
        foreach (var sequence in sequences.OrderBy(sequence => sequence.SawId, StringComparer.Ordinal))
            Time(shop, sequence, jobs, left);
        return new()
        {
            Jobs = jobs,
            Unscheduled = [.. left.Values],
            CostMicros = ScheduleCost.Micros(problem, jobs),
            BoundMicros = 0,
            Rule = "given_sequences",
        };
    }

    private static void Time(Shop shop, GivenSequence sequence, List<ScheduledJob> jobs, SortedDictionary<string, UnscheduledJob> left)
    {
        var saw = Array.FindIndex(shop.Saws, saw => string.Equals(saw.SawId, sequence.SawId, StringComparison.Ordinal));
        var (state, trial, number) = (shop.NewState(saw), shop.NewState(saw), 0);
        foreach (var part in sequence.Parts)
        {
            var job = Array.FindIndex(shop.Jobs, job => string.Equals(job.JobId, part.JobId, StringComparison.Ordinal));
            var record = new PlacedJob();
            trial.CopyFrom(state);
            if (shop.Work[job][saw] is not { } work || shop.Clocks[saw].Place(trial, PartOf(shop, job, saw, work, part), record) == SawClock.NoRoom)
            {
                left.TryAdd(part.JobId, new(part.JobId, Unschedulable.Reason(shop, job)));
                continue;
            }
            (state, trial) = (trial, state);
            jobs.Add(new() { JobId = part.JobId, SawId = sequence.SawId, Sequence = ++number, FirstStep = part.FirstStep, SetUps = record.SetUps, Work = record.Work });
        }
    }

    private static SawWork PartOf(Shop shop, int job, int saw, SawWork work, GivenPart part)
    {
        if (part.FirstStep == 0 && part.Steps is null)
            return work;
        var option = shop.Jobs[job].Options.First(option => string.Equals(option.SawId, shop.Saws[saw].SawId, StringComparison.Ordinal));
        return new(option with { Steps = [.. StepsOf(option.Steps, part)] }, work.SetUp, work.Blade, work.Release);
    }

    private static IEnumerable<StepRun> StepsOf(IReadOnlyList<StepRun> runs, GivenPart part)
    {
        var (from, to, at) = ((long)part.FirstStep, part.Steps is { } steps ? (long)part.FirstStep + steps : long.MaxValue, 0L);
        foreach (var run in runs)
        {
            var count = Math.Min(to, at + run.Count) - Math.Max(from, at);
            if (count > 0)
                yield return run with { Count = (int)count };
            at += run.Count;
        }
    }
}
