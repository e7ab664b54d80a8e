using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Unlike saws, release dates and set-ups by pair of jobs, without calendars: problems in the words of the textbooks.</summary>
internal static class MachineProblems
{
    /// <summary>Jobs that each are a section of their own, so that times of section changes are set-ups by pair.</summary>
    /// <param name="p">By job and saw; null where the saw cannot take the job.</param>
    /// <param name="setUp">By job before and job.</param>
    /// <param name="first">Before the first job; none where null.</param>
    /// <param name="release">By job.</param>
    public static (ScheduleSaw[] Saws, ScheduleJob[] Jobs) Of(long?[][] p, long[][] setUp, long[]? first = null, long[]? release = null)
    {
        var pairs = new List<SetUpChange>();
        for (var job = 0; job < p.Length; job++)
        {
            pairs.Add(new(null, ProblemOf.Id(job + 1), first?[job] ?? 0));
            for (var before = 0; before < p.Length; before++)
                if (before != job)
                    pairs.Add(new(ProblemOf.Id(before + 1), ProblemOf.Id(job + 1), setUp[before][job]));
        }
        var times = new SetUpTimes(0, 0, 0) { SectionChanges = new(pairs) };
        return (
            [.. Enumerable.Range(0, p[0].Length).Select(saw => ProblemOf.Saw(ProblemOf.SawId(saw)) with { SetUpTimes = times })],
            [.. p.Select((row, job) => ProblemOf.Job(job + 1, row, release?[job] ?? 0, new(ProblemOf.Id(job + 1), null, null)))]);
    }

    /// <summary>The same problems in every run; every third one minds the makespan, the others weighted tardiness.</summary>
    public static IEnumerable<ScheduleProblem> Take(int count, int jobs, int saws)
    {
        var random = new Random(20_261_126);
        for (var i = 0; i < count; i++)
        {
            var p = Rows(jobs, _ => Enumerable.Range(0, saws).Select(_ => random.Next(5) == 0 ? null : (long?)random.Next(5, 60)).ToArray());
            foreach (var row in p.Where(row => row.All(seconds => seconds is null)))
                row[random.Next(saws)] = random.Next(5, 60);
            var setUp = Rows(jobs, _ => Enumerable.Range(0, jobs).Select(_ => (long)random.Next(0, 30)).ToArray());
            var (machines, work) = Of(p, setUp, Row(0, 20), i % 2 == 0 ? Row(0, 80) : null);
            yield return i % 3 == 0
                ? ProblemOf.Makespan(machines, work) with { MakespanCostMicrosPerSecond = 7 }
                : ProblemOf.WithTardiness(machines, work, Row(20, 40 * jobs / saws), Row(0, 10));
        }

        long[] Row(int least, int most) => [.. Enumerable.Range(0, jobs).Select(_ => (long)random.Next(least, most))];
    }

    private static T[] Rows<T>(int count, Func<int, T> row) => [.. Enumerable.Range(0, count).Select(row)];
}
