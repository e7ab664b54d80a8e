using System.Text.Json;
using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Benchmarks.Quality;

/// <summary>Solution quality of nesting over whole sets: one line a set, one instance after the other on one thread.</summary>
internal static class NestingQuality
{
    private const string Usage = "quality nesting --set FILE... [--generated NAME...] [--seeds N] [--effort quick|standard|thorough] [--limit SECONDS] [--gains yes|no] [--each]";

    /// <summary>Runs the sets; 1 where a nest breaks a rule or contradicts a known answer, 2 where the command makes no sense.</summary>
    public static int Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--set", "--generated", "--seeds", "--effort", "--limit", "--gains", "--each");
            var effort = Enum.Parse<Effort>(options.Text("--effort", "standard"), ignoreCase: true);
            double? limit = options.All("--limit").Count > 0 ? options.Number("--limit", 0) : null;
            var seeds = (int)options.Number("--seeds", 20);
            List<NestingSet> sets = [.. options.All("--set").Select(SetFile.Read), .. options.All("--generated").SelectMany(name => GeneratedSets.Named(name, seeds))];
            var gains = options.Text("--gains", "no") == "yes";
            return sets.Count > 0 && sets.TrueForAll(set => set.Instances.Any())
                ? Run([.. sets.DistinctBy(set => set.Name)], effort, limit, gains, options.IsGiven("--each"))
                : throw new FormatException("No set is given, or one is empty.");
        }
        catch (Exception problem) when (problem is FormatException or ArgumentException or IOException or JsonException)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static int Run(List<NestingSet> sets, Effort effort, double? limit, bool gains, bool each)
    {
        var nester = EngineNester.Create();
        WarmUp.Run(nester, effort);
        Report.Say($"{nester.GetType().Name}, effort {effort.ToString().ToLowerInvariant()}, one thread; gap: value over the engine's own bound");
        SetReport.Head();
        var faults = 0;
        var growth = new List<(string Curve, int Size, double Seconds)>();
        foreach (var set in sets)
        {
            var nests = set.Instances.Select(instance => MeasuredNest.Of(nester, instance, effort, limit)).ToList();
            SetReport.Line(set.Name, nests);
            if (each)
                nests.ForEach(nest => Report.Say($"    {nest.Instance.Name}: {nest.Nest.ValueMicros / 1_000_000m:0.00} over {nest.Nest.BoundMicros / 1_000_000m:0.00}, gap {nest.GapPercent:0.0000} %, {nest.Seconds:0.000} s"));
            if (set.BesideGreedy)
                BesideGreedy(nests);
            if (gains)
                BesideWithoutGains(nests, effort);
            if (set.Growth is { } point)
                growth.Add((point.Curve, point.Size, nests.Average(nest => nest.Seconds)));
            faults += SetReport.Faults(set.Name, nests);
        }
        foreach (var curve in growth.GroupBy(point => point.Curve))
            GrowthReport.Say(curve.Key, [.. curve.Select(point => (point.Size, point.Seconds))]);
        return faults > 0 ? 1 : 0;
    }

    private static void BesideGreedy(List<MeasuredNest> nests)
    {
        var greedy = nests.Select(nest => MeasuredNest.Of(new BundledNester(new GreedyNester()), nest.Instance, Effort.Quick, null)).ToList();
        Report.Say($"    money {Money(nests):0.00}, bars {nests.Sum(nest => nest.Bars)}, unplaced {nests.Sum(nest => nest.Unplaced)}; greedy: money {Money(greedy):0.00}, bars {greedy.Sum(nest => nest.Bars)}, unplaced {greedy.Sum(nest => nest.Unplaced)}");
    }

    /// <summary>What merging layouts and gathering remnants changes.</summary>
    private static void BesideWithoutGains(List<MeasuredNest> nests, Effort effort)
    {
        var without = nests.Select(nest => MeasuredNest.Of(new ColumnNester { TakesFreeGains = false }, nest.Instance, effort, null)).ToList();
        Report.Say($"    layouts {nests.Sum(nest => nest.Nest.Layouts.Count)}, remnants {nests.Sum(Remnants)}, most open lines {nests.Average(nest => nest.Nest.MostOpenLines):0.0}, {nests.Average(nest => nest.Seconds):0.000} s; without gains: layouts {without.Sum(nest => nest.Nest.Layouts.Count)}, remnants {without.Sum(Remnants)}, most open lines {without.Average(nest => nest.Nest.MostOpenLines):0.0}, {without.Average(nest => nest.Seconds):0.000} s; bars {nests.Sum(nest => nest.Bars)}");
    }

    private static int Remnants(MeasuredNest nest) => nest.Nest.Layouts.Sum(layout => layout.Remainder.Kind == RemainderKind.Remnant ? layout.Repeat : 0);

    private static decimal Money(List<MeasuredNest> nests) => nests.Sum(nest => nest.Nest.ValueMicros) / 1_000_000m;
}
