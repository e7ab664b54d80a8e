using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>
/// Looks for small changes that save a bar, for a salesperson to ask: the same nester nests the changed problem with quick effort, and what it finds is compared
/// with the nest given. So each saving is real, and there may be others.
/// </summary>
public sealed class NearMissSearch(INester nester)
{
    /// <summary>So many lines, those of the greatest length in all, and so many stock items are looked at.</summary>
    public const int MostLooked = 12;

    /// <summary>Lengths are found to this share of the greatest change.</summary>
    private const int Steps = 8;

    /// <summary>Both units write multiples of this many nanometers exactly.</summary>
    private const long Grid = 12_700;

    /// <summary>The changes that save something: more pieces placed first, then the greatest saving.</summary>
    public IReadOnlyList<NearMiss> Of(NestProblem problem, Nest nest, NearMissLimits limits, CancellationToken cancellation)
    {
        var lines = problem.Lines.OrderByDescending(line => line.Length.Nanometers / 1e6 * line.Quantity).ThenBy(line => line.Ref).Take(MostLooked).ToList();
        var found = lines.Select(line => Shorter(problem, nest, line, limits.ShorterBy, cancellation))
            .Concat(lines.Select(line => Fewer(problem, nest, line, limits.FewerBy, cancellation)));
        if (limits.OneMoreBar)
            found = found.Concat(UsedUp(problem, nest).Select(stockId => OneMore(problem, nest, stockId, cancellation)));
        return [.. found.OfType<NearMiss>().OrderByDescending(miss => miss.MorePlaced).ThenByDescending(miss => miss.CostSavedMicros).ThenBy(miss => miss.Change).ThenBy(miss => miss.Piece).ThenBy(miss => miss.StockId, StringComparer.Ordinal)];
    }

    private NearMiss? Shorter(NestProblem problem, Nest nest, OrderLine line, Length most, CancellationToken cancellation)
    {
        if (most.Nanometers / Steps < Grid || line.Length <= most + most)
            return null;
        NearMiss? best = null;
        var (no, yes) = (0, Steps);
        // The greatest change first; then the least that still saves.
        for (var steps = Steps; no < yes - 1 || steps == Steps; steps = (no + yes) / 2)
        {
            var by = Length.FromNanometers(most.Nanometers * steps / Steps / Grid * Grid);
            if (Saved(problem with { Lines = Changed(problem, line, line with { Length = line.Length - by }) }, nest, 0, cancellation) is { } saved)
                (best, yes) = (saved with { Change = NearMissChange.Shorter, Piece = line.Ref, ShorterBy = by }, steps);
            else if (steps == Steps)
                return null;
            else
                no = steps;
        }
        return best;
    }

    private NearMiss? Fewer(NestProblem problem, Nest nest, OrderLine line, int most, CancellationToken cancellation)
    {
        for (var by = 1; by <= Math.Min(most, line.Quantity - 1); by++)
        {
            var fewer = line with { Quantity = line.Quantity - by, Under = Math.Min(line.Under, line.Quantity - by - 1) };
            if (Saved(problem with { Lines = Changed(problem, line, fewer) }, nest, by, cancellation) is { } saved)
                return saved with { Change = NearMissChange.Fewer, Piece = line.Ref, FewerBy = by };
        }
        return null;
    }

    private NearMiss? OneMore(NestProblem problem, Nest nest, string stockId, CancellationToken cancellation)
    {
        var more = problem with { Stock = [.. problem.Stock.Select(item => item.StockId == stockId ? item with { Quantity = item.Quantity + 1 } : item)] };
        return Saved(more, nest, 0, cancellation) is { } saved ? saved with { Change = NearMissChange.OneMoreBar, StockId = stockId } : null;
    }

    /// <summary>What the changed problem's nest saves; null where it saves neither a bar nor a piece that is left out.</summary>
    private NearMiss? Saved(NestProblem changed, Nest nest, int left, CancellationToken cancellation)
    {
        if (cancellation.IsCancellationRequested)
            return null;
        var other = nester.Solve(changed, Effort.Quick, cancellation);
        if (NestVerifier.Verify(changed, other).Count > 0)
            return null;
        var morePlaced = Unplaced(nest) - Unplaced(other) - left;
        var barsSaved = Bars(nest) - Bars(other);
        var costSaved = nest.ValueMicros - other.ValueMicros;
        return morePlaced > 0 || (morePlaced >= -left && Unplaced(other) == 0 && barsSaved > 0 && costSaved > 0)
            ? new() { Change = default, BarsSaved = barsSaved, CostSavedMicros = costSaved, MorePlaced = Math.Max(0, morePlaced) }
            : null;
    }

    private static List<OrderLine> Changed(NestProblem problem, OrderLine line, OrderLine with) => [.. problem.Lines.Select(one => one.Ref == line.Ref ? with : one)];

    /// <summary>Stock of which the nest takes all; of a remnant, or a bar with zones, there is no other like it.</summary>
    private static IEnumerable<string> UsedUp(NestProblem problem, Nest nest)
    {
        var used = nest.Layouts.ToLookup(layout => layout.Stock.StockId, layout => layout.Repeat, StringComparer.Ordinal);
        return problem.Stock.Where(item => item.Kind != Stock.StockKind.Remnant && item.Zones.Count == 0 && item.Quantity is { } there && used[item.StockId].Sum() >= there).Select(item => item.StockId).Take(MostLooked);
    }

    private static long Unplaced(Nest nest) => nest.Unplaced.Sum(row => (long)row.Quantity);

    private static long Bars(Nest nest) => nest.Layouts.Sum(layout => (long)layout.Repeat);
}
