using System.Diagnostics;
using SawEngine.Benchmarks.Quality;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Benchmarks.Properties;

/// <summary>How long searches go on after they are canceled, and how much memory they take.</summary>
internal static class CancellationMeasure
{
    private static readonly double[] SecondsBefore = [0, 0.1, 0.4, 0.8, 1.5, 3, 6, 12, 25];

    /// <summary>Cancels the search of each problem after some times, at the largest effort; gives back how many nests break a rule.</summary>
    public static int Run(IEnumerable<string> names)
    {
        var asked = names.ToHashSet(StringComparer.Ordinal);
        var nester = EngineNester.Create();
        WarmUp.Run(nester, Effort.Thorough);
        Report.Say($"seconds by the clock and of the processor from cancel to answer, after the seconds in the heading; peak working set so far");
        Report.Say($"{"problem",-26}{string.Concat(SecondsBefore.Select(seconds => FormattableString.Invariant($"{seconds,12:0.##}")))}{"peak MB",10}");
        return LargestProblems.All.Where(problem => asked.Count == 0 || asked.Contains(problem.Name)).Sum(problem => Measure(nester, problem.Name, problem.Make()));
    }

    private static int Measure(INester nester, string name, NestProblem problem)
    {
        var faults = 0;
        var cells = new List<string>();
        foreach (var before in SecondsBefore)
        {
            using var source = new CancellationTokenSource();
            var (canceledAt, workAt) = (0L, TimeSpan.Zero);
            source.Token.Register(() => (canceledAt, workAt) = (Stopwatch.GetTimestamp(), Work()));
            if (before == 0)
                source.Cancel();
            else
                source.CancelAfter(TimeSpan.FromSeconds(before));
            var nest = nester.Solve(problem, Effort.Thorough, source.Token);
            cells.Add(source.IsCancellationRequested ? FormattableString.Invariant($"{Stopwatch.GetElapsedTime(canceledAt).TotalSeconds,7:0.00}/{(Work() - workAt).TotalSeconds,4:0.00}") : $"{"done",12}");
            foreach (var violation in NestVerifier.Verify(problem, nest).Take(3))
            {
                Report.Say($"!!! WRONG: {name}, canceled after {before} s: {violation.Code}: {violation.Detail}");
                faults++;
            }
        }
        using var process = Process.GetCurrentProcess();
        Report.Say($"{name,-26}{string.Concat(cells)}{process.PeakWorkingSet64 / 1e6,10:0}");
        return faults;
    }

    /// <summary>Time that the processor has worked for this process: the clock counts the work of others too.</summary>
    private static TimeSpan Work()
    {
        using var process = Process.GetCurrentProcess();
        return process.TotalProcessorTime;
    }
}
