using SawEngine.Benchmarks.Quality;
using SawEngine.Benchmarks.Quality.Generators;

namespace SawEngine.Benchmarks.Peers;

/// <summary>The engine beside general methods on shop orders, one after the other in one run. Gaps are over the engine's best bound.</summary>
internal static class PeerComparison
{
    private const string Usage = "peers nesting [--seconds N] [--seeds N] [--lengths N...]";

    /// <summary>Runs all sizes, or those of the numbers of lengths that are given; 1 where a nest is wrong or costs less than the engine's bound.</summary>
    public static async Task<int> Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--seconds", "--seeds", "--lengths");
            var wanted = options.All("--lengths");
            var sizes = ShopOrders.Sizes.Where(size => wanted.Count == 0 || wanted.Contains($"{size.Lengths}")).ToList();
            var faults = 0;
            foreach (var size in sizes)
                faults += await Run(size, options.Number("--seconds", 10), (int)options.Number("--seeds", 3));
            return faults > 0 ? 1 : 0;
        }
        catch (FormatException problem)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static async Task<int> Run((int Lengths, int Pieces, int Remnants) size, double seconds, int seeds)
    {
        Report.Say($"shop order: {size.Lengths} lengths, {size.Pieces} pieces, {size.Remnants} remnants; {seeds} seeds, general solvers {seconds} s each; ratios to {NestingPeers.Reference.Name}");
        Report.Say($"{"",-20}{"solved",8}{"mean gap %",12}{"mean s",10}{"gap ratio",11}{"time ratio",12}");
        var problems = Enumerable.Range(1, seeds).Select(seed => ShopOrders.Of(size, LengthGrid.TenthMillimeter, seed)).ToList();
        var rows = new List<(Peer Peer, List<PeerAnswer> Answers)>();
        foreach (var peer in NestingPeers.All)
        {
            var answers = new List<PeerAnswer>();
            foreach (var problem in problems)
                answers.Add(await PeerProcess.Ask(peer, problem, seconds));
            rows.Add((peer, answers));
        }
        var bounds = problems.Select((_, i) => rows.Where(row => row.Peer.IsEngine).Max(row => row.Answers[i].Nest?.BoundMicros)).ToList();
        var reference = rows.First(row => row.Peer == NestingPeers.Reference).Answers;
        foreach (var (peer, answers) in rows)
            Line(peer, answers, reference, problems, bounds);
        return rows.Sum(row => Faults(row.Peer, row.Answers, problems, bounds));
    }

    private static void Line(Peer peer, List<PeerAnswer> answers, List<PeerAnswer> reference, List<BarProblem> problems, List<long?> bounds)
    {
        var solved = Enumerable.Range(0, answers.Count).Where(i => answers[i].Nest is not null && reference[i].Nest is not null && bounds[i] is not null).ToList();
        var notes = string.Join(", ", answers.Select(answer => answer.Note).OfType<string>().Distinct());
        var seconds = answers.Average(answer => answer.Seconds);
        var timeRatio = seconds / reference.Average(answer => answer.Seconds);
        if (solved.Count == 0)
        {
            Report.Say($"{peer.Name,-20}{solved.Count,8}{"nothing",12}{seconds,10:0.000}{"-",11}{timeRatio,12:0.0}  {notes}");
            return;
        }
        // The ratio is of the same problems, where some are not solved.
        var gap = solved.Average(i => GapPercent(problems[i], answers[i].Nest!, bounds[i]!.Value));
        var referenceGap = solved.Average(i => GapPercent(problems[i], reference[i].Nest!, bounds[i]!.Value));
        var gapRatio = referenceGap > 0 ? FormattableString.Invariant($"{gap / referenceGap:0.0}") : "-";
        Report.Say($"{peer.Name,-20}{solved.Count,8}{gap,12:0.0000}{seconds,10:0.000}{gapRatio,11}{timeRatio,12:0.0}  {notes}");
    }

    private static double GapPercent(BarProblem problem, PeerNest nest, long bound) => 100d * (PeerNestCheck.CostMicros(problem, nest) - bound) / bound;

    private static int Faults(Peer peer, List<PeerAnswer> answers, List<BarProblem> problems, List<long?> bounds)
    {
        var faults = new List<string>();
        for (var i = 0; i < answers.Count; i++)
        {
            if (answers[i].Nest is not { } nest)
                continue;
            faults.AddRange(PeerNestCheck.Faults(problems[i], nest).Select(fault => $"seed {i + 1}: {fault}"));
            if (PeerNestCheck.CostMicros(problems[i], nest) < bounds[i])
                faults.Add($"seed {i + 1}: costs {PeerNestCheck.CostMicros(problems[i], nest)}, which is below the engine's bound {bounds[i]}");
        }
        foreach (var fault in faults)
            Report.Say($"!!! WRONG: {peer.Name} {fault}");
        return faults.Count;
    }
}
