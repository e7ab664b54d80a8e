using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Times given sequences as a search times its own, with all overtime that is offered.</summary>
public sealed class SequenceTimer : IScheduleTimer
{
    /// <inheritdoc/>
    public Schedule Time(ScheduleProblem problem, IReadOnlyList<GivenSequence> sequences)
    {
        var jobs = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        var parts = sequences.SelectMany(sequence => sequence.Parts).Select(part => new JobPart(jobs[part.JobId], part.FirstStep, part.Steps));
        var shop = new Shop(problem, parts.OrderBy(part => part.Job.JobId, StringComparer.Ordinal).ThenBy(part => part.FirstStep));
        var index = Enumerable.Range(0, shop.Parts.Length).ToDictionary(part => new GivenPart(shop.Jobs[part].JobId, shop.Parts[part].FirstStep, shop.Parts[part].Steps));
        var plan = new SawPlan(shop);
        for (var saw = 0; saw < shop.Saws.Length; saw++)
        {
            plan.Sequences[saw].AddRange(sequences.Where(sequence => sequence.SawId == shop.Saws[saw].SawId).SelectMany(sequence => sequence.Parts).Select(part => index[part])
                .Where(part => shop.Work[part][saw] is not null));
            for (var window = 0; window < shop.Saws[saw].Overtime.Count; window++)
                plan.WorkOvertime(saw, window, true);
        }
        var timed = Decoding.Record(plan);
        return new()
        {
            Jobs = timed,
            Unscheduled = [.. Unschedulable.Of(plan)],
            CostMicros = ScheduleCost.Micros(problem, timed),
            BoundMicros = 0,
            Rule = "given_sequences",
        };
    }
}
