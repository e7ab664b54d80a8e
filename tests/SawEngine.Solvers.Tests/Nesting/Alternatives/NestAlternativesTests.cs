using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Nesting.Alternatives;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using SawEngine.Tests.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting.Alternatives;

/// <summary>Known answers by hand; kerf and tail are nil.</summary>
public class NestAlternativesTests
{
    [Fact]
    public void Three_remnants_are_used_where_a_bar_is_a_little_cheaper()
    {
        var problem = Problem([Line("P", 1_000, 3)], [Bar("B", 3_000, null), Remnant("R1", 1_000, 1_010), Remnant("R2", 1_000, 1_010), Remnant("R3", 1_000, 1_010)]);
        var (cheapest, other) = Both(problem, NestKind.MostRemnantsUsed);
        Assert.Equal(["B"], cheapest.Layouts.Select(layout => layout.Stock.StockId));
        Assert.Equal(["R1", "R2", "R3"], other!.Layouts.Select(layout => layout.Stock.StockId));
        Assert.Equal(Mm(3_030).Nanometers, other.ValueMicros);
    }

    [Fact]
    public void Remnants_that_cost_more_than_a_twentieth_are_left()
    {
        var problem = Problem([Line("P", 1_000, 3)], [Bar("B", 3_000, null), Remnant("R1", 1_000, 1_100), Remnant("R2", 1_000, 1_100), Remnant("R3", 1_000, 1_100)]);
        Assert.Null(Both(problem, NestKind.MostRemnantsUsed).Other);
    }

    [Fact]
    public void One_long_bar_takes_the_place_of_two_short_ones()
    {
        var problem = Problem([Line("P", 3_000, 2)], [Bar("LONG", 6_000, 1), Bar("SHORT", 3_000, 2) with { CostMicros = Mm(2_900).Nanometers }]);
        var (cheapest, other) = Both(problem, NestKind.FewestBars);
        Assert.Equal(Mm(5_800).Nanometers, cheapest.ValueMicros);
        Assert.Equal(["LONG"], other!.Layouts.Select(layout => layout.Stock.StockId));
        Assert.Equal(Mm(6_000).Nanometers, other.ValueMicros);
    }

    [Fact]
    public void A_bar_of_the_right_length_leaves_no_new_remnant()
    {
        var problem = Problem([Line("P", 2_000, 1)], [Bar("B3", 3_000, 1), Bar("B2", 2_000, 1) with { CostMicros = Mm(2_050).Nanometers }]) with { Remnants = new(Mm(500), 1m) };
        var (cheapest, other) = Both(problem, NestKind.FewestNewRemnants);
        Assert.Equal(["B3"], cheapest.Layouts.Select(layout => layout.Stock.StockId));
        Assert.Equal(["B2"], other!.Layouts.Select(layout => layout.Stock.StockId));
        Assert.Equal(Mm(2_050).Nanometers, other.ValueMicros);
    }

    [Fact]
    public void No_other_nest_is_given_where_the_cheapest_is_best_in_its_kind()
    {
        var problem = Problem([Line("P", 2_000, 3)], [Bar("B", 6_000, null)]);
        Assert.All(Enum.GetValues<NestKind>(), kind => Assert.Null(Both(problem, kind).Other));
    }

    [Fact]
    public void Alternatives_of_random_problems_are_verified_better_in_their_kind_and_within_a_twentieth()
    {
        var found = Enum.GetValues<NestKind>().ToDictionary(kind => kind, _ => 0);
        for (var seed = 0; seed < 40; seed++)
        {
            var problem = RandomProblem.Of(seed, mostLines: 6, mostQuantity: 20, mostStock: 6);
            foreach (var kind in Enum.GetValues<NestKind>())
            {
                var (cheapest, other) = Both(problem, kind);
                if (other is null)
                    continue;
                found[kind]++;
                Assert.Empty(NestVerifier.Verify(problem, other));
                Assert.Equal(cheapest.Unplaced, other.Unplaced);
                Assert.True(NestAlternatives.Measure(kind, other) <= NestAlternatives.Measure(kind, cheapest));
                Assert.True((NestAlternatives.Measure(kind, other), other.ValueMicros).CompareTo((NestAlternatives.Measure(kind, cheapest), cheapest.ValueMicros)) < 0);
                Assert.True(other.ValueMicros - cheapest.ValueMicros <= NestAlternatives.MostDearer * Math.Abs(cheapest.ValueMicros), $"seed {seed}");
                Assert.True(other.BoundMicros <= other.ValueMicros);
            }
        }
        Assert.True(found.Values.Sum() > 3, string.Join(", ", found));
    }

    [Fact]
    public void Pieces_a_little_shorter_save_a_bar()
    {
        // Two of 2010 mm on a bar, three of 2000 mm; an eighth of 20 mm on the grid of both units is 2.4892 mm, and five of these are more than 10 mm.
        var miss = Assert.Single(NearMisses(Problem([Line("P", 2_010, 6)], [Bar("B", 6_000, null)]), new(Mm(20), 0, false)));
        Assert.Equal((NearMissChange.Shorter, new PieceRef("", "P"), Mm(12.4968m)), (miss.Change, miss.Piece, miss.ShorterBy));
        Assert.Equal((1, Mm(6_000).Nanometers, 0), (miss.BarsSaved, miss.CostSavedMicros, miss.MorePlaced));
    }

    [Fact]
    public void One_piece_fewer_saves_a_bar()
    {
        var miss = Assert.Single(NearMisses(Problem([Line("P", 2_000, 7)], [Bar("B", 6_000, null)]), new(Length.Zero, 3, false)));
        Assert.Equal((NearMissChange.Fewer, 1, 1L), (miss.Change, miss.FewerBy, miss.BarsSaved));
    }

    [Fact]
    public void One_more_bar_places_the_piece_that_is_left_out()
    {
        var miss = Assert.Single(NearMisses(Problem([Line("P", 2_900, 2)], [Bar("B", 3_000, 1)]), new(Length.Zero, 0, true)));
        Assert.Equal((NearMissChange.OneMoreBar, "B", 1L), (miss.Change, miss.StockId, miss.MorePlaced));
    }

    /// <summary>Zones are measured on a single bar: the request in which there are two of it is refused.</summary>
    [Fact]
    public void There_is_no_other_bar_with_the_same_zones()
    {
        var zoned = Bar("B", 3_000, 1) with { Zones = [new(Mm(2_950), Mm(2_960), ZoneKind.Defective)] };
        Assert.Empty(NearMisses(Problem([Line("P", 2_900, 2)], [zoned]), new(Length.Zero, 0, true)));
    }

    [Fact]
    public void Changes_that_save_nothing_are_not_listed() =>
        Assert.Empty(NearMisses(Problem([Line("P", 2_000, 6)], [Bar("B", 6_000, 2)]), new(Mm(20), 2, true)));

    private static IReadOnlyList<NearMiss> NearMisses(NestProblem problem, NearMissLimits limits)
    {
        var nester = new ColumnNester();
        return new NearMissSearch(nester).Of(problem, nester.Solve(problem, Effort.Standard, CancellationToken.None), limits, CancellationToken.None);
    }

    private static (Nest Cheapest, Nest? Other) Both(NestProblem problem, NestKind kind)
    {
        var nester = new ColumnNester();
        var cheapest = nester.Solve(problem, Effort.Quick, CancellationToken.None);
        return (cheapest, new NestAlternatives(nester).Of(problem, cheapest, kind, Effort.Quick, CancellationToken.None));
    }

    private static NestProblem Problem(IReadOnlyList<OrderLine> lines, IReadOnlyList<StockItem> stock) =>
        new() { Lines = lines, Stock = [.. stock.OrderBy(item => item.StockId, StringComparer.Ordinal)], Rules = new() { Kerf = Length.Zero } };

    private static StockItem Remnant(string stockId, decimal millimeters, decimal cost) => Bar(stockId, millimeters, 1) with { Kind = StockKind.Remnant, CostMicros = Mm(cost).Nanometers };
}
