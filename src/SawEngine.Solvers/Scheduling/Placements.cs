using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Other places for one job of a plan, the others in their order.</summary>
internal sealed class Placements
{
    private const int SetUpsPerPlacement = 200; // in time

    private readonly WorkMeter meter;
    private readonly Decoding decoding;
    private readonly AxisSequences? axis;
    private SawPlan plan;

    public Placements(SawPlan plan, WorkMeter meter)
    {
        (this.plan, this.meter) = (plan, meter);
        decoding = new(plan.Shop);
        axis = meter.Stopped ? null : AxisSequences.Of(plan, new(long.MaxValue, CancellationToken.None));
        meter.Count((long)plan.Shop.Jobs.Length * plan.Shop.Jobs.Length * plan.Shop.Saws.Length / SetUpsPerPlacement);
    }

    /// <summary>Goes on with another plan of the same jobs.</summary>
    public void Use(SawPlan other)
    {
        plan = other;
        axis?.ReadFrom(other);
    }

    /// <summary>The plans with the job at its most promising places on some saws, so many of each saw, the most promising first, timed.</summary>
    public IEnumerable<(int Saw, SawPlan Plan)> Best(int job, Predicate<int> isWanted, int placesPerSaw) =>
        Enumerable.Range(0, plan.Sequences.Length).Where(saw => isWanted(saw) && plan.Shop.Work[job][saw] is not null)
            .SelectMany(saw => PlacesOn(saw, job).Take(placesPerSaw).Select(one => (Saw: saw, one.Place, one.Cost)))
            .OrderBy(one => one.Cost).TakeWhile(_ => !meter.Stopped)
            .Select(one => (one.Saw, With(job, one.Saw, one.Place)));

    /// <summary>The plan with the job at a place of a saw's sequence without it, timed.</summary>
    public SawPlan With(int job, int saw, int place)
    {
        var other = new SawPlan(plan);
        foreach (var sequence in other.Sequences)
            sequence.Remove(job);
        other.Sequences[saw].Insert(Math.Min(place, other.Sequences[saw].Count), job);
        return Timed(other);
    }

    /// <summary>The plan with a window of overtime worked or left, timed.</summary>
    public SawPlan WithOvertime(int saw, int window, bool isWorked)
    {
        var other = new SawPlan(plan);
        other.WorkOvertime(saw, window, isWorked);
        return Timed(other);
    }

    private SawPlan Timed(SawPlan other)
    {
        decoding.Run(other);
        meter.Count(plan.Shop.Jobs.Length);
        return other;
    }

    /// <summary>Places after the frozen jobs, by what the axis says that they cost.</summary>
    private IEnumerable<(int Place, long Cost)> PlacesOn(int saw, int job)
    {
        var frozen = plan.FrozenCount(saw);
        return axis is not null
            ? axis.PlacesByCost(job, saw).Select(one => (frozen + one.Place, one.Cost))
            : Enumerable.Range(frozen, plan.Sequences[saw].Count(other => other != job) - frozen + 1).Select(place => (place, 0L));
    }
}
