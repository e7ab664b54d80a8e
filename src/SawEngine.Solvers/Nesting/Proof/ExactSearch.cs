using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Proof;

/// <summary>
/// Nests a part exactly where it is small enough: all nests that cost no more than the bound and an allowance are searched, and the allowance grows until there is one,
/// or no better one than is known. Each search that finds none lifts the bound.
/// </summary>
internal sealed class ExactSearch(SearchPart part, SafeDuals duals, CostGrid grid, long steps, CancellationToken cancellation)
{
    /// <summary>Beyond so many pieces the gap was never closed.</summary>
    private const int MostPieces = 150;

    /// <summary>The first allowance is the gap divided by this.</summary>
    private const int FirstShare = 16;

    /// <summary>The share of the steps that every search may take.</summary>
    private const double LeastSteps = 0.05;

    /// <summary>Layouts of the cheapest nest, one for each bar; null where none is cheaper than what is known, or where the steps did not suffice.</summary>
    public List<Column>? Cheaper { get; private set; }

    /// <summary>No nest costs less, in millionths.</summary>
    public long Bound { get; private set; } = duals.Bound;

    /// <summary>Whether a part is small enough to be searched with any hope.</summary>
    public static bool IsFor(SearchPart part) => part.Pieces <= MostPieces && PackedCounts.For(part.Demand) is not null;

    public void Run(long knownCost)
    {
        var most = knownCost - grid.Unit - duals.Bound;
        if (most < 0 || PackedCounts.For(part.Demand) is not { } counts)
            return;
        for (var allowance = most / FirstShare; Search(allowance, StepsFor((double)allowance / Math.Max(1, most)), counts) && Cheaper is null && allowance < most;)
            allowance = Math.Min(most, allowance + allowance / 2 + 1);
    }

    /// <summary>Work grows faster than the square of the allowance: where a small one takes more than that, the whole gap is out of reach.</summary>
    private long StepsFor(double share) => (long)(steps * (LeastSteps + share * share));

    /// <summary>False where the steps did not suffice.</summary>
    private bool Search(long allowance, long mostSteps, PackedCounts counts)
    {
        var budget = new StepBudget(mostSteps, cancellation);
        var pool = LayoutPool.Of(part, duals, allowance, budget);
        if (pool.IsCut || !RestStates.TryRun(part, counts, duals, allowance, pool.Columns, budget, out var bars))
            return false;
        if (bars.Count > 0)
            Cheaper = bars;
        if (pool.IsExact)
            Bound = bars.Count > 0 ? bars.Sum(bar => bar.CostMicros) : grid.RoundUp(duals.Bound + allowance + 1);
        return true;
    }
}
