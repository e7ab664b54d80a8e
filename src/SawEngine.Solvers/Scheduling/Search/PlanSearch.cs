using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Improves a plan by a search on arrays of sequences, and proves it where jobs are few.</summary>
internal static class PlanSearch
{
    // Steps of judging a change: some fifty million a second.
    private const long StandardWork = 500_000_000;
    private const long WorkPerCubeOfJobs = 2_400;
    private const int ThoroughTimes = 8;
    private const int ShareOfProved = 10;
    private const long WorkPerJobOfRound = 100_000; // the clock has the last word, and needs its time
    private const long WorkPerCubeOfRound = 400;
    private const int Rounds = 2;
    private const int ShareWithoutSetUps = 3;

    /// <summary>The plan found, null where numbers are too large to search with; whether no plan of the same jobs costs less.</summary>
    public static (SawPlan? Plan, bool IsLeast) Run(SawPlan start, Effort effort, CancellationToken cancellation)
    {
        if (AxisShop.Of(start.Shop, start) is not { } axis)
            return (null, false);
        if (!axis.IsExact)
            return (Near(start, axis, cancellation), false);
        var proves = ExactSearch.CanProve(axis);
        var plan = Found(start, axis, new(WorkFor(axis, effort, proves), cancellation));
        return proves && HasAll(plan, start) ? Proved(axis, plan, cancellation) : (plan, false);
    }

    /// <summary>The best of some searches, each on axes that are stretched as the plan before it was.</summary>
    private static SawPlan Near(SawPlan start, AxisShop axis, CancellationToken cancellation)
    {
        var (best, plan) = (start, start);
        var work = Math.Min(WorkPerJobOfRound * axis.Jobs, WorkPerCubeOfRound * Cube(axis.Jobs));
        for (var round = 0; round < Rounds; round++)
        {
            if (round > 0 && AxisShop.Of(plan.Shop, plan) is { } stretched)
                axis = stretched;
            var found = Found(plan, axis, new(work, cancellation));
            if (found.Score().CompareTo(best.Score()) < 0)
                best = found;
            plan = HasAll(found, best) ? found : best;
        }
        return best;
    }

    private static SawPlan Found(SawPlan start, AxisShop axis, WorkMeter meter)
    {
        var found = SequenceSearch.Run(new AxisSequences(axis, start, meter).Sequences, meter, BoundOf(start, axis));
        return start.With([.. Enumerable.Range(0, axis.Saws).Select(saw => Indices(axis, found.Jobs(saw).ToArray()))]);
    }

    private static long WorkFor(AxisShop axis, Effort effort, bool proves)
    {
        var share = proves ? ShareOfProved : axis.HasSetUps ? 1 : ShareWithoutSetUps;
        return Math.Min(StandardWork, WorkPerCubeOfJobs * Cube(axis.Jobs)) * (effort == Effort.Thorough ? ThoroughTimes : 1) / share;
    }

    private static long Cube(long jobs) => jobs * jobs * jobs;

    /// <summary>In the units of the search; below all costs where these are not those of the clock.</summary>
    private static long BoundOf(SawPlan start, AxisShop axis)
    {
        var bound = axis.IsExact ? CostBound.Of(start.Shop, job => start.Finish[job] != SawPlan.NotScheduled).Micros : -1;
        return (long)Int128.Min(bound * ScheduleCost.SecondsPerHour, long.MaxValue);
    }

    private static (SawPlan Plan, bool IsLeast) Proved(AxisShop axis, SawPlan plan, CancellationToken cancellation)
    {
        var value = axis.MakespanRate > 0 ? plan.Score().Makespan : ScheduleCost.Held(plan.Score().CostMicros);
        var better = ExactSearch.Below(axis, value, cancellation);
        if (better is not { Length: > 0 })
            return (plan, better is not null);
        // Without room in the calendar what was found bounds nothing that could be had.
        return plan.With(Array.ConvertAll(better, jobs => Indices(axis, jobs))) is var least && HasAll(least, plan) ? (least, true) : (plan, false);
    }

    private static bool HasAll(SawPlan plan, SawPlan other) => plan.Score().Unscheduled <= other.Score().Unscheduled;

    private static int[] Indices(AxisShop axis, int[] jobs) => Array.ConvertAll(jobs, job => axis.Index[job]);
}
