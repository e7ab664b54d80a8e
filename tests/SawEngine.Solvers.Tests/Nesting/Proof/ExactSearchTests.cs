using Google.OrTools.Sat;
using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting.Proof;

/// <summary>Small orders are nested exactly: held against a plain model of the same problem in a general-purpose constraint solver.</summary>
public class ExactSearchTests
{
    private const int Kerf = 2;

    [Fact]
    public void Small_orders_are_nested_at_the_least_cost_and_proved()
    {
        for (var seed = 1; seed <= 25; seed++)
        {
            var problem = SmallOrder(new(seed));
            var nest = new ColumnNester().Solve(problem, Effort.Standard, CancellationToken.None);

            Assert.Empty(nest.Unplaced);
            Assert.Equal((seed, nest.ValueMicros), (seed, LeastCost(problem, nest.ValueMicros)));
            Assert.Equal((seed, nest.BoundMicros), (seed, nest.ValueMicros));
        }
    }

    [Fact]
    public void Three_bars_are_proved_where_the_linear_program_says_two()
    {
        // 132 = 3 × 44 = 4 × 33 = 11 × 12, so 2, 3 and 6 pieces fill 2/3 + 3/4 + 6/11 = 1.96 bars; all 84 ways to divide them among two bars fail.
        var problem = Problem([Line("10", 44, 2), Line("20", 33, 3), Line("30", 12, 6)], [Bar("bar", 132, null)], kerf: 0);
        var nest = new ColumnNester().Solve(problem, Effort.Standard, CancellationToken.None);

        Assert.Equal(3, nest.Layouts.Sum(layout => layout.Repeat));
        Assert.Equal(nest.ValueMicros, nest.BoundMicros);
    }

    private static NestProblem SmallOrder(Random random) => Problem(
        [.. Enumerable.Range(0, random.Next(2, 6)).Select(i => Line($"{i}", random.Next(300, 3_000), random.Next(1, 5)))],
        [
            .. Enumerable.Range(0, random.Next(0, 4)).Select(i => Bar($"remnant {i}", random.Next(800, 5_000), 1) with { CostMicros = random.Next(1_000_000, 5_000_000) }),
            Bar("short", 6_000, null),
            Bar("long", random.Next(2) == 0 ? 6_500 : 12_000, null),
        ],
        Kerf);

    private static NestProblem Problem(IReadOnlyList<OrderLine> lines, IReadOnlyList<StockItem> stock, int kerf) =>
        new() { Lines = lines, Stock = stock, Rules = new() { Kerf = Mm(kerf) } };

    /// <summary>How many of each piece are cut from each single bar; equal bars are used in order.</summary>
    private static long LeastCost(NestProblem problem, long knownCost)
    {
        var model = new CpModel();
        var bars = problem.Stock.SelectMany(item => Enumerable.Repeat(item, item.Quantity ?? (int)(knownCost / item.CostMicros))).ToList();
        var used = bars.Select(bar => model.NewBoolVar(bar.StockId)).ToList();
        var counts = bars.Select(_ => problem.Lines.Select(line => model.NewIntVar(0, line.Quantity, line.Ref.LineId)).ToList()).ToList();
        for (var i = 0; i < bars.Count; i++)
        {
            // A bar may be used up to its last piece, so that one kerf less than pieces is enough.
            model.Add(LinearExpr.WeightedSum(counts[i], problem.Lines.Select(line => Micrometers(line.Length) + Kerf * 1000L)) <= (Micrometers(bars[i].Length) + Kerf * 1000L) * used[i]);
            if (i > 0 && bars[i - 1] == bars[i])
                model.AddImplication(used[i], used[i - 1]);
        }
        for (var line = 0; line < problem.Lines.Count; line++)
            model.Add(LinearExpr.Sum(counts.Select(count => count[line])) == problem.Lines[line].Quantity);
        model.Minimize(LinearExpr.WeightedSum(used, bars.Select(bar => bar.CostMicros)));
        using var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return bars.Where((_, i) => solver.BooleanValue(used[i])).Sum(bar => bar.CostMicros);
    }

    private static long Micrometers(SawEngine.Core.Quantities.Length length) => length.Nanometers / 1000;
}
