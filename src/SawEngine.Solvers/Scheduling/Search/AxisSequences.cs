using System.Runtime.InteropServices;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The sequences of a plan on the axes of its saws, and the way back.</summary>
internal sealed class AxisSequences
{
    private readonly AxisShop shop;
    private readonly int[] jobs; // by index of the shop; 0 where it is not on an axis
    private readonly List<int> sequence = [];

    private AxisSequences(AxisShop shop, SawPlan plan, WorkMeter meter)
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
}
