using System.Diagnostics;
using System.Text.Json;
using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Benchmarks.Quality;

/// <summary>Solution quality of scheduling over whole sets: one line a set, one instance after the other on one thread.</summary>
internal static class SchedulingQuality
{
    private const string Usage = "quality scheduling --set FILE... [--effort quick|standard|thorough] [--limit SECONDS] [--max N] [--each yes|no] | --shop-days [JOBS...] [--seeds N] [--efforts quick standard thorough]";
    private const long SmallValue = 1000;
    private static readonly TimeSpan WarmUpTime = TimeSpan.FromSeconds(2);

    /// <summary>Runs the sets; 1 where a schedule breaks a rule or contradicts a known answer, 2 where the command makes no sense.</summary>
    public static int Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--set", "--effort", "--limit", "--max", "--each", "--shop-days", "--seeds", "--efforts");
            if (options.IsGiven("--shop-days"))
                return ShopDayQuality.Run((int)options.Number("--seeds", 5), Efforts(options), options.All("--shop-days")) > 0 ? 1 : 0;
            var effort = Enum.Parse<Effort>(options.Text("--effort", "standard"), ignoreCase: true);
            double? limit = options.All("--limit").Count > 0 ? options.Number("--limit", 0) : null;
            var most = (int)options.Number("--max", int.MaxValue);
            var sets = options.All("--set").Select(SchedulingSetFile.Read).Select(set => set with { Instances = [.. set.Instances.Take(most)] }).ToList();
            return sets.Count > 0 && sets.TrueForAll(set => set.Instances.Count > 0)
                ? Run(sets, effort, limit, options.Text("--each", "no") == "yes")
                : throw new FormatException("No set is given, or one is empty.");
        }
        catch (Exception problem) when (problem is FormatException or ArgumentException or IOException or JsonException)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static List<Effort> Efforts(CommandOptions options) =>
        [.. options.All("--efforts").DefaultIfEmpty("standard").Select(effort => Enum.Parse<Effort>(effort, ignoreCase: true))];

    private static int Run(List<SchedulingSet> sets, Effort effort, double? limit, bool each)
    {
        var scheduler = new DispatchScheduler();
        WarmUp(scheduler, sets[0].Instances, effort);
        Report.Say($"{nameof(DispatchScheduler)}, effort {effort.ToString().ToLowerInvariant()}, one thread; excess: value over the least known");
        Report.Say($"{"set",-24}{"instances",10}{"optimal",9}{"proved",8}{"matched",10}{"beaten",8}{"mean excess %",15}{"above 1000 %",14}{"worst %",10}{"mean s",10}{"max s",10}");
        var faults = 0;
        foreach (var set in sets)
        {
            var schedules = new List<MeasuredSchedule>();
            foreach (var instance in set.Instances)
            {
                schedules.Add(MeasuredSchedule.Of(scheduler, instance, effort, limit));
                if (each)
                    Each(schedules[^1]);
            }
            Line(set, schedules);
            faults += Faults(set.Name, schedules);
        }
        return faults > 0 ? 1 : 0;
    }

    private static void WarmUp(IScheduler scheduler, IReadOnlyList<SchedulingInstance> instances, Effort effort)
    {
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed < WarmUpTime)
            MeasuredSchedule.Of(scheduler, instances[0], effort, WarmUpTime.TotalSeconds);
    }

    private static void Line(SchedulingSet set, List<MeasuredSchedule> schedules)
    {
        var known = schedules.Where(schedule => schedule.Instance.Best is not null).ToList();
        var matched = FormattableString.Invariant($"{known.Count(schedule => schedule.Value == schedule.Instance.Best)}/{known.Count}");
        var excesses = schedules.Select(schedule => schedule.ExcessPercent).OfType<double>().ToList();
        var large = schedules.Where(schedule => schedule.Instance.Best > SmallValue).Select(schedule => schedule.ExcessPercent).OfType<double>().ToList();
        Report.Say($"{set.Name,-24}{schedules.Count,10}{schedules.Count(schedule => schedule.IsOptimal),9}{schedules.Count(schedule => schedule.IsProved),8}{matched,10}{known.Count(schedule => schedule.Value < schedule.Instance.Best),8}{Mean(excesses),15}{Mean(large),14}{(excesses.Count > 0 ? excesses.Max() : 0),10:0.000}{schedules.Average(schedule => schedule.Seconds),10:0.000}{schedules.Max(schedule => schedule.Seconds),10:0.000}");
        if (set.Left > 0)
            Report.Say($"    {set.Left} other problems are not of a saw shop");
    }

    private static void Each(MeasuredSchedule schedule) =>
        Report.Say($"    {schedule.Instance.Name,-28}{schedule.Value,12}{schedule.Instance.Best,12}{schedule.ExcessPercent,10:0.000}{(schedule.IsProved ? "proved" : ""),8}{schedule.Seconds,9:0.000}");

    private static string Mean(List<double> values) => values.Count > 0 ? FormattableString.Invariant($"{values.Average():0.000}") : "-";

    private static int Faults(string name, List<MeasuredSchedule> schedules)
    {
        var faults = schedules.SelectMany(schedule => schedule.Faults().Select(fault => (schedule.Instance.Name, Fault: fault))).ToList();
        foreach (var (instance, fault) in faults)
            Report.Say($"!!! WRONG: {name} {instance}: {fault}");
        return faults.Count;
    }
}
