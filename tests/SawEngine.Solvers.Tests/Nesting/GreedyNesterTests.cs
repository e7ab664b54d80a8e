using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

public class GreedyNesterTests
{
    [Theory]
    // Kerf boundary cases: 8 pieces from bars of 6000 where the last kerf may run out of the bar
    // (assembled; optima by integer programming over all layouts).
    [InlineData(0, 1500, 2)]
    [InlineData(2, 1500, 3)]
    [InlineData(2, 1498.5, 2)]
    [InlineData(3, 1498.5, 3)]
    [InlineData(3, 1498, 3)]
    public void Kerf_decides_how_many_bars_are_needed(double kerf, double length, int bars)
    {
        var nest = Solve(Bars(6000, (decimal)kerf, ((decimal)length, 8)));

        Assert.Equal(bars, nest.Layouts.Sum(layout => layout.Repeat));
        Assert.Equal(StoppedBy.Proof, nest.StoppedBy);
    }

    public static TheoryData<string, decimal, decimal, (decimal, int)[], int> Textbook => new()
    {
        // Chvátal, Linear Programming (1983), ch. 13 (from memory): optimum 453.
        { "Paper rolls", 100, 0, [(45, 97), (36, 610), (31, 395), (14, 211)], 453 },
        // Winston, Operations Research, column generation (lecture-note copy): optimum 19.
        { "Boards", 17, 0, [(9, 15), (5, 20), (3, 25)], 19 },
        // Exercise of Ragsdale's kind (secondary): optimum 2167.
        { "Lumber yard", 25, 0, [(11, 300), (9, 1200), (7, 5000)], 2167 },
        // Textbook exercise (secondary): optimum 54.
        { "Lumber", 20, 0, [(10, 70), (8, 15), (4, 25), (3, 50)], 54 },
        // Textbook exercise (secondary): optimum 77.
        { "Reels", 100, 0, [(60, 30), (48, 50), (36, 25), (24, 90)], 77 },
        // Assembled, optimum by enumeration: first-fit decreasing needs 3.
        { "First fit is not best", 100, 0, [(39, 2), (33, 1), (28, 1), (23, 2)], 2 },
        // Assembled, optimum by integer programming: 10.
        { "Kerf 2", 6000, 2, [(2450, 8), (1720, 12), (980, 10), (640, 6)], 10 },
        // Thirteen widths of a paper machine (encyclopedia, secondary): optimum 73.
        {
            "Paper machine", 5600, 0,
            [
                (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18),
                (2200, 20),
            ],
            73
        },
    };

    [Theory]
    [MemberData(nameof(Textbook))]
    public void Known_optimum_lies_between_bound_and_value_and_is_missed_by_a_bar_at_most(string name, decimal bar, decimal kerf, (decimal, int)[] pieces, int optimum)
    {
        var problem = Bars(bar, kerf, pieces);
        var nest = Solve(problem);
        var least = optimum * Mm(bar).Nanometers;

        Assert.Empty(NestVerifier.Verify(problem, nest));
        Assert.True(nest.BoundMicros <= least && least <= nest.ValueMicros, name);
        Assert.True(nest.ValueMicros <= least + Mm(bar).Nanometers, $"{name}: {nest.ValueMicros / Mm(bar).Nanometers} bars, {optimum} suffice");
    }

    [Fact]
    public void Subset_that_fills_the_bar_is_found_where_first_fit_misses_it()
    {
        var nest = Solve(Bars(100, 0, (39, 2), (33, 1), (28, 1), (23, 2)));

        Assert.Equal(2, nest.Layouts.Sum(layout => layout.Repeat));
        Assert.Equal(StoppedBy.Proof, nest.StoppedBy);
    }

    [Fact]
    public void Free_remnants_save_new_stock()
    {
        // Assembled, optimum by integer programming: 48 000 of new stock beside three remnants.
        var problem = Bars(6000, 2, (2450, 8), (1720, 12), (980, 10), (640, 6));
        problem = problem with
        {
            Stock =
            [
                .. problem.Stock, Bar("B12", 12000, null),
                Remnant("R1", 3150), Remnant("R2", 3150), Remnant("R3", 2600),
            ],
        };
        var nest = Solve(problem);

        Assert.InRange(nest.ValueMicros, Mm(48000).Nanometers, Mm(54000).Nanometers);
        Assert.True(nest.BoundMicros <= Mm(48000).Nanometers);
    }

    [Fact]
    public void Two_stock_lengths_are_chosen_at_least_cost()
    {
        // Assembled, optimum by integer programming: 24 000.
        var problem = Bars(6000, 3, (3400, 3), (2300, 4), (1150, 2));
        var nest = Solve(problem with { Stock = [.. problem.Stock, Bar("B7", 7000, null)] });

        Assert.Equal(Mm(24000).Nanometers, nest.ValueMicros);
        Assert.Equal(StoppedBy.Proof, nest.StoppedBy);
    }

    [Fact]
    public void Layout_moves_to_the_cheapest_bar_that_takes_it()
    {
        var nest = Solve(Bars(6000, 0, (1000, 1)) with { Stock = [Bar("LONG", 6000, null), Bar("SHORT", 1200, 1)] });

        Assert.Equal("SHORT", Assert.Single(nest.Layouts).Stock.StockId);
    }

    [Fact]
    public void Part_longer_than_every_bar_is_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 5999, 2), UnplacedReason.LongerThanEveryBar, 2);

    [Fact]
    public void Part_of_a_section_that_is_not_offered_is_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 100, 2) with { Section = Rectangle.Of("SHS 100", 100, 100, 1900) }, UnplacedReason.NoStock, 2);

    [Fact]
    public void Part_with_a_higher_certificate_than_offered_is_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 100, 2) with { Certificate = Certificate.Type32 }, UnplacedReason.NoCertificate, 2);

    [Fact]
    public void Part_of_a_heat_that_is_not_there_is_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 100, 2) with { HeatRule = HeatRule.Named, Heat = "H9" }, UnplacedReason.NoHeat, 2);

    [Fact]
    public void Parts_beyond_what_the_bars_give_are_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 1900, 10), UnplacedReason.StockUsedUp, 1);

    [Fact]
    public void Parts_that_no_single_heat_gives_are_placed_from_the_best_one_and_the_rest_is_unplaced_with_reason()
    {
        // Heat H1 gives 2 × 3, heat H2 3; lost heat gives none.
        AssertUnplaced(Line("10", 1900, 8) with { HeatRule = HeatRule.Single }, UnplacedReason.NoSingleHeat, 2);
    }

    [Fact]
    public void Part_shorter_than_the_saw_cuts_is_unplaced_with_reason() =>
        AssertUnplaced(Line("10", 40, 2), UnplacedReason.PieceTooShort, 2);

    [Fact]
    public void Single_heat_line_takes_the_cheapest_heat_that_suffices()
    {
        var problem = Stocked(Line("10", 1900, 3) with { HeatRule = HeatRule.Single });
        var nest = Solve(problem with { Stock = [.. problem.Stock.Select(item => item with { CostMicros = item.Heat == "H2" ? 1_000_000 : 2_000_000 })] });

        Assert.Equal("H2", Assert.Single(nest.Layouts).Stock.Heat);
    }

    [Fact]
    public void Urgent_pieces_gather_on_few_bars()
    {
        // Three orders of three equal pieces, three to a bar: each bar serves one order, the most urgent first.
        var problem = Bars(3000, 0, (1000, 1)) with
        {
            Lines = [.. new[] { "A", "B", "C" }.Select(order => Line("10", 1000, 3) with { Ref = new(order, "10") })],
            Due = new Dictionary<string, DateTimeOffset> { ["C"] = new(2026, 12, 1, 0, 0, 0, TimeSpan.Zero), ["A"] = new(2026, 12, 2, 0, 0, 0, TimeSpan.Zero) },
        };
        var nest = Solve(problem);

        Assert.Equal(["C", "A", "B"], nest.Layouts.Select(layout => Assert.Single(layout.Cuts.Select(cut => cut.Piece.OrderId).Distinct())));
    }

    [Fact]
    public void Late_pieces_are_the_ones_left_where_bars_run_out()
    {
        var problem = Bars(3000, 0, (1000, 1)) with
        {
            Lines = [.. new[] { "A", "B" }.Select(order => Line("10", 1000, 3) with { Ref = new(order, "10") })],
            Stock = [Bar("B", 3000, 1)],
            Due = new Dictionary<string, DateTimeOffset> { ["B"] = new(2026, 12, 1, 0, 0, 0, TimeSpan.Zero) },
        };

        Assert.Equal([new UnplacedPieces(new("A", "10"), 3, UnplacedReason.StockUsedUp)], Solve(problem).Unplaced);
    }

    [Fact]
    public void Equal_bars_are_one_layout_with_a_repeat()
    {
        var layout = Assert.Single(Solve(Bars(6000, 0, (1500, 4000))).Layouts);

        Assert.Equal(1000, layout.Repeat);
    }

    [Fact]
    public void Miters_in_two_planes_do_not_share_a_bar_on_a_saw_that_swivels()
    {
        var beam = Rectangle.Of("IPE 200", 100, 200, 2848);
        var problem = new NestProblem
        {
            Lines = [Line("10", 1000, 1) with { Section = beam, SecondEnd = WidthMiter(30) }, Line("20", 1000, 1) with { Section = beam, SecondEnd = HeightMiter(30) }],
            Stock = [Bar("A", 6000, null) with { Section = beam }],
            Rules = new() { Kerf = Mm(1.6m), Capacity = new(Mm(400), Mm(400), Mm(400)), MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(45)) },
        };

        Assert.Equal(2, Solve(problem).Layouts.Sum(layout => layout.Repeat));
        Assert.Equal(1, Solve(problem with { Rules = new() { Kerf = Mm(1.6m) } }).Layouts.Sum(layout => layout.Repeat));
    }

    [Fact]
    public void Plain_pieces_leave_certified_bars_to_certified_work()
    {
        // Two bars; only one has a certificate, and only the plain bar is dearer.
        var problem = Bars(3000, 0, (1000, 1)) with
        {
            Lines = [Line("10", 2000, 1), Line("20", 1900, 1) with { Certificate = Certificate.Type31 }],
            Stock = [Bar("CERT", 3000, 1) with { Heat = "H1", Certificate = Certificate.Type31 }, Bar("PLAIN", 3000, 1) with { CostMicros = Mm(4000).Nanometers }],
        };

        Assert.Empty(Solve(problem).Unplaced);
    }

    private static void AssertUnplaced(OrderLine line, string reason, int quantity)
    {
        var problem = Stocked(line);
        var nest = Solve(problem);

        Assert.Empty(NestVerifier.Verify(problem, nest));
        Assert.Equal([new UnplacedPieces(line.Ref, quantity, reason)], nest.Unplaced);
    }

    /// <summary>Two bars of heat H1, one of H2 and one that lost its heat, 6000 long, with tail 100.</summary>
    private static NestProblem Stocked(OrderLine line) => new()
    {
        Lines = [line],
        Stock =
        [
            Bar("A", 6000, 2) with { Heat = "H1", Certificate = Certificate.Type31 },
            Bar("B", 6000, 1) with { Heat = "H2", Certificate = Certificate.Type22 },
            Remnant("C", 1000),
        ],
        Rules = new() { Kerf = Mm(2), Tail = Mm(100), ShortestPiece = Mm(50) },
    };

    private static NestProblem Bars(decimal bar, decimal kerf, params (decimal Length, int Quantity)[] pieces) => new()
    {
        Lines = [.. pieces.Select((piece, i) => Line($"{i:00}", piece.Length, piece.Quantity))],
        Stock = [Bar("A", bar, null)],
        Rules = new() { Kerf = Mm(kerf) },
    };

    private static StockItem Remnant(string stockId, decimal length) => Bar(stockId, length, 1) with { Kind = StockKind.Remnant, CostMicros = 0 };

    private static Nest Solve(NestProblem problem) => new GreedyNester().Solve(problem, Effort.Quick, CancellationToken.None);

    [Fact]
    public void Bar_is_brought_from_another_plant_only_where_that_pays()
    {
        NestProblem Needing(int pieces, long bringing) => new()
        {
            Lines = [Line("10", 2900, pieces) with { Plant = "south" }],
            Stock = [Bar("HERE", 6000, 2) with { Plant = "south" }, Bar("THERE", 6000, 9) with { Plant = "north", CostMicros = Mm(5000).Nanometers, ForeignPlantCostMicros = bringing }],
            Rules = new() { Kerf = Mm(2) },
        };
        static int Brought(Nest nest) => nest.Layouts.Where(layout => layout.Stock.StockId == "THERE").Sum(layout => layout.Repeat);

        Assert.Equal(0, Brought(Solve(Needing(4, Mm(1001).Nanometers))));
        Assert.Equal(2, Brought(Solve(Needing(4, Mm(999).Nanometers))));
        Assert.Equal(2 * Mm(5999).Nanometers, Solve(Needing(4, Mm(999).Nanometers)).ValueMicros);
        Assert.Equal(1, Brought(Solve(Needing(6, Mm(5000).Nanometers))));
    }

    [Theory]
    [InlineData("C-2", "south", "SO-1", UnplacedReason.OtherOwner)]
    [InlineData(null, "north", "SO-1", UnplacedReason.OtherPlant)]
    [InlineData(null, null, "SO-2", UnplacedReason.Reserved)]
    public void Pieces_that_others_stock_could_give_say_whose_it_is(string? owner, string? plant, string reservedFor, string reason)
    {
        var nest = Solve(new()
        {
            Lines = [Line("10", 1000, 2) with { Ref = new("SO-1", "10"), Owner = "C-1", Plant = "south" }],
            Stock = [Bar("B", 6000, 1) with { Owner = owner, Plant = plant, ReservedFor = [reservedFor] }],
            Rules = new() { Kerf = Mm(2) },
        });

        Assert.Equal([new UnplacedPieces(new("SO-1", "10"), 2, reason)], nest.Unplaced);
    }

    [Fact]
    public void Where_stock_is_short_the_line_of_lower_priority_goes_without_even_if_it_is_more_pieces()
    {
        var nest = Solve(new()
        {
            Lines = [Line("long", 5000, 1) with { Priority = 1 }, Line("short", 1000, 5)],
            Stock = [Bar("B", 6000, 1)],
            Rules = new() { Kerf = Mm(0) },
        });

        Assert.Equal([new UnplacedPieces(new("", "short"), 4, UnplacedReason.HigherPriority)], nest.Unplaced);
    }

    [Fact]
    public void Where_priorities_are_equal_the_later_promise_goes_without()
    {
        NestProblem Short(int first, int second) => new()
        {
            Lines = [Line("10", 3000, 1) with { Ref = new("SO-1", "10"), Priority = first }, Line("10", 2900, 1) with { Ref = new("SO-2", "10"), Priority = second }],
            Stock = [Bar("B", 3100, 1)],
            Rules = new() { Kerf = Mm(2) },
            Due = new Dictionary<string, DateTimeOffset> { ["SO-1"] = DateTimeOffset.UnixEpoch.AddDays(2), ["SO-2"] = DateTimeOffset.UnixEpoch.AddDays(1) },
        };

        Assert.Equal([new UnplacedPieces(new("SO-1", "10"), 1, UnplacedReason.StockUsedUp)], Solve(Short(5, 5)).Unplaced);
        Assert.Equal([new UnplacedPieces(new("SO-2", "10"), 1, UnplacedReason.HigherPriority)], Solve(Short(4, 5)).Unplaced);
    }
}
