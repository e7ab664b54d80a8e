using System.Runtime.InteropServices;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The sequences of a plan on the axes of its saws, and the way back.</summary>
internal sealed class AxisSequences
{
    private readonly AxisShop shop;
    private readonly int[] jobs; // by index of the shop; 0 where it is not on an axis
    private readonly List<int> sequence = [];
    private SawSequence? hand;

    /// <summary>The sequences of a plan on axes that were made for it, or for another of the same jobs.</summary>
    public AxisSequences(AxisShop shop, SawPlan plan, WorkMeter meter)
    {
        this.shop = shop;
        jobs = new int[plan.Shop.Jobs.Length];
        for (var job = 1; job <= shop.Jobs; job++)
            jobs[shop.Index[job]] = job;
        Sequences = new(shop, meter);
        ReadFrom(plan);
    }

    public Sequences Sequences { get; }

    /// <summary>The sequences of a plan; null where numbers are too large to be summed safely, or no job is free.</summary>
    public static AxisSequences? Of(SawPlan plan, WorkMeter meter) => AxisShop.Of(plan.Shop, plan) is { } shop ? new(shop, plan, meter) : null;

    /// <summary>Takes over the sequences of a plan.</summary>
    public void ReadFrom(SawPlan plan)
    {
        for (var saw = 0; saw < shop.Saws; saw++)
        {
            sequence.Clear();
            foreach (var index in plan.Sequences[saw])
                if (jobs[index] > 0)
                    sequence.Add(jobs[index]);
            var at = Sequences.Saws[saw];
            if (!at.Jobs.AsSpan(1, at.Count).SequenceEqual(CollectionsMarshal.AsSpan(sequence)))
                at.Set(CollectionsMarshal.AsSpan(sequence), Sequences.NextVersion());
        }
    }

    /// <summary>Puts the sequences after the frozen jobs of a plan, whose times are then to be found.</summary>
    public void WriteTo(SawPlan plan)
    {
        for (var saw = 0; saw < plan.Sequences.Length; saw++)
        {
            plan.Sequences[saw].RemoveAll(job => !plan.Shop.IsFrozen(job));
            foreach (var job in Sequences.Saws[saw].Jobs.AsSpan(1, Sequences.Saws[saw].Count))
                plan.Sequences[saw].Add(shop.Index[job]);
        }
    }

    /// <summary>Places of a saw's sequence, counted from 0, at which a job, wherever it is now, may go, and what it adds there, the least first; none where it cannot run there.</summary>
    public IReadOnlyList<(int Place, long Cost)> PlacesByCost(int index, int saw)
    {
        var (job, to) = (jobs[index], Sequences.Saws[saw]);
        if (job == 0 || !to.CanRun(job))
            return [];
        var before = new SequencesCopy(Sequences);
        foreach (var home in Sequences.Saws)
            if (home.Jobs.AsSpan(1, home.Count).IndexOf(job) + 1 is > 0 and var at)
                Sequences.Change(home, at - 1, [], at + 1);
        hand ??= new(Sequences.Saws[0].Numbers);
        hand.Jobs[1] = job;
        var places = Enumerable.Range(0, to.Count + 1).Select(place => (Place: place, Cost: to.Try(place, [new(hand, 1, 1)], place + 1, long.MaxValue) - to.Total))
            .OrderBy(one => one.Cost).ThenBy(one => one.Place).ToList();
        before.PutBack();
        return places;
    }
}
