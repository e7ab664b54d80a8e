using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting;
using SawEngine.Tests.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

public class NestBoundTests
{
    public static TheoryData<INester> Nesters => [new GreedyNester(), new ColumnNester()];

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Bound_is_never_above_the_least_cost_of_all_nests(INester nester)
    {
        var compared = new Dictionary<string, int>();
        for (var seed = 0; seed < 1_500; seed++)
            Assert.Equal([], NestProperties.FaultsOfBound(nester, seed, compared).Select(fault => $"seed {seed}: {fault}"));
        // The comparison is worth something only where most problems have pieces placed and many bounds meet the least cost.
        Assert.True(compared["bound"] > 800, $"{compared["bound"]} compared");
        Assert.True(compared["substitutes used"] > 100, $"{compared["substitutes used"]} with substitutes used");
        Assert.True(compared["bound met"] > compared["bound"] / 4, $"{compared["bound met"]} of {compared["bound"]} met");
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Three_bars_are_needed_where_the_linear_program_says_two(INester nester)
    {
        // 132 = 3 × 44 = 4 × 33 = 11 × 12, so 2, 3 and 6 pieces fill 2/3 + 3/4 + 6/11 = 1.96 bars; all 84 ways to divide them among two bars fail.
        var problem = Problem(132, 0, Line("10", 44, 2), Line("20", 33, 3), Line("30", 12, 6));
        var nest = nester.Solve(problem, Effort.Thorough, CancellationToken.None);

        Assert.Equal(3, nest.Layouts.Sum(layout => layout.Repeat));
        Assert.InRange(nest.BoundMicros, 1, nest.ValueMicros);
    }

    [Fact]
    public void Bound_is_not_above_the_least_cost_of_nests_whose_pieces_are_turned()
    {
        var (compared, gained) = (0, 0);
        for (var seed = 0; seed < 1_000; seed++)
        {
            var problem = RandomProblem.Of(seed, mostLines: 3, mostQuantity: 1, mostStock: 2);
            var nest = new ColumnNester().Solve(problem, Effort.Quick, CancellationToken.None);
            var placed = NestProperties.Placed(nest);
            if (placed.Count < 2 || ExhaustiveNest.LeastCost(problem, placed, withTurns: true) is not { } least)
                continue;
            Assert.True(nest.BoundMicros <= least, $"seed {seed}: bound {nest.BoundMicros}, least {least}");
            compared++;
            gained += least < ExhaustiveNest.LeastCost(problem, placed) ? 1 : 0;
        }
        Assert.True(compared > 150, $"{compared} compared");
        Assert.True(gained > 5, $"{gained} of {compared} gain by turns");
    }

    [Fact]
    public void Mitered_pieces_that_share_their_cuts_are_bounded_by_their_centerlines()
    {
        // Beam 100 wide. At 45° a kerf of 2 takes 2.8284, up 2.8321; 100 / 0.0127 = 7874.02 steps overlap, down 99.9998. Overall: 500 + 100, up 600.0125.
        // A piece takes 600.0125 + 2.8321 - 99.9998 = 502.8448. The first starts at its kerf, so 2.8321 - (2.8321 - 99.9998) / 2 = 51.41595 lie before its half gap,
        // and as much behind the last: 5131.28 hold ten (5028.448 + 102.8319 = 5131.2799). By overall lengths they would need 6000.
        var line = Line("10", 500, 10) with
        {
            Section = Rectangle.Of("IPE 200", 100, 200, 2848),
            LengthAt = LengthAt.Centerline,
            FirstEnd = WidthMiter(45),
            SecondEnd = WidthMiter(45),
        };
        var bars = new[] { 5131.28m, 5131.279m }.Select(length => Problem(length, 2, line) with { Stock = [Bar("A", length, null) with { Section = line.Section }] }).ToList();

        Assert.Equal([1, 2], bars.Select(problem => NestBound.Micros(problem, Placed(problem)) / problem.Stock[0].CostMicros));
        Assert.Equal([1, 2], bars.Select(problem => new GreedyNester().Solve(problem, Effort.Quick, CancellationToken.None).Layouts.Sum(layout => layout.Repeat)));
    }

    [Fact]
    public void Pieces_longer_than_half_a_bar_need_a_bar_each()
    {
        // Volume: 5 × 3100 / 6000 = 2.6 bars. Two of 3100 do not share 6000: 5 bars (bound L2 of Martello and Toth 1990).
        var problem = Problem(6000, 0, Line("10", 3100, 5));

        Assert.Equal(5 * Mm(6000).Nanometers, NestBound.Micros(problem, Placed(problem)));
    }

    [Fact]
    public void Long_pieces_leave_no_room_for_middling_ones()
    {
        // 3 of 4500 leave 1500 each, in which no 1600 fits; 4 of 1600 need two more bars (3 in one). Volume: 19 900 / 6000 = 3.3 bars.
        var problem = Problem(6000, 0, Line("10", 4500, 3), Line("20", 1600, 4));

        Assert.Equal(5 * Mm(6000).Nanometers, NestBound.Micros(problem, Placed(problem)));
    }

    [Fact]
    public void Bound_rises_to_the_next_sum_of_stock_costs()
    {
        // 22 166.67 is the bound of the linear relaxation; 6000 a + 7000 b reaches 24 000 next (assembled example, solved to optimality).
        var problem = Problem(6000, 3, Line("10", 3400, 3), Line("20", 2300, 4), Line("30", 1150, 2)) with { Stock = [Bar("A", 6000, null), Bar("B", 7000, null)] };

        Assert.Equal(Mm(24000).Nanometers, NestBound.Micros(problem, Placed(problem)));
    }

    [Fact]
    public void Credit_for_what_is_left_lowers_the_bound()
    {
        // One piece of 1000 from 6000: 5000 go back at 0.8 of their share, 6000 - 4000 = 2000.
        var problem = Problem(6000, 0, Line("10", 1000, 1)) with { Remnants = new(Mm(600), 0.8m) };
        var bound = NestBound.Micros(problem, Placed(problem));

        // Poured, two millionths may be lost to rounding, no more.
        Assert.InRange(bound, Mm(2000).Nanometers - 2, Mm(2000).Nanometers);
    }

    /// <summary>A tiny bar is no unit to measure a huge one in: that would be 1e9 sizes to look at.</summary>
    [Fact]
    public void Bars_of_very_unlike_lengths_are_bounded_with_little_work()
    {
        var problem = Problem(1_000_000, 0, Line("10", 0.001m, 2)) with { Stock = [Bar("A", 1_000_000, 1), Bar("B", 0.001m, 1)], Remnants = new(Mm(0), 0.9m) };
        var nest = new GreedyNester().Solve(problem, Effort.Quick, CancellationToken.None);

        Assert.InRange(nest.BoundMicros, 0, nest.ValueMicros);
    }

    [Fact]
    public void Parts_that_share_no_stock_are_bounded_apart()
    {
        // Poured together, 2 × 3000 would fill one bar; heats keep them apart.
        var first = Line("10", 3000, 1) with { HeatRule = HeatRule.Named, Heat = "H1" };
        var second = Line("20", 3000, 1) with { HeatRule = HeatRule.Named, Heat = "H2" };
        var problem = Problem(6000, 0, first, second) with { Stock = [Bar("A", 6000, 1) with { Heat = "H1" }, Bar("B", 6000, 1) with { Heat = "H2" }] };

        Assert.Equal(Mm(12000).Nanometers, NestBound.Micros(problem, Placed(problem)));
    }

    private static NestProblem Problem(decimal bar, decimal kerf, params OrderLine[] lines) =>
        new() { Lines = lines, Stock = [Bar("A", bar, null)], Rules = new() { Kerf = Mm(kerf) } };

    private static Dictionary<PieceRef, int> Placed(NestProblem problem) => problem.Lines.ToDictionary(line => line.Ref, line => line.Quantity);
}
