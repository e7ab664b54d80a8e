using CsCheck;
using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;
using static SawEngine.Solvers.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

/// <summary>What every nester keeps.</summary>
public abstract class NesterContract
{
    /// <summary>The nester under test.</summary>
    protected abstract INester Nester { get; }

    [Fact]
    public void Random_problems_are_nested_clean() =>
        Gen.Int[0, int.MaxValue - 1].Sample(
            seed =>
            {
                var problem = RandomProblem.Of(seed, mostLines: 12, mostQuantity: 20, mostStock: 8);
                Assert.Empty(NestVerifier.Verify(problem, Solve(problem)));
            },
            iter: 400);

    [Fact]
    public void Same_problem_gives_the_same_nest()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var problem = RandomProblem.Of(seed, 12, 20, 8);
            Assert.Equal(NestText.Of(Solve(problem)), NestText.Of(Solve(problem)));
        }
    }

    [Fact]
    public void Order_of_the_lists_does_not_matter()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var problem = RandomProblem.Of(seed, 12, 20, 8);
            var reversed = problem with { Lines = [.. problem.Lines.Reverse()], Stock = [.. problem.Stock.Reverse()] };
            Assert.Equal(NestText.Of(Solve(problem)), NestText.Of(Solve(reversed)));
        }
    }

    [Fact]
    public void Millimeters_and_inches_give_the_same_nest()
    {
        // 1/64 in = 0.396875 mm; kerf 0.063 in = 1.6002 mm; all exact.
        var inMillimeters = Twin(sixtyFourths => Mm(0.396875m * sixtyFourths), Mm(1.6002m));
        var inInches = Twin(sixtyFourths => In(sixtyFourths / 64m), In(0.063m));

        Assert.Equal(NestText.Of(Solve(inMillimeters)), NestText.Of(Solve(inInches)));
    }

    [Fact]
    public void Canceled_search_returns_a_clean_nest()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        for (var seed = 0; seed < 20; seed++)
        {
            var problem = RandomProblem.Of(seed, 12, 20, 8);
            var nest = Nester.Solve(problem, Effort.Standard, source.Token);
            Assert.Empty(NestVerifier.Verify(problem, nest));
            Assert.NotEqual(StoppedBy.Effort, nest.StoppedBy);
        }
    }

    [Fact]
    public void Nothing_is_nested_from_no_stock()
    {
        var nest = Solve(new() { Lines = [Line("10", 100, 3)], Stock = [], Rules = new() { Kerf = Mm(2) } });

        Assert.Empty(nest.Layouts);
        Assert.Equal([new UnplacedPieces(new("", "10"), 3, UnplacedReason.NoStock)], nest.Unplaced);
        Assert.Equal((0, 0), (nest.ValueMicros, nest.BoundMicros));
    }

    [Fact]
    public void No_lines_give_an_empty_proved_nest()
    {
        var nest = Solve(new() { Lines = [], Stock = [Bar("B", 6000, 1)], Rules = new() { Kerf = Mm(2) } });

        Assert.Empty(nest.Layouts);
        Assert.Equal(StoppedBy.Proof, nest.StoppedBy);
    }

    [Fact]
    public void No_layout_comes_twice()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var texts = Solve(RandomProblem.Of(seed, 12, 20, 8)).Layouts.Select(layout => $"{layout.Stock.StockId}: {string.Join(", ", layout.Cuts)}, {layout.Remainder.Kind}").ToList();
            Assert.Equal(texts.Count, texts.Distinct().Count());
        }
    }

    [Fact]
    public void Open_lines_are_counted_right_and_never_more_than_in_the_order_of_stock()
    {
        var fewer = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var nest = Solve(RandomProblem.Of(seed, 12, 20, 8));
            var byStock = OpenAtOnce([.. nest.Layouts.OrderBy(layout => layout.Stock.StockId, StringComparer.Ordinal)]);
            Assert.Equal(OpenAtOnce(nest.Layouts), nest.MostOpenLines);
            Assert.True(nest.MostOpenLines <= byStock, $"seed {seed}: {nest.MostOpenLines}, by stock {byStock}");
            fewer += nest.MostOpenLines < byStock ? 1 : 0;
        }
        Assert.True(fewer > 3, $"fewer in {fewer} of 60");
    }

    [Fact]
    public void Equal_square_pieces_follow_each_other()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            foreach (var layout in Solve(RandomProblem.Of(seed, 12, 20, 8)).Layouts.Where(layout => layout.Cuts.All(cut => cut.StartCut.IsSquare && cut.EndCut.IsSquare)))
            {
                var lengths = layout.Cuts.Select(cut => cut.End - cut.Start).ToList();
                Assert.Equal(lengths.OrderDescending(), lengths);
            }
        }
    }

    /// <summary>Lines that were begun, this layout's included, and have pieces on this layout or one behind it; the most of all layouts.</summary>
    private static int OpenAtOnce(IReadOnlyList<BarLayout> layouts)
    {
        var lines = layouts.Select(layout => layout.Cuts.Select(cut => cut.Piece).ToHashSet()).ToList();
        return Enumerable.Range(0, lines.Count)
            .Select(now => lines.Take(now + 1).SelectMany(of => of).Intersect(lines.Skip(now).SelectMany(of => of)).Count())
            .DefaultIfEmpty().Max();
    }

    protected Nest Solve(NestProblem problem) => Nester.Solve(problem, Effort.Quick, CancellationToken.None);

    private static NestProblem Twin(Func<int, Length> length, Length kerf) => new()
    {
        Lines = [.. new[] { 3061, 2150, 1225, 801 }.Select((size, i) => Line($"{i}", 1, 7 + i) with { Length = length(size) })],
        Stock = [.. new[] { 15360, 7680, 5003 }.Select((size, i) => Bar($"B{i}", 1, i == 2 ? 2 : null) with { Length = length(size), CostMicros = size })],
        Rules = new() { Kerf = kerf, Tail = length(320) },
    };
}
