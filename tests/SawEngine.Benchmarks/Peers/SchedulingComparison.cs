using System.Diagnostics;
using SawEngine.Benchmarks.Quality;
using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Benchmarks.Peers;

/// <summary>The engine beside dispatching rules and a plain CP-SAT model of the whole on days of the invented shop, one after the other in one run. All are timed and costed by the engine and checked by its verifier.</summary>
internal static class SchedulingComparison
{
    private const string Usage = "peers scheduling [--seconds N] [--seeds N] [--jobs N...]";
    private const string Reference = "engine-standard";

    /// <summary>Runs all sizes, or those of the numbers of jobs that are given; 1 where a schedule breaks a rule.</summary>
    public static int Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--seconds", "--seeds", "--jobs");
            var wanted = options.All("--jobs");
            return ShopDays.Sizes.Where(size => wanted.Count == 0 || wanted.Contains($"{size.Jobs}"))
                .Sum(size => Run(size, options.Number("--seconds", 30), (int)options.Number("--seeds", 5))) > 0 ? 1 : 0;
        }
        catch (FormatException problem)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static int Run((int Jobs, int Saws) size, double seconds, int seeds)
    {
        Report.Say($"shop day: {size.Jobs} jobs, {size.Saws} saws; {seeds} seeds, CP-SAT {seconds} s; costs against {Reference}");
        Report.Say($"{"",-38}{"solved",8}{"mean cost",12}{"left out",10}{"cost ratio",12}{"mean s",10}");
        var problems = Enumerable.Range(1, seeds).Select(seed => ShopDays.Of(size, seed)).ToList();
        var rows = Peers(seconds).Select(peer => (peer.Name, Answers: problems.ConvertAll(problem => Timed(peer.Solve, problem)))).ToList();
        var reference = rows.Single(row => row.Name == Reference).Answers;
        foreach (var (name, answers) in rows)
            Line(name, answers, reference);
        return rows.Sum(row => Faults(row.Name, row.Answers, problems));
    }

    private static IEnumerable<(string Name, Func<ScheduleProblem, Schedule?> Solve)> Peers(double seconds)
    {
        foreach (var rule in Enum.GetValues<DispatchRule>())
            yield return ($"rule {rule}", problem => new DispatchScheduler(rule).Solve(problem, Effort.Quick, CancellationToken.None));
        yield return ("best of the rules", BestOfRules);
        yield return ("cp-sat-whole", problem => OfSequences(problem, SequencingModel.Solve(problem, seconds)));
        foreach (var effort in (Effort[])[Effort.Quick, Effort.Standard, Effort.Thorough])
            yield return ($"engine-{effort.ToString().ToLowerInvariant()}", problem => new DispatchScheduler().Solve(problem, effort, CancellationToken.None));
    }

    private static Schedule? BestOfRules(ScheduleProblem problem) =>
        Enum.GetValues<DispatchRule>().Select(rule => new DispatchScheduler(rule).Solve(problem, Effort.Quick, CancellationToken.None)).MinBy(schedule => (schedule.Unscheduled.Count, schedule.CostMicros));

    private static Schedule? OfSequences(ScheduleProblem problem, IReadOnlyDictionary<string, IReadOnlyList<string>>? sequences)
    {
        // The plain model knows no overtime.
        var withoutOvertime = problem with { Saws = [.. problem.Saws.Select(saw => saw with { Overtime = [] })] };
        return sequences is null ? null : new SequenceTimer().Time(withoutOvertime, [.. sequences.Select(saw => new GivenSequence(saw.Key, [.. saw.Value.Select(job => new GivenPart(job))]))]);
    }

    private static (Schedule? Schedule, double Seconds) Timed(Func<ScheduleProblem, Schedule?> solve, ScheduleProblem problem)
    {
        var watch = Stopwatch.StartNew();
        var schedule = solve(problem);
        return (schedule, watch.Elapsed.TotalSeconds);
    }

    private static void Line(string name, List<(Schedule? Schedule, double Seconds)> answers, List<(Schedule? Schedule, double Seconds)> reference)
    {
        var solved = Enumerable.Range(0, answers.Count).Where(i => answers[i].Schedule is not null).ToList();
        if (solved.Count == 0)
        {
            Report.Say($"{name,-38}{0,8}{"nothing",12}{"",10}{"",12}{answers.Average(answer => answer.Seconds),10:0.00}");
            return;
        }
        var cost = solved.Average(i => (double)answers[i].Schedule!.CostMicros);
        // The ratio is of the same problems, where some are not solved.
        var ratio = cost / solved.Average(i => (double)reference[i].Schedule!.CostMicros);
        Report.Say($"{name,-38}{solved.Count,8}{cost / 1e6,12:0.00}{solved.Sum(i => answers[i].Schedule!.Unscheduled.Count),10}{ratio,12:0.0000}{answers.Average(answer => answer.Seconds),10:0.00}");
    }

    private static int Faults(string name, List<(Schedule? Schedule, double Seconds)> answers, List<ScheduleProblem> problems)
    {
        var faults = Enumerable.Range(0, answers.Count).Where(i => answers[i].Schedule is not null)
            .SelectMany(i => ScheduleVerifier.Verify(problems[i], answers[i].Schedule!).Select(violation => $"seed {i + 1}: {violation.Code} {violation.Detail}")).ToList();
        foreach (var fault in faults.Take(5))
            Report.Say($"!!! WRONG: {name} {fault}");
        return faults.Count;
    }
}
