using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting;
using SawEngine.Solvers.Nesting.Pricing;
using SawEngine.Tests.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

public class NestPropertyTests
{
    [Fact]
    public void Nests_of_random_problems_have_all_properties()
    {
        var compared = new Dictionary<string, int>();
        for (var seed = 0; seed < 500; seed++)
            Assert.Equal([], NestProperties.Faults(seed, compared).Select(fault => $"seed {seed}: {fault}"));
        // Properties are worth something only where they had something to compare.
        foreach (var property in new[] { "scaled", "more stock", "other effort", "canceled" })
            Assert.True(compared[property] > 100, $"{property}: {compared[property]} compared");
    }

    /// <summary>Cells of rounded grids once depended on the unit of length.</summary>
    [Fact]
    public void Fine_grids_give_the_same_nest_in_another_unit() => Assert.Equal([], NestProperties.Faults(1930, []));

    [Fact]
    public void Pieces_that_just_fit_in_scarce_bars_are_placed_where_greedy_rules_leave_some()
    {
        var (greedyLeaves, leaves) = (0, 0);
        for (var seed = 0; seed < 20; seed++)
        {
            var problem = Scarce(new(seed));
            var greedy = new GreedyNester().Solve(problem, Effort.Standard, CancellationToken.None).Unplaced.Sum(row => row.Quantity);
            var nest = new ColumnNester().Solve(problem, Effort.Quick, CancellationToken.None);
            Assert.Empty(NestVerifier.Verify(problem, nest));
            var left = nest.Unplaced.Sum(row => row.Quantity);
            Assert.True(left <= greedy, $"seed {seed}: {left} left, {greedy} by greedy rules");
            greedyLeaves += greedy > 0 ? 1 : 0;
            leaves += left > 0 ? 1 : 0;
        }
        Assert.True(greedyLeaves >= 5 && leaves <= greedyLeaves / 2, $"greedy rules leave pieces in {greedyLeaves} of 20, the search in {leaves}");
    }

    /// <summary>A number for each nanometer of such a bar would be gigabytes.</summary>
    [Fact]
    public void Long_bars_on_the_finest_grid_take_little_memory()
    {
        var random = new Random(1);
        var problem = new NestProblem
        {
            Lines = [.. Enumerable.Range(0, 20).Select(i => Line($"{i:00}", 1, 20) with { Length = new(20_000_000 + random.Next(600_000_000)) })],
            Stock = [Bar("B", 2_000, null)],
            Rules = new() { Kerf = Mm(0) },
        };
        var before = GC.GetAllocatedBytesForCurrentThread();
        var nest = new ColumnNester().Solve(problem, Effort.Quick, CancellationToken.None);

        Assert.Empty(NestVerifier.Verify(problem, nest));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 400_000_000);
    }

    /// <summary>Owners and plants of their own make a table for each set of pieces that can lie together.</summary>
    [Fact]
    public void Tables_of_many_sets_of_pieces_are_the_coarser()
    {
        static int Cells(int plants)
        {
            var problem = new NestProblem
            {
                Lines = [.. Enumerable.Range(0, plants).Select(i => Line($"{i:000}", 500 + i, 100) with { Plant = $"P{i}" })],
                Stock = [.. Enumerable.Range(0, plants).Select(i => Bar($"S{i:000}", 6_000 + i, 100) with { Plant = $"P{i}", ForeignPlantCostMicros = 1_000_000 + i })],
                Rules = new() { Kerf = Mm(2) },
            };
            var model = NestModel.Of(problem, line => line.Quantity, new Dictionary<PieceRef, string>());
            var (types, stock) = model.Parts().Single();
            return FillTables.MostCells(new(model, types, stock, LayoutCost.Of(problem), new(CancellationToken.None)));
        }

        Assert.True(Cells(4) > 131_072);
        Assert.True(Cells(200) < Cells(4) / 20);
    }

    /// <summary>Bars that are cut up at random, with 0.5 % waste.</summary>
    private static NestProblem Scarce(Random random)
    {
        var lines = new List<OrderLine>();
        foreach (var length in new[] { 1000, 900, 750 })
        {
            for (var bar = 0; bar < 6; bar++)
            {
                var room = length * 995 / 1000;
                while (room >= 200)
                {
                    var piece = room < 400 ? room : random.Next(200, Math.Min(600, room - 199));
                    lines.Add(Line($"{lines.Count:000}", piece, 1));
                    room -= piece;
                }
            }
        }
        return new() { Lines = lines, Stock = [Bar("A", 1000, 6), Bar("B", 900, 6), Bar("C", 750, 6)], Rules = new() { Kerf = Mm(0) } };
    }
}
