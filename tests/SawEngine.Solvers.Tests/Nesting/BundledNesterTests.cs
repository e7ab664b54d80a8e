using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using SawEngine.Tests.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

public class BundledNesterTests : NesterContract
{
    protected override INester Nester { get; } = new BundledNester(new ColumnNester());

    [Fact]
    public void Fifteen_bars_four_wide_and_two_high_take_two_cycles()
    {
        // 6000 - 4 x 1481.6 = 73.6 with a tail of 60: four pieces a bar, 15 bars, four passes each: 15 x 50 + 2 x 4 x 2.
        var nest = Solve(Tubes());
        var layout = Assert.Single(nest.Layouts);
        Assert.Equal((15, CutBundle.Full(4, 2), 2), (layout.Repeat, layout.Bundle, layout.Cycles));
        Assert.Equal(766_000_000, nest.ValueMicros);
        // A pass of a bar costs at least an eighth of a pass: 15 x 50 + 60 x 0.25.
        Assert.Equal(765_000_000, nest.BoundMicros);
        Assert.Empty(NestVerifier.Verify(Tubes(), nest));
    }

    [Fact]
    public void Fewest_bars_that_take_as_few_cycles_are_cut_together()
    {
        // Six bars, four at a time, take two cycles; so do three and three.
        var problem = Tubes() with { Lines = [Line("10", 1480, 24)], Rules = Tubes().Rules with { Bundle = new(4, 1) } };
        var layout = Assert.Single(Solve(problem).Layouts);
        Assert.Equal((6, CutBundle.Full(3, 1), 2), (layout.Repeat, layout.Bundle, layout.Cycles));
    }

    [Fact]
    public void Remnants_and_what_is_cut_once_are_cut_singly()
    {
        var problem = Tubes() with { Stock = [.. Enumerable.Range(1, 15).Select(i => Bar($"R{i:00}", 6000, 1) with { Kind = StockKind.Remnant })] };
        var nest = Solve(problem);
        Assert.Equal(15, nest.Layouts.Count);
        Assert.All(nest.Layouts, layout => Assert.Equal(CutBundle.Single, layout.Bundle));
    }

    [Fact]
    public void Certified_bars_whose_heats_are_lost_are_cut_singly()
    {
        var problem = Tubes();
        var certified = problem with { Stock = [problem.Stock[0] with { Certificate = Core.Orders.Certificate.Type31 }] };
        Assert.Equal(CutBundle.Single, Assert.Single(Solve(certified).Layouts).Bundle);
        var oneHeat = problem with { Stock = [certified.Stock[0] with { Heat = "H1" }] };
        Assert.Equal(8, Assert.Single(Solve(oneHeat).Layouts).Bundle.Bars);
    }

    [Fact]
    public void Bundling_never_costs_more_and_its_bound_holds()
    {
        var (compared, cheaper) = (0, 0);
        for (var seed = 0; seed < 300; seed++)
        {
            var problem = RandomProblem.Of(seed, mostLines: 3, mostQuantity: 20, mostStock: 4);
            problem = problem with { CostPerCutMicros = 1_000_000 * (seed % 4 + 1) };
            var (bundled, single) = (Solve(problem), new ColumnNester().Solve(problem, Effort.Quick, CancellationToken.None));
            if (!bundled.Unplaced.SequenceEqual(single.Unplaced))
                continue;
            Assert.True(bundled.ValueMicros <= single.ValueMicros, $"seed {seed}: {bundled.ValueMicros} bundled, {single.ValueMicros} singly");
            Assert.True(bundled.BoundMicros <= bundled.ValueMicros);
            compared++;
            cheaper += bundled.ValueMicros < single.ValueMicros ? 1 : 0;
        }
        Assert.True(compared > 250 && cheaper > 10, $"{compared} compared, {cheaper} cheaper");
    }

    private static NestProblem Tubes() => new()
    {
        Lines = [Line("10", 1480, 60)],
        Stock = [Bar("B", 6000, 30) with { CostMicros = 50_000_000 }],
        Rules = new() { Kerf = Mm(1.6m), Tail = Mm(60), Bundle = new(4, 2) { HoldDown = true } },
        CostPerCutMicros = 2_000_000,
    };
}
