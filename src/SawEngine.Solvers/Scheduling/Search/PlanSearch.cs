using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Improves a plan by a search on arrays of sequences, and proves it where jobs are few.</summary>
internal static class PlanSearch
{
    // Steps of judging a change: some fifty million a second.
    private const long StandardWork = 120_000_000;
    private const long WorkPerCubeOfJobs = 550;
    private const int ThoroughTimes = 8;
    private const int ShareOfProved = 10;
    private const int ShareOfNear = 4;
    private const int ShareWithoutSetUps = 2;

    /// <summary>
    /// The plan found, null where numbers are too large to search with; whether the search counted as the clock does; whether no plan of the same
    /// jobs costs less.
    /// </summary>
    public static (SawPlan? Plan, bool IsExact, bool IsLeast) Run(Shop shop, SawPlan start, Effort effort, CancellationToken cancellation)
    {
        if (AxisShop.Of(shop, start) is not { } axis)
            return (null, false, false);
        var proves = ExactSearch.CanProve(axis);
        var share = proves ? ShareOfProved : !axis.IsExact ? ShareOfNear : axis.HasSetUps ? 1 : ShareWithoutSetUps;
        var work = Math.Min(StandardWork, WorkPerCubeOfJobs * axis.Jobs * axis.Jobs * axis.Jobs) * (effort == Effort.Thorough ? ThoroughTimes : 1) / share;
        var bound = axis.IsExact ? CostBound.Of(shop, job => start.Finish[job] != SawPlan.NotScheduled).Micros : -1;
        var found = Searched(axis, start, new(work, cancellation), (long)Int128.Min(bound * ScheduleCost.SecondsPerHour, long.MaxValue));
        var plan = start.With(Indices(axis, found));
        if (!proves || !HasAll(plan, start))
            return (plan, axis.IsExact, false);
        return Proved(shop, axis, plan, cancellation);
    }

    private static (SawPlan Plan, bool IsExact, bool IsLeast) Proved(Shop shop, AxisShop axis, SawPlan plan, CancellationToken cancellation)
    {
        var value = axis.MakespanRate > 0 ? plan.Score().Makespan : ScheduleCost.Held(plan.Score().CostMicros);
        var better = ExactSearch.Below(axis, value, cancellation);
        if (better is not { Length: > 0 })
            return (plan, true, better is not null);
        // Without room in the calendar what was found bounds nothing that could be had.
        return plan.With(Indices(axis, better)) is var least && HasAll(least, plan) ? (least, true, true) : (plan, true, false);
    }

    private static bool HasAll(SawPlan plan, SawPlan other) => plan.Score().Unscheduled <= other.Score().Unscheduled;

    private static int[][] Searched(AxisShop axis, SawPlan start, WorkMeter meter, long bound)
    {
        var sequences = new Sequences(axis, meter);
        var jobs = new Dictionary<int, int>();
        for (var job = 1; job <= axis.Jobs; job++)
            jobs[axis.Index[job]] = job;
        for (var saw = 0; saw < axis.Saws; saw++)
            sequences.Saws[saw].Set([.. start.Sequences[saw].Select(index => jobs[index])], sequences.NextVersion());
        var found = SequenceSearch.Run(sequences, meter, bound);
        return [.. Enumerable.Range(0, axis.Saws).Select(saw => found.Jobs(saw).ToArray())];
    }

    private static int[][] Indices(AxisShop axis, int[][] sequences) => Array.ConvertAll(sequences, jobs => Array.ConvertAll(jobs, job => axis.Index[job]));
}
