using SawEngine.Core;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

/// <summary>Known answers by hand: two pieces of 2900 mm go on a bar of 6000 mm, and no piece of another line beside them.</summary>
public class SubstituteTests
{
    private static readonly Grade S235 = Steel("S235JR");
    private static readonly Grade S275 = Steel("S275JR");
    private static readonly Grade S355 = Steel("S355J2");

    public static TheoryData<INester> Nesters => [new GreedyNester(), new ColumnNester()];

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Substitute_is_cut_only_for_the_line_that_allows_it(INester nester)
    {
        var nest = Solve(nester, [Pieces("A", 2, S355), Pieces("B", 2)], [Bars("own", S235, 1, 100), Bars("other", S355, 2, 100)]);

        Assert.Empty(nest.Unplaced);
        Assert.Equal(["other: A A", "own: B B"], Text(nest));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void What_no_line_allows_is_never_cut(INester nester)
    {
        var nest = Solve(nester, [Pieces("A", 4, S275), Pieces("B", 2)], [Bars("own", S235, 1, 100), Bars("other", S355, 9, 1)]);

        Assert.Equal(["own: 1"], nest.Layouts.Select(layout => $"{layout.Stock.StockId}: {layout.Repeat}"));
        Assert.Equal(4, nest.Unplaced.Sum(row => row.Quantity));
        Assert.All(nest.Unplaced, row => Assert.Equal(UnplacedReason.StockUsedUp, row.Reason));
    }

    [Theory]
    [InlineData(99, 100, "own: A A")]
    [InlineData(100, 99, "other: A A")]
    [InlineData(99, 99, "own: A A")]
    public void What_costs_less_is_cut(decimal own, decimal other, string layout)
    {
        var nest = Solve(new ColumnNester(), [Pieces("A", 2, S355)], [Bars("own", S235, 1, own), Bars("other", S355, 1, other)]);

        Assert.Equal([layout], Text(nest));
        Assert.Equal((StoppedBy.Proof, 99_000_000), (nest.StoppedBy, nest.ValueMicros));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Own_grade_is_cut_first_at_equal_cost_whatever_its_id(INester nester) =>
        Assert.Equal(["a: A A", "z: A A"], Text(Solve(nester, [Pieces("A", 4, S355)], [Bars("a", S235, 1, 99), Bars("b", S355, 3, 99), Bars("z", S235, 1, 99)])));

    [Fact]
    public void Lines_of_two_grades_share_a_bar_that_both_allow()
    {
        var nest = Solve(new ColumnNester(), [Pieces("A", 1, S355), Pieces("B", 1) with { Grade = S275, Substitutes = [S355] }], [Bars("own", S235, 1, 100), Bars("other", S355, 1, 120), Bars("third", S275, 1, 100)]);

        Assert.Equal(["other: A B"], Text(nest));
        Assert.Equal((StoppedBy.Proof, 120_000_000), (nest.StoppedBy, nest.ValueMicros));
    }

    [Fact]
    public void Line_of_a_substitutes_own_grade_goes_before_where_its_priority_is_higher()
    {
        var nest = Solve(new ColumnNester(), [Pieces("A", 2, S355), Pieces("B", 2) with { Grade = S355, Priority = 1 }], [Bars("other", S355, 1, 100)]);

        Assert.Equal(["other: B B"], Text(nest));
        Assert.Equal([new UnplacedPieces(new("", "A"), 2, UnplacedReason.HigherPriority)], nest.Unplaced);
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Without_stock_of_grade_or_substitute_the_reason_says_so(INester nester)
    {
        var nest = Solve(nester, [Pieces("A", 2, S275), Pieces("B", 2, S355)], [Bars("other", S355, 1, 100)]);

        Assert.Equal(["other: B B"], Text(nest));
        Assert.Equal([new UnplacedPieces(new("", "A"), 2, UnplacedReason.NoStock)], nest.Unplaced);
    }

    [Fact]
    public void A_single_heat_is_single_over_grades_too()
    {
        var line = Pieces("A", 4, S355) with { HeatRule = HeatRule.Single };
        StockItem[] stock = [Bars("own", S235, 1, 100) with { Heat = "H1" }, Bars("other", S355, 1, 100) with { Heat = "H2" }, Bars("third", S355, 2, 150) with { Heat = "H3" }];

        Assert.Equal(["third: A A"], Text(Solve(new ColumnNester(), [line], stock)));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Remnants_are_limited_for_each_grade(INester nester)
    {
        // Each of the six pieces leaves a long remainder on a bar of its own.
        StockItem[] stock = [Bars("own", S235, 3, 100), Bars("other", S355, 3, 100)];
        var problem = Problem([Pieces("A", 3) with { Length = Mm(4000) }, Pieces("B", 3, S235) with { Grade = S355, Length = Mm(4000) }], stock) with { Remnants = new(Mm(500), 0.5m) { MostNew = 1 } };

        var nest = nester.Solve(problem, Effort.Standard, CancellationToken.None);

        Assert.Empty(NestVerifier.Verify(problem, nest));
        Assert.Equal([("other", 1), ("own", 1)], nest.Layouts.Where(layout => layout.Remainder.Kind == RemainderKind.Remnant).Select(layout => (layout.Stock.StockId, layout.Repeat)).Order());
    }

    private static OrderLine Pieces(string lineId, int quantity, params Grade[] substitutes) => Line(lineId, 2900, quantity) with { Grade = S235, Substitutes = [.. substitutes] };

    private static StockItem Bars(string stockId, Grade grade, int quantity, decimal cost) => Bar(stockId, 6000, quantity) with { Grade = grade, CostMicros = (long)(cost * 1_000_000m) };

    private static NestProblem Problem(IReadOnlyList<OrderLine> lines, IReadOnlyList<StockItem> stock) => new() { Lines = lines, Stock = stock, Rules = new() { Kerf = Mm(2) } };

    private static Nest Solve(INester nester, IReadOnlyList<OrderLine> lines, IReadOnlyList<StockItem> stock)
    {
        var problem = Problem(lines, stock);
        var nest = nester.Solve(problem, Effort.Standard, CancellationToken.None);
        Assert.Empty(NestVerifier.Verify(problem, nest));
        return nest;
    }

    private static IEnumerable<string> Text(Nest nest) =>
        nest.Layouts.Select(layout => $"{layout.Stock.StockId}: {string.Join(' ', layout.Cuts.Select(cut => cut.Piece.LineId).Order(StringComparer.Ordinal))}").Order(StringComparer.Ordinal);
}
