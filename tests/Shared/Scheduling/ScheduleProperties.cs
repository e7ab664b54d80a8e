using System.Text.Json;
using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Tests.Scheduling;

/// <summary>What holds of every schedule of every problem: each property says what is wrong, a word for its kind first, and nothing where it holds.</summary>
internal static class ScheduleProperties
{
    /// <summary>All faults of the schedules of a random problem, and how often a property had something to compare.</summary>
    public static IReadOnlyList<string> Faults(int seed, ShopFeatures features, Dictionary<string, int> compared)
    {
        var problem = RandomShop.Of(seed, features);
        try
        {
            return FaultsOf(seed, problem, compared);
        }
        catch (Exception exception)
        {
            return [$"exception: {exception.GetType().Name}, {exception.Message}"];
        }
    }

    private static List<string> FaultsOf(int seed, ScheduleProblem problem, Dictionary<string, int> compared)
    {
        var effort = EffortOf(seed);
        var schedule = Solve(problem, effort, CancellationToken.None);
        Count(compared, effort.ToString());
        Count(compared, "jobs scheduled", schedule.Jobs.Select(job => job.JobId).Distinct().Count());
        Count(compared, "jobs left out", schedule.Unscheduled.Count);
        foreach (var use in ScheduleUses.Of(problem, schedule))
            Count(compared, use);
        return
        [
            .. Clean(problem, schedule),
            .. Costed(problem, schedule),
            .. MountedBlades(schedule),
            .. Repeated(problem, schedule, effort),
            .. Turned(problem, schedule, effort),
            .. OfOtherEffort(problem, schedule, effort, compared),
            .. BesidePlain(seed, problem, schedule, compared),
            .. Canceled(seed, problem, compared),
        ];
    }

    // Most problems get the least effort, so that there are many of them.
    private static Effort EffortOf(int seed) => seed % 64 == 5 ? Effort.Thorough : seed % 8 == 0 ? Effort.Standard : Effort.Quick;

    private static Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation) => new DispatchScheduler().Solve(problem, effort, cancellation);

    /// <summary>By the verifier: every rule, the cost added up independently, the bound not above it, and each job scheduled or left out for a reason.</summary>
    private static IEnumerable<string> Clean(ScheduleProblem problem, Schedule schedule) =>
        ScheduleVerifier.Verify(problem, schedule).Select(violation => $"{violation.Code}: {violation.Detail}");

    private static IEnumerable<string> Costed(ScheduleProblem problem, Schedule schedule)
    {
        var terms = ScheduleCost.Terms(problem, schedule.Jobs);
        if (ScheduleCost.Held(terms.Total) != schedule.CostMicros)
            yield return $"terms_differ: costs {schedule.CostMicros}, and its terms add up to {terms.Total}";
        if (new[] { terms.Tardiness, terms.Work, terms.SetUps, terms.Overtime, terms.Makespan, terms.Stability }.Any(Int128.IsNegative))
            yield return $"term_negative: {terms}";
        if (schedule.BoundMicros < 0)
            yield return $"bound_negative: has the bound {schedule.BoundMicros}";
    }

    /// <summary>An answer says which blade is mounted; only a caller may leave that to be seen.</summary>
    private static IEnumerable<string> MountedBlades(Schedule schedule) =>
        from job in schedule.Jobs
        from part in job.SetUps
        where part.Kind is SetUpRules.Blade or SetUpRules.BladeWorn && part.MountedLife is null
        select $"mounted_life_missing: job {job.JobId} does not say which blade it mounts at {part.Start}";

    private static IEnumerable<string> Repeated(ScheduleProblem problem, Schedule schedule, Effort effort)
    {
        if (Text(Solve(problem, effort, CancellationToken.None)) != Text(schedule))
            yield return "not_repeated: a second search gives another schedule";
    }

    private static IEnumerable<string> Turned(ScheduleProblem problem, Schedule schedule, Effort effort)
    {
        var turned = problem with
        {
            Saws = [.. problem.Saws.Reverse().Select(saw => saw with { Shelf = [.. saw.Shelf.Reverse()] })],
            Jobs = [.. problem.Jobs.Reverse().Select(job => job with { Options = [.. job.Options.Reverse()], After = [.. job.After.Reverse()] })],
            Deliveries = [.. problem.Deliveries.Reverse().Select(delivery => delivery with { JobIds = [.. delivery.JobIds.Reverse()] })],
            Operators = [.. problem.Operators.Reverse()],
            Cranes = [.. problem.Cranes.Reverse()],
            Previous = problem.Previous is { } previous ? previous with { Places = [.. previous.Places.Reverse()] } : null,
        };
        if (Text(Solve(turned, effort, CancellationToken.None)) != Text(schedule))
            yield return "order_matters: another order of the lists gives another schedule";
    }

    private static IEnumerable<string> OfOtherEffort(ScheduleProblem problem, Schedule schedule, Effort effort, Dictionary<string, int> compared) =>
        Enum.GetValues<Effort>().Where(less => less < effort).SelectMany(less => OfLessEffort(Solve(problem, less, CancellationToken.None), schedule, compared));

    private static IEnumerable<string> OfLessEffort(Schedule less, Schedule schedule, Dictionary<string, int> compared)
    {
        if (schedule.Unscheduled.Count > less.Unscheduled.Count)
            yield return $"effort_leaves_out_more: more effort leaves out {schedule.Unscheduled.Count} jobs, less {less.Unscheduled.Count}";
        if (!schedule.Unscheduled.Select(job => job.JobId).SequenceEqual(less.Unscheduled.Select(job => job.JobId)))
            yield break;
        Count(compared, "other effort");
        if (schedule.CostMicros > less.CostMicros)
            yield return $"effort_costs_more: more effort costs {schedule.CostMicros}, less {less.CostMicros}";
        if (schedule.BoundMicros > less.CostMicros || less.BoundMicros > schedule.CostMicros)
            yield return $"bound_wrong: bounds of two efforts are above the costs: {schedule.BoundMicros} to {schedule.CostMicros}, {less.BoundMicros} to {less.CostMicros}";
    }

    /// <summary>No bound is above what another way to schedule the same jobs costs; how the two compare is counted.</summary>
    private static IEnumerable<string> BesidePlain(int seed, ScheduleProblem problem, Schedule schedule, Dictionary<string, int> compared)
    {
        var plain = PlainShop.Schedule(problem, new(seed));
        Count(compared, "leaves out more than by hand", schedule.Unscheduled.Count > plain.Unscheduled.Count ? 1 : 0);
        if (!schedule.Unscheduled.Select(job => job.JobId).SequenceEqual(plain.Unscheduled.Select(job => job.JobId)))
            yield break;
        Count(compared, schedule.CostMicros > plain.CostMicros ? "dearer than by hand" : "no dearer than by hand");
        if (schedule.BoundMicros > plain.CostMicros)
            yield return $"bound_wrong: bound {schedule.BoundMicros} above a schedule that costs {plain.CostMicros}";
    }

    /// <summary>Canceled at once, or after some milliseconds: whatever was found by then is clean.</summary>
    private static IEnumerable<string> Canceled(int seed, ScheduleProblem problem, Dictionary<string, int> compared)
    {
        if (seed % 4 > 1)
            yield break;
        var milliseconds = seed % 4 == 0 ? 0 : seed % 50;
        using var source = new CancellationTokenSource();
        if (milliseconds == 0)
            source.Cancel();
        else
            source.CancelAfter(milliseconds);
        var schedule = Solve(problem, Effort.Thorough, source.Token);
        Count(compared, "canceled");
        foreach (var fault in Clean(problem, schedule))
            yield return $"canceled_{fault} (after {milliseconds} ms)";
    }

    private static string Text(Schedule schedule) => JsonSerializer.Serialize(schedule);

    private static void Count(Dictionary<string, int> compared, string what, int times = 1) => compared[what] = compared.GetValueOrDefault(what) + times;
}
