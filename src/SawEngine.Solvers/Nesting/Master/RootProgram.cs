using SawEngine.Solvers.Nesting.Pricing;
using SawEngine.Solvers.Nesting.Proof;

namespace SawEngine.Solvers.Nesting.Master;

/// <summary>
/// The linear program of all pieces, with the best safe bound of all rounds. Duals are smoothed toward those of the best bound (Wentges 1997); where that finds
/// no layout, they are taken as they are.
/// </summary>
internal sealed class RootProgram(SearchPart part, MasterProgram master, Pricer pricer, CostGrid grid, SearchMeter meter)
{
    private const double Smoothing = 0.3;

    private readonly int[] _wanted = [.. part.Demand];
    private readonly long[] _available = [.. part.Bars.Select(bars => bars.Available)];
    private double _lastBound = double.NegativeInfinity;
    private double[]? _stable;
    private double[]? _stableBars;

    /// <summary>No nest costs less, in millionths.</summary>
    public double Bound { get; private set; }

    /// <summary>Solves until the program is optimal, its value is within a share of the bound, or the bound meets a known cost.</summary>
    public void Solve(long knownBound, long knownCost, double goodEnough)
    {
        Bound = knownBound;
        while (!meter.IsStopped && master.Solve())
        {
            var isSmooth = _stable is not null;
            var (duals, barDuals) = isSmooth ? (Smoothed(master.Duals, _stable!), Smoothed(master.BarDuals, _stableBars!)) : (master.Duals, master.BarDuals);
            if (PriceIsEnough(duals, barDuals, knownCost, goodEnough))
                return;
            if (ColumnGeneration.AddBest(part, master, pricer, barDuals) > 0)
                continue;
            if (!isSmooth || PriceIsEnough(master.Duals, master.BarDuals, knownCost, goodEnough) || ColumnGeneration.AddBest(part, master, pricer, master.BarDuals) == 0)
                return;
        }
    }

    /// <summary>The duals of the best bound; null where there is none, or where canceled.</summary>
    public SafeDuals? SafeDuals()
    {
        if (_stable is null)
            return null;
        pricer.Price(_stable, _wanted, _available);
        return pricer.SafeDualsOf(_wanted, _available);
    }

    private bool PriceIsEnough(double[] duals, double[] barDuals, long knownCost, double goodEnough)
    {
        pricer.Price(duals, _wanted, _available);
        var bound = pricer.SafeBound(_wanted, _available);
        if (bound > _lastBound)
            (_lastBound, _stable, _stableBars) = (bound, [.. duals], [.. barDuals]);
        Bound = Math.Max(Bound, bound);
        if (grid.RoundUp(Bound) >= knownCost)
            return true;
        // Where costs come in large steps, one more step is worth more rounds.
        return master.Value - Bound <= goodEnough * Math.Abs(master.Value) && grid.RoundUp(Bound) + goodEnough * Math.Abs(master.Value) >= grid.RoundUp(master.Value * (1 - 1e-7));
    }

    private static double[] Smoothed(double[] duals, double[] stable) => [.. duals.Select((dual, i) => Smoothing * stable[i] + (1 - Smoothing) * dual)];
}
