using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Nesting;

/// <summary>Makes a nest of filled bars: their pieces given to lines, their remnants limited, their layouts in the order in which they are cut.</summary>
internal sealed class NestAssembly(NestProblem problem, NestModel model, IReadOnlyDictionary<PieceRef, int> placed, AfterwardsEffort effort, SearchMeter meter)
{
    private readonly LayoutCost _cost = LayoutCost.Of(problem);

    /// <summary>The nest of the bars, each in its best cut order.</summary>
    public Nest Of(IReadOnlyList<OpenBar> bars, long bound) => Answer(Layouts(Ordered(bars)), bound);

    /// <summary>The nest of the bars, or one of the same pieces that costs no more, has no more layouts, and has fewer layouts or longer remnants.</summary>
    public Nest OfBest(IReadOnlyList<OpenBar> bars, long bound)
    {
        var found = Layouts(Ordered(bars));
        if (meter.IsCanceled)
            return Answer(found, bound);
        var best = found;
        var gains = new FreeGains(model, _cost, bars, effort, meter.Cancellation);
        if (Layouts(gains.Merged()) is var merged && IsNoWorse(merged, found))
            best = merged;
        if (gains.Gathered() is { } gathering && Layouts(gathering) is var gathered && IsNoWorse(gathered, found) && Leftover(gathered).CompareTo(Leftover(best)) < 0)
            best = gathered;
        return Answer(best, bound);
    }

    private IEnumerable<OpenBar> Ordered(IReadOnlyList<OpenBar> bars) => bars.Select(bar => meter.IsCanceled ? bar : CutOrder.OrAsItIs(model, bar));

    private IReadOnlyList<BarLayout> Layouts(IEnumerable<OpenBar> bars) => RemnantLimit.Apply(LineAssignment.Of(problem, model, bars), _cost);

    private bool IsNoWorse(IReadOnlyList<BarLayout> layouts, IReadOnlyList<BarLayout> than) => layouts.Count <= than.Count && Value(layouts) <= Value(than);

    private (long Value, long Remnants, long Longest) Leftover(IReadOnlyList<BarLayout> layouts)
    {
        var remnants = layouts.Where(layout => layout.Remainder.Kind == RemainderKind.Remnant).ToList();
        return (Value(layouts), remnants.Sum(layout => (long)layout.Repeat), -remnants.Select(layout => layout.Remainder.Length.Nanometers).DefaultIfEmpty().Max());
    }

    private long Value(IEnumerable<BarLayout> layouts) => layouts.Sum(_cost.Micros);

    private Nest Answer(IReadOnlyList<BarLayout> layouts, long bound)
    {
        var reasons = new UnplacedReasons(problem, layouts);
        var unplaced = problem.Lines.OrderBy(line => line.Ref)
            .Select(line => (Line: line, Quantity: line.Quantity - placed.GetValueOrDefault(line.Ref)))
            .Where(left => left.Quantity > 0)
            .Select(left => UnplacedPieces.Of(left.Line, left.Quantity, reasons.Of(left.Line)))
            .ToList();
        var value = Value(layouts);
        // Where bars ran out, more pieces might have been placed: a bound on the cost of those that were proves nothing about that.
        var proved = value == bound && !unplaced.Exists(row => row.Reason is UnplacedReason.StockUsedUp or UnplacedReason.NoSingleHeat or UnplacedReason.HigherPriority or UnplacedReason.UnderAccepted);
        return new()
        {
            Layouts = CuttingSequence.Of(layouts, effort, meter.Cancellation),
            Unplaced = unplaced,
            ValueMicros = value,
            BoundMicros = bound,
            StoppedBy = proved ? StoppedBy.Proof : meter.IsCanceled ? StoppedBy.TimeLimit : StoppedBy.Effort,
        };
    }
}
