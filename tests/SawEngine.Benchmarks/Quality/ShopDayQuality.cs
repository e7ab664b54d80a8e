using System.Diagnostics;
using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Benchmarks.Quality;

/// <summary>Days of the invented shop: the engine's efforts beside the best of its dispatching rules, and how time grows with jobs and saws.</summary>
internal static class ShopDayQuality
{
    private static readonly DispatchRule[] Rules = Enum.GetValues<DispatchRule>();

    /// <summary>One line a size and effort; the number of rules broken.</summary>
    public static int Run(int seeds, IReadOnlyList<Effort> efforts, IReadOnlyList<string> sizes)
    {
        Report.Say($"{"jobs x saws",-14}{"effort",-10}{"cost",14}{"late",7}{"unplaced",10}{"bound %",9}{"vs rules %",12}{"mean s",10}{"max s",10}");
        var faults = 0;
        var times = new List<(int Size, double Seconds)>();
        Schedules((12, 3), 1, new DispatchScheduler(), Effort.Standard);
        foreach (var size in ShopDays.Sizes.Where(size => sizes.Count == 0 || sizes.Contains($"{size.Jobs}")))
        {
            var rules = Rules.Select(rule => Schedules(size, seeds, new DispatchScheduler(rule), Effort.Quick)).ToList();
            var bestOfRules = Enumerable.Range(0, seeds).Average(seed => rules.Min(schedules => (double)schedules[seed].Schedule.CostMicros));
            foreach (var effort in efforts)
            {
                var schedules = Schedules(size, seeds, new DispatchScheduler(), effort);
                var cost = schedules.Average(one => (double)one.Schedule.CostMicros);
                Report.Say($"{$"{size.Jobs} x {size.Saws}",-14}{effort,-10}{cost / 1e6,14:0.00}{schedules.Average(one => one.Late),7:0.0}{schedules.Sum(one => one.Schedule.Unscheduled.Count),10}{100 * schedules.Average(one => (double)one.Schedule.BoundMicros) / cost,9:0.0}{100 * ((cost / bestOfRules) - 1),12:0.00}{schedules.Average(one => one.Seconds),10:0.00}{schedules.Max(one => one.Seconds),10:0.00}");
                faults += schedules.Sum(one => one.Faults);
                if (effort == Effort.Standard)
                    times.Add((size.Jobs, schedules.Average(one => one.Seconds)));
            }
        }
        GrowthReport.Say("jobs", times);
        return faults;
    }

    private static List<(Schedule Schedule, int Late, double Seconds, int Faults)> Schedules((int Jobs, int Saws) size, int seeds, DispatchScheduler scheduler, Effort effort)
    {
        var found = new List<(Schedule, int, double, int)>();
        for (var seed = 1; seed <= seeds; seed++)
        {
            var problem = ShopDays.Of(size, seed);
            var watch = Stopwatch.StartNew();
            var schedule = scheduler.Solve(problem, effort, CancellationToken.None);
            var seconds = watch.Elapsed.TotalSeconds;
            var violations = ScheduleVerifier.Verify(problem, schedule);
            foreach (var violation in violations.Take(3))
                Report.Say($"!!! WRONG: {size} seed {seed}: {violation.Code} {violation.Detail}");
            var finish = schedule.Jobs.ToDictionary(job => job.JobId, job => job.Finish, StringComparer.Ordinal);
            found.Add((schedule, problem.Deliveries.Count(one => finish.GetValueOrDefault(one.DeliveryId) > one.Due), seconds, violations.Count));
        }
        return found;
    }
}
