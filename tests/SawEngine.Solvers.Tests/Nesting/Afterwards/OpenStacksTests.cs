using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Tests.Nesting.Afterwards;

public class OpenStacksTests
{
    private const long Ample = 10_000_000;

    [Fact]
    public void Chain_of_lines_keeps_two_open()
    {
        // Layouts 0-1, 2-3, 1-2, 3-4 in a shuffled order: the chain 0-1-2-3-4 is cut from one end.
        int[][] layouts = [[0, 1], [2, 3], [1, 2], [3, 4]];

        var order = OpenStacks.Order(layouts, Ample, CancellationToken.None);

        Assert.Equal((2, true), (order.LargestOpen, order.Proved));
        Assert.Equal([0, 2, 1, 3], order.Order);
    }

    [Fact]
    public void Largest_open_is_never_above_that_of_any_permutation_and_is_reached()
    {
        var larger = 0;
        for (var seed = 1; seed <= 160; seed++)
        {
            var layouts = RandomLayouts(seed, layouts: 2 + seed % 6, lines: 3 + seed % 8, most: 4);

            var order = OpenStacks.Order(layouts, Ample, CancellationToken.None);

            Assert.Equal(Enumerable.Range(0, layouts.Length), order.Order.Order());
            Assert.True(order.Proved, $"seed {seed}");
            Assert.Equal(Open(layouts, order.Order), order.LargestOpen);
            var least = Permutations(layouts.Length).Min(permutation => Open(layouts, permutation));
            Assert.True(least == order.LargestOpen, $"seed {seed}: least {least}, found {order.LargestOpen}");
            larger += Open(layouts, [.. Enumerable.Range(0, layouts.Length)]) > least ? 1 : 0;
        }
        Assert.True(larger > 40, $"the given order is worse in {larger} cases only");
    }

    [Fact]
    public void Order_of_many_layouts_equals_the_best_over_all_sets_of_closed_lines()
    {
        // Independent optimum: dynamic program over all sets of layouts cut already.
        for (var seed = 1; seed <= 25; seed++)
        {
            var layouts = RandomLayouts(seed, layouts: 14, lines: 12, most: 3);

            var order = OpenStacks.Order(layouts, Ample, CancellationToken.None);

            Assert.Equal((LeastOverLayoutSets(layouts), true), (order.LargestOpen, order.Proved));
        }
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Grid_of_lines_keeps_one_more_than_its_side_open(int side)
    {
        // The pathwidth of an n × n grid is n (Ellis and Warren 2008), so n + 1 lines are open at once.
        var order = OpenStacks.Order(Grid(side), Ample, CancellationToken.None);

        Assert.Equal((side + 1, true), (order.LargestOpen, order.Proved));
    }

    [Fact]
    public void Grid_of_more_than_128_lines_is_ordered_within_its_bound()
    {
        var grid = Grid(12);

        var order = OpenStacks.Order(grid, 300_000, CancellationToken.None);

        Assert.InRange(order.LowerBound, 3, 13);
        Assert.InRange(order.LargestOpen, 13, 16);
        Assert.Equal(Open(grid, order.Order), order.LargestOpen);
    }

    [Fact]
    public void Lines_apart_are_not_open_together()
    {
        int[][] layouts = [[0, 1, 2], [10, 11], [2, 3], [11, 12], [900]];

        var order = OpenStacks.Order(layouts, Ample, CancellationToken.None);

        Assert.Equal((3, 3), (order.LargestOpen, order.LowerBound));
    }

    [Fact]
    public void Layout_within_another_is_cut_beside_it()
    {
        int[][] layouts = [[0, 1, 2], [3, 4], [0, 2], [2, 3], [1]];

        var order = OpenStacks.Order(layouts, Ample, CancellationToken.None).Order.ToList();

        var places = new[] { 0, 2, 4 }.Select(layout => order.IndexOf(layout)).ToList();
        Assert.Equal(2, places.Max() - places.Min());
    }

    [Fact]
    public void Limit_is_answered_yes_no_or_unknown()
    {
        // Every two of five lines share a layout: all five are open at once, whatever the order.
        var complete = Pairs(5);

        Assert.False(OpenStacks.Order(complete, Ample, CancellationToken.None, limit: 4).Within(4));
        Assert.True(OpenStacks.Order(complete, Ample, CancellationToken.None, limit: 5).Within(5));
        for (var seed = 1; seed <= 60; seed++)
        {
            var layouts = RandomLayouts(seed, layouts: 12, lines: 12, most: 3);
            var least = LeastOverLayoutSets(layouts);
            for (var limit = 1; limit <= 12; limit++)
            {
                Assert.Equal(limit >= least, OpenStacks.Order(layouts, Ample, CancellationToken.None, limit).Within(limit));
            }
        }
        var wide = RandomLayouts(3, layouts: 60, lines: 60, most: 5);
        var starved = OpenStacks.Order(wide, 1, CancellationToken.None);
        Assert.Null(starved.Within(starved.LargestOpen - 1));
    }

    [Fact]
    public void Without_budget_the_order_is_whole_and_its_bound_holds()
    {
        var layouts = RandomLayouts(7, layouts: 40, lines: 40, most: 4);
        var ample = OpenStacks.Order(layouts, 3_000_000, CancellationToken.None);

        using var canceled = new CancellationTokenSource();
        canceled.Cancel();
        foreach (var order in new[] { OpenStacks.Order(layouts, 1, CancellationToken.None), OpenStacks.Order(layouts, Ample, canceled.Token) })
        {
            Assert.Equal(Enumerable.Range(0, 40), order.Order.Order());
            Assert.Equal(Open(layouts, order.Order), order.LargestOpen);
            Assert.True(order.LowerBound <= ample.LargestOpen && order.LargestOpen >= ample.LowerBound);
            Assert.False(order.Proved);
        }
    }

    [Fact]
    public void Same_layouts_give_the_same_order()
    {
        var layouts = RandomLayouts(11, layouts: 30, lines: 30, most: 4);

        var (one, another) = (OpenStacks.Order(layouts, 50_000, CancellationToken.None), OpenStacks.Order(layouts, 50_000, CancellationToken.None));

        Assert.Equal(one.Order, another.Order);
        Assert.Equal(one.Steps, another.Steps);
    }

    [Fact]
    public void Nothing_and_empty_layouts_are_ordered()
    {
        Assert.Equal((0, 0), (OpenStacks.Order([], Ample, CancellationToken.None).LargestOpen, OpenStacks.Order([], Ample, CancellationToken.None).LowerBound));
        var order = OpenStacks.Order(new int[][] { [], [4], [] }, Ample, CancellationToken.None);
        Assert.Equal([0, 1, 2], order.Order.Order());
        Assert.Equal(1, order.LargestOpen);
    }

    private static int[][] Grid(int side) =>
        [.. from line in Enumerable.Range(0, side * side) from next in new[] { 1, side } where next == 1 ? line % side < side - 1 : line + side < side * side select new[] { line, line + next }];

    private static int[][] Pairs(int lines) =>
        [.. from one in Enumerable.Range(0, lines) from other in Enumerable.Range(0, lines) where one < other select new[] { one, other }];

    internal static int[][] RandomLayouts(int seed, int layouts, int lines, int most)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, layouts).Select(_ => Enumerable.Range(0, random.Next(1, most + 1)).Select(_ => random.Next(lines)).ToArray())];
    }

    /// <summary>Counted from the definition: a line is open from its first to its last layout.</summary>
    private static int Open(int[][] layouts, IReadOnlyList<int> order)
    {
        var sequence = order.Select(layout => layouts[layout]).ToList();
        var lines = layouts.SelectMany(layout => layout).Distinct().ToList();
        return Enumerable.Range(0, order.Count).Max(time => lines.Count(line =>
            sequence.FindIndex(layout => layout.Contains(line)) <= time && sequence.FindLastIndex(layout => layout.Contains(line)) >= time));
    }

    private static int LeastOverLayoutSets(int[][] layouts)
    {
        var masks = layouts.Select(layout => layout.Aggregate(0L, (mask, line) => mask | 1L << line)).ToArray();
        var least = new int[1 << layouts.Length];
        for (var cut = 1; cut < least.Length; cut++)
        {
            least[cut] = int.MaxValue;
            for (var last = 0; last < layouts.Length; last++)
            {
                if ((cut >> last & 1) == 0)
                    continue;
                var (begun, ahead) = (0L, masks[last]);
                for (var layout = 0; layout < layouts.Length; layout++)
                {
                    if ((cut >> layout & 1) != 0)
                        begun |= masks[layout];
                    else
                        ahead |= masks[layout];
                }
                least[cut] = Math.Min(least[cut], Math.Max(least[cut & ~(1 << last)], System.Numerics.BitOperations.PopCount((ulong)(begun & ahead))));
            }
        }
        return least[^1];
    }

    private static IEnumerable<int[]> Permutations(int count)
    {
        if (count == 0)
            return [[]];
        return Permutations(count - 1).SelectMany(rest => Enumerable.Range(0, count).Select(at => (int[])[.. rest[..at], count - 1, .. rest[at..]]));
    }
}
