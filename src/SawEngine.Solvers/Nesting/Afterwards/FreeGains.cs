using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// What filled bars can gain without costing more: fewer different layouts, and one long remnant rather than several short. Every exchange is laid by the model,
/// so pieces come only on bars that may serve them. Bars whose pieces fit only in the order in which they lie take no part.
/// </summary>
internal sealed class FreeGains
{
    /// <summary>A step goes through all types; with more than these fewer steps are taken.</summary>
    private const int TypesPerStep = 64;

    private readonly NestModel _model;
    private readonly LayoutCost _cost;
    private readonly AfterwardsEffort _effort;
    private readonly CancellationToken _cancellation;
    private readonly List<OpenBar> _fixed = [];
    private readonly List<CountedLayout> _layouts;

    public FreeGains(NestModel model, LayoutCost cost, IReadOnlyList<OpenBar> bars, AfterwardsEffort effort, CancellationToken cancellation)
    {
        (_model, _cost, _effort, _cancellation) = (model, cost, effort, cancellation);
        var layouts = new List<CountedLayout>();
        foreach (var bar in bars)
        {
            var counts = CutOrder.CountsOf(model, bar);
            if (CutOrder.Lay(model, bar.Stock, bar.Bars, counts) is { } laid && CutOrder.Cost(model, laid) <= CutOrder.Cost(model, bar))
                layouts.Add(new(bar.Stock, counts, bar.Bars));
            else
                _fixed.Add(bar);
        }
        _layouts = Counted(layouts);
    }

    /// <summary>The bars in fewer different layouts.</summary>
    public IReadOnlyList<OpenBar> Merged() => Merged(_layouts);

    /// <summary>The bars with remnants gathered first; null where no remnants are kept, or none could be gathered.</summary>
    public IReadOnlyList<OpenBar>? Gathered()
    {
        if (_cost.Remnants is null || _layouts.Sum(layout => (long)layout.Repeat) > Steps(_effort.Gathering))
            return null;
        List<FilledBar> bars = [.. _layouts.SelectMany(layout => Enumerable.Repeat(new FilledBar(layout.Stock, layout.Counts), layout.Repeat))];
        var gathered = RemnantGathering.Gather(bars, EndOf, Steps(_effort.Gathering), _cancellation);
        if (gathered.SequenceEqual(bars))
            return null;
        return Merged(Counted(gathered.Select(bar => new CountedLayout(bar.Stock, bar.Counts, 1))));
    }

    private List<OpenBar> Merged(List<CountedLayout> layouts) =>
        [.. LayoutMerging.Merge(layouts, Fits, CostOf, Steps(_effort.Merging), _cancellation).Select(Lay).Where(bar => bar.Last is not null), .. _fixed];

    private long Steps(long most) => most / (1 + _model.Types.Length / TypesPerStep);

    private OpenBar Lay(CountedLayout layout) => CutOrder.Lay(_model, layout.Stock, layout.Repeat, layout.Counts)!;

    private bool Fits(int stock, IReadOnlyList<int> counts) => CutOrder.Fits(_model, stock, counts);

    private decimal CostOf(int stock, IReadOnlyList<int> counts) => CutOrder.Cost(_model, CutOrder.Lay(_model, stock, 1, counts)!);

    private BarEnd? EndOf(int stock, IReadOnlyList<int> counts)
    {
        if (CutOrder.Lay(_model, stock, 1, counts) is not { } bar)
            return null;
        var remainder = _model.RemainderOf(bar);
        return new(CutOrder.Cost(_model, bar), remainder, _cost.IsKept(Length.FromNanometers(remainder)));
    }

    /// <summary>Bars that are alike as one layout, in the order in which they come.</summary>
    private static List<CountedLayout> Counted(IEnumerable<CountedLayout> bars) =>
        [.. bars.GroupBy(bar => string.Join(' ', bar.Counts.Select((count, type) => (count, type)).Where(run => run.count > 0).Append((0, bar.Stock))), StringComparer.Ordinal)
            .Select(alike => alike.First() with { Repeat = alike.Sum(bar => bar.Repeat) })];
}
