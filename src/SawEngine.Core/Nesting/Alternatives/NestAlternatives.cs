using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>
/// Nests that are better in their kind than the cheapest one found, and cost at most <see cref="MostDearer"/> more. Each is found by the same nester under other
/// costs, or from fewer pieces whose bars are repeated, then costed by the problem's own rules and verified.
/// </summary>
public sealed class NestAlternatives(INester nester)
{
    /// <summary>How much more than the cheapest nest an alternative may cost, as a fraction; common practice, no source.</summary>
    public const decimal MostDearer = 0.05m;

    private const long ShareOfCost = 1_000;

    private static readonly int[] Repeats = [2, 3, 4, 5, 6, 8, 10, 12, 16, 20];

    /// <summary>The best nest of a kind; null where none was found that is better in it, places the same pieces and is verified.</summary>
    public Nest? Of(NestProblem problem, Nest cheapest, NestKind kind, Effort effort, CancellationToken cancellation)
    {
        Nest? best = null;
        foreach (var layouts in Candidates(problem, kind, effort, cancellation))
        {
            var nest = Costed(problem, cheapest, layouts);
            if (IsBetter(kind, nest, best ?? cheapest) && nest.ValueMicros - cheapest.ValueMicros <= MostDearer * Math.Abs(cheapest.ValueMicros) && NestVerifier.Verify(problem, nest).Count == 0)
                best = nest;
        }
        return best;
    }

    /// <summary>What a nest has of its kind: the less, the better.</summary>
    public static long Measure(NestKind kind, Nest nest) => kind switch
    {
        NestKind.FewestLayouts => nest.Layouts.Count,
        NestKind.FewestBars => nest.Layouts.Sum(layout => (long)layout.Repeat),
        NestKind.MostRemnantsUsed => -nest.Layouts.Where(layout => layout.Stock.Kind == StockKind.Remnant).Sum(layout => (long)layout.Repeat),
        _ => RemnantLimit.NewRemnants(nest.Layouts),
    };

    private static bool IsBetter(NestKind kind, Nest nest, Nest than) => (Measure(kind, nest), nest.ValueMicros).CompareTo((Measure(kind, than), than.ValueMicros)) < 0
        && Measure(kind, nest) <= Measure(kind, than);

    private IEnumerable<IReadOnlyList<BarLayout>> Candidates(NestProblem problem, NestKind kind, Effort effort, CancellationToken cancellation)
    {
        if (kind == NestKind.FewestLayouts)
        {
            foreach (var repeat in Repeats.Where(repeat => problem.Lines.Any(line => line.Quantity >= repeat)))
                yield return Repeated(problem, repeat, effort, cancellation);
            yield break;
        }
        yield return nester.Solve(kind switch
        {
            NestKind.FewestBars => CostingBars(problem),
            NestKind.MostRemnantsUsed => problem with { Stock = [.. problem.Stock.Select(item => item.Kind == StockKind.Remnant ? item with { CostMicros = 0, PullCostMicros = 0 } : item)] },
            _ => problem with { Remnants = null },
        }, effort, cancellation).Layouts;
    }

    /// <summary>All bars at nearly one cost.</summary>
    private static NestProblem CostingBars(NestProblem problem)
    {
        var most = problem.Stock.Select(item => item.CostMicros).DefaultIfEmpty(1).Max();
        return problem with { Remnants = null, ScrapValueMicrosPerKilogram = 0, Stock = [.. problem.Stock.Select(item => item with { CostMicros = most + item.CostMicros / ShareOfCost, PullCostMicros = 0 })] };
    }

    /// <summary>Bars for a part of each line's pieces, each bar several times; then bars for the rest.</summary>
    private List<BarLayout> Repeated(NestProblem problem, int repeat, Effort effort, CancellationToken cancellation)
    {
        var part = problem with
        {
            Lines = [.. problem.Lines.Where(line => line.Quantity >= repeat).Select(line => line with { Quantity = line.Quantity / repeat, Under = 0, Over = 0 })],
            Stock = [.. problem.Stock.Where(item => item.Quantity is not { } there || there >= repeat).Select(item => item with { Quantity = item.Quantity / repeat })],
        };
        var layouts = nester.Solve(part, effort, cancellation).Layouts.Select(layout => layout with { Repeat = layout.Repeat * repeat }).ToList();
        var placed = Placed(layouts);
        var used = layouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.Sum(layout => layout.Repeat), StringComparer.Ordinal);
        var rest = problem with
        {
            Lines = [.. problem.Lines.Where(line => line.Quantity > placed.GetValueOrDefault(line.Ref)).Select(line => line with { Quantity = line.Quantity - placed.GetValueOrDefault(line.Ref), Under = 0 })],
            Stock = [.. problem.Stock.Select(item => item with { Quantity = item.Quantity - used.GetValueOrDefault(item.StockId) }).Where(item => item.Quantity is not 0)],
        };
        return rest.Lines.Count == 0 ? layouts : [.. layouts, .. nester.Solve(rest, effort, cancellation).Layouts];
    }

    /// <summary>The nest of some layouts by the problem's own stock and costs; alike layouts are one.</summary>
    private static Nest Costed(NestProblem problem, Nest cheapest, IReadOnlyList<BarLayout> layouts)
    {
        var cost = LayoutCost.Of(problem);
        var stock = problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);
        var known = layouts.Select(layout => Own(layout, stock[layout.Stock.StockId], cost))
            .GroupBy(layout => (layout.Stock.StockId, Cuts: string.Join('\n', layout.Cuts)))
            .Select(alike => alike.First() with { Repeat = alike.Sum(layout => layout.Repeat) })
            .OrderBy(layout => layout.Stock.StockId, StringComparer.Ordinal).ToList();
        var limited = RemnantLimit.Apply(known, cost).Select(layout => layout with { Bundle = LayoutBundles.FewestCycles(layout, problem.Rules) }).ToList();
        // Only a nest that leaves the same pieces out can be verified; any other fails there.
        return cheapest with { Layouts = limited, ValueMicros = limited.Sum(cost.Micros), StoppedBy = StoppedBy.Effort };
    }

    private static BarLayout Own(BarLayout layout, StockItem stock, LayoutCost cost) => layout with { Stock = stock, Remainder = cost.RemainderOf(stock, layout.Remainder.Length) };

    private static Dictionary<PieceRef, int> Placed(IEnumerable<BarLayout> layouts) => layouts
        .SelectMany(layout => layout.Cuts.Select(cut => (cut.Piece, layout.Repeat)))
        .GroupBy(cut => cut.Piece).ToDictionary(cuts => cuts.Key, cuts => cuts.Sum(cut => cut.Repeat));
}
