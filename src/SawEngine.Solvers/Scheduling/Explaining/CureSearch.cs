using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Solvers.Scheduling.Explaining;

/// <summary>Tries what would make one late delivery less late, each change by itself and timed.</summary>
internal sealed class CureSearch
{
    private const int PlacesPerSaw = 3;
    private const int MostPlacesSooner = 12;
    private static readonly int[] HoursOfOvertime = [1, 2, 4, 8];

    private readonly ScheduleProblem problem;
    private readonly SawPlan plan;
    private readonly Placements placements;
    private readonly Delivery delivery;
    private readonly WorkMeter meter;
    private readonly int job;
    private readonly int home;
    private readonly long secondsLate;
    private readonly Int128 cost;

    public CureSearch(ScheduleProblem problem, SawPlan plan, Placements placements, Delivery delivery, ScheduledJob last, WorkMeter meter)
    {
        (this.problem, this.plan, this.placements, this.delivery, this.meter) = (problem, plan, placements, delivery, meter);
        job = Array.FindIndex(plan.Shop.Parts, part => part.Job.JobId == last.JobId && part.FirstStep == last.FirstStep);
        home = Array.FindIndex(plan.Shop.Saws, saw => saw.SawId == last.SawId);
        secondsLate = last.Finish - delivery.Due!.Value;
        cost = plan.Score().CostMicros;
    }

    /// <summary>The cures, least lateness first, then least cost; the best of each kind.</summary>
    public IReadOnlyList<LatenessCure> Find() =>
    [
        .. new[] { Sooner(), OtherSaw(), Split(), Overtime(), EarlierMaterial(), SawNotDown() }.OfType<LatenessCure>()
            .OrderBy(cure => cure.SecondsLate).ThenBy(cure => cure.CostChangeMicros).ThenBy(cure => cure.Kind),
    ];

    private bool IsFrozen => plan.Shop.IsFrozen(job);

    private LatenessCure? Sooner()
    {
        if (IsFrozen)
            return null;
        var (first, place) = (plan.FrozenCount(home), plan.Sequences[home].IndexOf(job));
        var step = Math.Max(1, (place - first + MostPlacesSooner - 1) / MostPlacesSooner);
        return Best(
            LatenessCureKind.Sooner, Enumerable.Range(0, MostPlacesSooner).Select(i => place - step - (i * step)).Where(at => at >= first).TakeWhile(_ => !meter.Stopped)
                .Select(at => (home, placements.With(job, home, at))), namesSaw: false);
    }

    private LatenessCure? OtherSaw() =>
        IsFrozen || meter.Stopped ? null : Best(LatenessCureKind.OtherSaw, placements.Best(job, saw => saw != home, PlacesPerSaw));

    private LatenessCure? Split()
    {
        var whole = plan.Shop.Jobs[job];
        if (IsFrozen || plan.Shop.Parts[job].Steps is not null || whole.Options.Count < 2 || meter.Stopped)
            return null;
        var steps = whole.Options.Select(option => option.Steps.Sum(run => run.Count)).Distinct().ToList();
        if (steps.Count > 1 || steps[0] < 2)
            return null;
        var split = Timed(new(problem, new Dictionary<string, int>(plan.Shop.SplitJobs) { [whole.JobId] = 2 }));
        var second = Array.FindLastIndex(split.Shop.Jobs, one => one.JobId == whole.JobId);
        return Best(LatenessCureKind.Split, new Placements(split, meter).Best(second, saw => saw != home, PlacesPerSaw));
    }

    private LatenessCure? EarlierMaterial()
    {
        var asked = plan.Shop.Jobs[job];
        if (IsFrozen || asked.Release <= 0 || meter.Stopped)
            return null;
        var early = problem with { Jobs = [.. problem.Jobs.Select(one => one.JobId == asked.JobId ? one with { Release = 0 } : one)] };
        var released = Timed(new(early, plan.Shop.SplitJobs));
        return Best(LatenessCureKind.EarlierMaterial, new Placements(released, meter).Best(job, saw => saw == home, PlacesPerSaw).Prepend((home, released)), namesSaw: false);
    }

    private LatenessCure? SawNotDown()
    {
        var down = Enumerable.Range(0, plan.Shop.Saws.Length).Where(saw => plan.Shop.Saws[saw].Lost.Count > 0 && plan.Shop.Work[job][saw] is not null);
        return Best(LatenessCureKind.SawNotDown, down.TakeWhile(_ => !meter.Stopped).SelectMany(WithSawUp));
    }

    /// <summary>The jobs as they lie, and the job whole on the saw that is up.</summary>
    private IEnumerable<(int Saw, SawPlan Plan)> WithSawUp(int saw)
    {
        var up = problem with { Saws = [.. problem.Saws.Select((one, i) => i == saw ? one with { Windows = With(one.Windows, [.. one.Lost]), Lost = [] } : one)] };
        yield return (saw, Timed(new(up, plan.Shop.SplitJobs)));
        if (IsFrozen)
            yield break;
        var jobId = plan.Shop.Jobs[job].JobId;
        var whole = Timed(new(up, plan.Shop.SplitJobs.Where(split => split.Key != jobId).ToDictionary()));
        foreach (var other in new Placements(whole, meter).Best(Array.FindIndex(whole.Shop.Jobs, one => one.JobId == jobId), one => one == saw, PlacesPerSaw))
            yield return other;
    }

    private LatenessCure? Overtime()
    {
        if (plan.Shop.Saws[home].Overtime.Count > 0 && Offered() is { } offered)
            return offered;
        foreach (var hours in HoursOfOvertime)
        {
            if (meter.Stopped)
                return null;
            var longer = WithLonger(hours * (long)ScheduleCost.SecondsPerHour, out var extra);
            var other = Timed(new(longer, plan.Shop.SplitJobs));
            if (LateIn(other) is { } late && (late == 0 || (hours == HoursOfOvertime[^1] && late < secondsLate)))
                return new(LatenessCureKind.Overtime, plan.Shop.Saws[home].SawId, late, ScheduleCost.Held(other.Score().CostMicros - cost), SecondsIn(other, extra));
        }
        return null;
    }

    /// <summary>All overtime that its saw is offered.</summary>
    private LatenessCure? Offered()
    {
        var other = new SawPlan(plan);
        for (var window = 0; window < plan.Shop.Saws[home].Overtime.Count; window++)
            other.WorkOvertime(home, window, true);
        new Decoding(plan.Shop).Run(other);
        return LateIn(other) is { } late && late < secondsLate
            ? new(LatenessCureKind.Overtime, plan.Shop.Saws[home].SawId, late, ScheduleCost.Held(other.Score().CostMicros - cost),
                SecondsIn(other, [.. plan.Shop.Saws[home].Overtime.Select(overtime => overtime.Window)]))
            : null;
    }

    /// <summary>The saw, and who attends it, stay so much longer after each shift that begins before the delivery is done.</summary>
    private ScheduleProblem WithLonger(long seconds, out List<TimeWindow> extra)
    {
        var saw = plan.Shop.Saws[home];
        var end = plan.Finish[job];
        var gaps = saw.Windows.Select((window, i) => new TimeWindow(window.End, Math.Min(window.End + seconds, i + 1 < saw.Windows.Count ? saw.Windows[i + 1].Start : long.MaxValue)))
            .Where(gap => gap.Start < end && gap.Seconds >= seconds && !saw.Lost.Any(lost => lost.Start < gap.End && gap.Start < lost.End)).ToList();
        extra = gaps;
        return problem with
        {
            Saws = [.. problem.Saws.Select(one => one.SawId == saw.SawId ? one with { Windows = With(one.Windows, gaps) } : one)],
            Operators = [.. problem.Operators.Select(one => one.SawIds.Contains(saw.SawId) ? one with { Windows = With(one.Windows, [.. gaps.Where(gap => one.Windows.Any(window => window.End == gap.Start))]) } : one)],
        };
    }

    private static List<TimeWindow> With(IReadOnlyList<TimeWindow> windows, List<TimeWindow> more)
    {
        var joined = new List<TimeWindow>();
        foreach (var window in windows.Concat(more).OrderBy(window => window.Start))
        {
            if (joined.Count > 0 && joined[^1].End >= window.Start)
                joined[^1] = joined[^1] with { End = Math.Max(joined[^1].End, window.End) };
            else
                joined.Add(window);
        }
        return joined;
    }

    private long SecondsIn(SawPlan other, List<TimeWindow> windows) =>
        Decoding.Record(other).Where(one => one.SawId == plan.Shop.Saws[home].SawId)
            .SelectMany(one => one.SetUps.Select(part => (part.Start, part.Finish)).Concat(one.Work.Select(span => (span.Start, span.Finish))))
            .Sum(busy => windows.Sum(window => Math.Max(0, Math.Min(window.End, busy.Finish) - Math.Max(window.Start, busy.Start))));

    private LatenessCure? Best(LatenessCureKind kind, IEnumerable<(int Saw, SawPlan Plan)> plans, bool namesSaw = true)
    {
        LatenessCure? best = null;
        foreach (var (saw, other) in plans)
            if (LateIn(other) is { } late && late < secondsLate && ScheduleCost.Held(other.Score().CostMicros - cost) is var more
                && (best is null || (late, more).CompareTo((best.SecondsLate, best.CostChangeMicros)) < 0))
                best = new(kind, namesSaw ? plan.Shop.Saws[saw].SawId : null, late, more);
        return best;
    }

    /// <summary>Seconds that the delivery is late; null where a job finds no room.</summary>
    private long? LateIn(SawPlan other) => other.Score().Unscheduled > plan.Score().Unscheduled ? null
        : Math.Max(0, Enumerable.Range(0, other.Shop.Jobs.Length).Where(one => delivery.JobIds.Contains(other.Shop.Jobs[one].JobId)).Max(one => other.Finish[one]) - delivery.Due!.Value);

    private SawPlan Timed(Shop shop)
    {
        meter.Count(shop.Jobs.Length);
        return plan.In(shop);
    }
}
