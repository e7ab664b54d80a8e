using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Tests.Nesting.Afterwards;

public class LayoutMergingTests
{
    private const long Ample = 2_000_000;

    [Fact]
    public void Two_layouts_become_one_where_their_pieces_divide_evenly()
    {
        // 2 × (4 + 0) and 2 × (0 + 2) hold 8 of 1000 and 4 of 2500; all four bars can hold 2 + 1.
        var merged = Merge([new(0, [4, 0], 2), new(0, [0, 2], 2)], Lengths(6000), [1000, 2500]);

        var layout = Assert.Single(merged);
        Assert.Equal((0, 4), (layout.Stock, layout.Repeat));
        Assert.Equal([2, 1], layout.Counts);
    }

    [Fact]
    public void Three_layouts_become_two()
    {
        // 3 of 3000, 9 of 2000, 3 of 1000 on five bars of 6000. No two layouts do with one, nor all three: 3 of 3000 divide neither by 2, 4 nor 5.
        // Repeats 1 and 4: all 3 of 3000 on one bar are 9000. Repeats 2 and 3: one 3000 and one 1000 on three bars each, which leaves room for one 2000: three on the other two.
        CountedLayout[] given = [new(0, [1, 0, 3], 1), new(0, [2, 0, 0], 1), new(0, [0, 3, 0], 3)];

        var merged = Merge(given, Lengths(6000), [3000, 2000, 1000]);

        Assert.Equal([(2, "0 3 0"), (3, "1 1 1")], merged.Select(layout => (layout.Repeat, string.Join(' ', layout.Counts))));
    }

    [Fact]
    public void Equal_layouts_become_one()
    {
        var merged = Merge([new(0, [1, 1], 3), new(0, [1, 1], 4)], Lengths(6000), [3500, 2500]);

        Assert.Equal(7, Assert.Single(merged).Repeat);
    }

    [Fact]
    public void Layouts_of_one_stock_merge_through_those_of_another()
    {
        // On either stock type the number of longer pieces is odd, so its two layouts do not become one; together there are four of each piece on two bars of each.
        CountedLayout[] given = [new(0, [1, 1], 1), new(0, [0, 2], 1), new(1, [1, 1], 1), new(1, [2, 0], 1)];

        var merged = Merge(given, Lengths(5900, 9000), [2990, 2910]);

        Assert.Equal(2, merged.Count);
        AssertSame(given, merged, Lengths(5900, 9000), [2990, 2910]);
    }

    [Fact]
    public void Merge_that_costs_more_is_not_made()
    {
        CountedLayout[] given = [new(0, [4, 0], 2), new(0, [0, 2], 2)];
        // A bar that mixes the two types costs one more.
        decimal Cost(int stock, IReadOnlyList<int> counts) => counts.All(count => count > 0) ? 11 : 10;

        Assert.Equal(given, LayoutMerging.Merge(given, (_, counts) => counts[0] * 1000 + counts[1] * 2500 <= 6000, Cost, Ample, CancellationToken.None));
    }

    [Fact]
    public void Pieces_bars_cost_and_feasibility_hold_for_random_layouts()
    {
        var (before, after) = (0, 0);
        for (var seed = 1; seed <= 150; seed++)
        {
            var (layouts, stock, pieces) = RandomLayouts(seed);

            var merged = Merge(layouts, stock, pieces);

            AssertSame(layouts, merged, stock, pieces);
            before += layouts.Count;
            after += merged.Count;
        }
        Assert.True(after < before * 3 / 4, $"{before} layouts became {after}");
    }

    [Fact]
    public void Two_into_one_and_three_into_two_are_found_whenever_they_exist()
    {
        var merges = 0;
        for (var seed = 1; seed <= 200; seed++)
        {
            var (all, stock, pieces) = RandomLayouts(seed, mostRepeat: 3);
            foreach (var size in new[] { 2, 3 })
            {
                var given = all.Where(layout => layout.Stock == 0).Take(size).ToList();
                if (given.Count < size)
                    continue;
                var least = Exhaustive(given, stock[0], pieces);
                Assert.True(Merge(given, stock, pieces).Count == least, $"seed {seed}, {size} layouts");
                merges += least < size ? 1 : 0;
            }
        }
        Assert.True(merges > 50, $"{merges} merges");
    }

    [Fact]
    public void Without_budget_or_once_canceled_the_layouts_stay()
    {
        CountedLayout[] given = [new(0, [4, 0], 2), new(0, [0, 2], 2)];
        using var canceled = new CancellationTokenSource();
        canceled.Cancel();

        Assert.Equal(given, LayoutMerging.Merge(given, (_, _) => true, (_, _) => 1, 0, CancellationToken.None));
        Assert.Equal(given, LayoutMerging.Merge(given, (_, _) => true, (_, _) => 1, Ample, canceled.Token));
        Assert.Empty(LayoutMerging.Merge([], (_, _) => true, (_, _) => 1, Ample, CancellationToken.None));
        Assert.Throws<ArgumentOutOfRangeException>(() => LayoutMerging.Merge([new(0, [1], 0)], (_, _) => true, (_, _) => 1, Ample, CancellationToken.None));
    }

    private static int[] Lengths(params int[] stock) => stock;

    private static IReadOnlyList<CountedLayout> Merge(IReadOnlyList<CountedLayout> layouts, int[] stock, int[] pieces) =>
        LayoutMerging.Merge(layouts, (bar, counts) => Used(counts, pieces) <= stock[bar], (bar, counts) => Cost(bar, counts, stock, pieces), Ample, CancellationToken.None);

    private static int Used(IReadOnlyList<int> counts, int[] pieces) => counts.Zip(pieces, (count, piece) => count * piece).Sum();

    /// <summary>The bar less half of a remainder of at least 1000.</summary>
    private static decimal Cost(int bar, IReadOnlyList<int> counts, int[] stock, int[] pieces)
    {
        var left = stock[bar] - Used(counts, pieces);
        return stock[bar] - (left >= 1000 ? left / 2m : 0);
    }

    private static void AssertSame(IReadOnlyList<CountedLayout> given, IReadOnlyList<CountedLayout> merged, int[] stock, int[] pieces)
    {
        foreach (var type in Enumerable.Range(0, pieces.Length))
            Assert.Equal(given.Sum(layout => layout.Repeat * layout.Counts[type]), merged.Sum(layout => layout.Repeat * layout.Counts[type]));
        foreach (var bar in Enumerable.Range(0, stock.Length))
            Assert.Equal(given.Where(layout => layout.Stock == bar).Sum(layout => layout.Repeat), merged.Where(layout => layout.Stock == bar).Sum(layout => layout.Repeat));
        Assert.All(merged, layout => Assert.True(layout.Repeat > 0 && layout.Counts.All(count => count >= 0) && Used(layout.Counts, pieces) <= stock[layout.Stock]));
        Assert.True(merged.Sum(layout => layout.Repeat * Cost(layout.Stock, layout.Counts, stock, pieces)) <= given.Sum(layout => layout.Repeat * Cost(layout.Stock, layout.Counts, stock, pieces)));
        Assert.True(merged.Count <= given.Count);
    }

    private static (List<CountedLayout> Layouts, int[] Stock, int[] Pieces) RandomLayouts(int seed, int mostRepeat = 6)
    {
        var random = new Random(seed);
        int[] stock = [6000, 7500];
        var pieces = Enumerable.Range(0, random.Next(2, 5)).Select(_ => random.Next(4, 30) * 100).ToArray();
        var layouts = new List<CountedLayout>();
        for (var count = random.Next(3, 9); count > 0; count--)
        {
            var bar = random.Next(stock.Length);
            var counts = new int[pieces.Length];
            for (var tries = 0; tries < 12; tries++)
            {
                var type = random.Next(pieces.Length);
                counts[type]++;
                if (Used(counts, pieces) > stock[bar])
                    counts[type]--;
            }
            layouts.Add(new CountedLayout(bar, counts, random.Next(1, mostRepeat + 1)));
        }
        return (layouts, stock, pieces);
    }

    /// <summary>The fewest layouts, at most one less than given: every layout that fits is tried with every repeat, the rest must be one layout.</summary>
    private static int Exhaustive(List<CountedLayout> given, int length, int[] pieces)
    {
        var totals = pieces.Select((_, type) => given.Sum(layout => layout.Repeat * layout.Counts[type])).ToArray();
        var bars = given.Sum(layout => layout.Repeat);
        var limit = given.Sum(layout => layout.Repeat * Cost(0, layout.Counts, [length], pieces));
        decimal? One(int[] left, int repeat)
        {
            if (left.Any(total => total < 0 || total % repeat != 0))
                return null;
            var counts = left.Select(total => total / repeat).ToArray();
            return Used(counts, pieces) <= length ? repeat * Cost(0, counts, [length], pieces) : null;
        }
        if (One(totals, bars) <= limit)
            return 1;
        if (given.Count == 2)
            return 2;
        var all = AllCounts(length, pieces, 0).ToList();
        for (var repeat = 1; repeat < bars; repeat++)
        {
            foreach (var counts in all)
            {
                if (One([.. totals.Select((total, type) => total - repeat * counts[type])], bars - repeat) + repeat * Cost(0, counts, [length], pieces) <= limit)
                    return 2;
            }
        }
        return 3;
    }

    private static IEnumerable<int[]> AllCounts(int length, int[] pieces, int from)
    {
        if (from == pieces.Length)
            return [[]];
        return Enumerable.Range(0, length / pieces[from] + 1).SelectMany(count => AllCounts(length - count * pieces[from], pieces, from + 1).Select(rest => (int[])[count, .. rest]));
    }
}
