using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Every assignment and sequence of a few jobs.</summary>
internal static class Exhaustive
{
    /// <summary>Costs of all schedules, each one verified.</summary>
    public static IEnumerable<long> Costs(ScheduleProblem problem)
    {
        foreach (var sequences in Sequences(problem, 0, []))
        {
            if (Schedule(problem, sequences) is not { } schedule)
                continue;
            Assert.Empty(ScheduleVerifier.Verify(problem, schedule));
            yield return schedule.CostMicros;
        }
    }

    private static Schedule? Schedule(ScheduleProblem problem, List<(int Saw, ScheduleJob Job)> sequences)
    {
        var jobs = new List<ScheduledJob>();
        for (var saw = 0; saw < problem.Saws.Count; saw++)
        {
            var placed = PlainClock.Place(problem.Saws[saw], sequences.Where(item => item.Saw == saw).Select(item => item.Job));
            if (placed is null)
                return null;
            jobs.AddRange(placed);
        }
        return new()
        {
            Jobs = jobs,
            Unscheduled = [],
            CostMicros = ScheduleCost.Micros(problem, jobs),
            BoundMicros = 0,
            Rule = "exhaustive",
        };
    }

    // Saws are filled one after the other, so that each arrangement comes once.
    private static IEnumerable<List<(int Saw, ScheduleJob Job)>> Sequences(ScheduleProblem problem, int saw, List<(int Saw, ScheduleJob Job)> placed)
    {
        if (placed.Count == problem.Jobs.Count)
            yield return placed;
        foreach (var job in problem.Jobs.Where(job => placed.TrueForAll(item => item.Job != job)))
            for (var next = saw; next < problem.Saws.Count; next++)
                if (job.Options.Any(option => option.SawId == problem.Saws[next].SawId))
                    foreach (var all in Sequences(problem, next, [.. placed, (next, job)]))
                        yield return all;
    }
}
