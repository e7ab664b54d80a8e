namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The sequences of a plan on the axes of its saws, and the way back.</summary>
internal sealed class AxisSequences
{
    private readonly AxisShop shop;

    private AxisSequences(AxisShop shop, SawPlan plan, WorkMeter meter)
    {
        this.shop = shop;
        Sequences = new(shop, meter);
        var jobs = new Dictionary<int, int>();
        for (var job = 1; job <= shop.Jobs; job++)
            jobs[shop.Index[job]] = job;
        for (var saw = 0; saw < shop.Saws; saw++)
            Sequences.Saws[saw].Set([.. plan.Sequences[saw].Where(jobs.ContainsKey).Select(index => jobs[index])], Sequences.NextVersion());
    }

    public Sequences Sequences { get; }

    /// <summary>The sequences of a plan; null where numbers are too large to be summed safely, or no job is free.</summary>
    public static AxisSequences? Of(SawPlan plan, WorkMeter meter) => AxisShop.Of(plan.Shop, plan) is { } shop ? new(shop, plan, meter) : null;

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
