using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Other places for one job of a plan, the others in their order.</summary>
internal sealed class Placements
{
    private readonly SawPlan plan;
    private readonly WorkMeter meter;
    private readonly Decoding decoding;
    private readonly AxisSequences? axis;

    public Placements(SawPlan plan, WorkMeter meter)
    {
        (this.plan, this.meter) = (plan, meter);
        decoding = new(plan.Shop);
        axis = AxisSequences.Of(plan, new(long.MaxValue, CancellationToken.None));
    }

    /// <summary>The plans with the job at its most promising places on some saws, so many of each saw, timed.</summary>
    public IEnumerable<(int Saw, SawPlan Plan)> Best(int job, Predicate<int> isWanted, int places)
    {
        for (var saw = 0; saw < plan.Sequences.Length; saw++)
            if (isWanted(saw) && plan.Shop.Work[job][saw] is not null)
                foreach (var place in PlacesOn(saw, job).Take(places))
                    if (!meter.Stopped)
                        yield return (saw, With(job, saw, place));
    }

    /// <summary>The plan with the job at a place of a saw's sequence without it, timed.</summary>
    public SawPlan With(int job, int saw, int place)
    {
        var other = new SawPlan(plan);
        foreach (var sequence in other.Sequences)
            sequence.Remove(job);
        other.Sequences[saw].Insert(Math.Min(place, other.Sequences[saw].Count), job);
        decoding.Run(other);
        meter.Count(plan.Shop.Jobs.Length);
        return other;
    }

    /// <summary>Places after the frozen jobs, by what the axis says that they cost.</summary>
    private IEnumerable<int> PlacesOn(int saw, int job)
    {
        var frozen = plan.FrozenCount(saw);
        return axis is not null
            ? axis.PlacesByCost(job, saw).Select(place => frozen + place)
            : Enumerable.Range(frozen, plan.Sequences[saw].Count(other => other != job) - frozen + 1);
    }
}
