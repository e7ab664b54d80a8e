using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Tests.Nesting.Afterwards;

public class RemnantGatheringTests
{
    private const long Ample = 1_000_000;

    [Fact]
    public void Two_remnants_become_one()
    {
        // 6000 less 4500 and 6000 less 3 × 1500 leave 1500 twice; one more 1500 beside the 4500 leaves 3000 on the other bar.
        var gathered = Gather([new(0, [1, 0]), new(0, [0, 3])], [6000], [4500, 1500], kerf: 0);

        Assert.Equal(["1 1", "0 2"], Text(gathered));
    }

    [Fact]
    public void Exchange_of_pieces_gathers_where_no_piece_can_move()
    {
        // 3000 + 1800 leaves 1200, 2500 + 2500 leaves 1000: no piece fits into either. 3000 + 2500 and 1800 + 2500 leave 500, not kept, and 1700.
        // That credits 1700 instead of 2200, so the cost is higher unless remnants have no value.
        FilledBar[] bars = [new(0, [1, 1, 0]), new(0, [0, 0, 2])];
        int[] pieces = [3000, 1800, 2500];

        Assert.Equal(Text(bars), Text(Gather(bars, [6000], pieces, kerf: 0)));
        var free = RemnantGathering.Gather(bars, (_, counts) => End(6000, counts, pieces, 0) is { } end ? end with { Cost = 6000 } : null, Ample, CancellationToken.None);
        Assert.Equal(["0 1 1", "1 0 1"], Text(free));
    }

    [Fact]
    public void Scraps_gather_into_a_remnant()
    {
        // 2 × 2000 + 2 × 680 and 2000 + 5 × 680 on 6000 leave 640 and 600, both scrap. 3 × 2000 fills one bar; 7 × 680 leaves 1240 on the other.
        var gathered = Gather([new(0, [2, 2]), new(0, [1, 5])], [6000], [2000, 680], kerf: 0);

        Assert.Equal(["3 0", "0 7"], Text(gathered));
    }

    [Fact]
    public void Bar_left_without_pieces_is_saved()
    {
        var gathered = Gather([new(0, [2]), new(0, [1])], [6000], [2000], kerf: 0);

        Assert.Equal(["3"], Text(gathered));
    }

    [Fact]
    public void Pieces_and_fit_hold_and_cost_then_remnants_then_longest_remainder_are_no_worse_for_random_bars()
    {
        var (fewer, longer) = (0, 0);
        for (var seed = 1; seed <= 120; seed++)
        {
            var (bars, stock, pieces) = RandomBars(seed);

            var kerf = Kerf(seed);
            var gathered = Gather(bars, stock, pieces, kerf);

            foreach (var type in Enumerable.Range(0, pieces.Length))
                Assert.Equal(bars.Sum(bar => bar.Counts[type]), gathered.Sum(bar => bar.Counts[type]));
            Assert.All(gathered, bar => Assert.True(bar.Counts.All(count => count >= 0) && bar.Counts.Any(count => count > 0)));
            Assert.All(Enumerable.Range(0, stock.Length), type => Assert.True(gathered.Count(bar => bar.Stock == type) <= bars.Count(bar => bar.Stock == type)));
            var (old, now) = (Ends(bars, stock, pieces, kerf), Ends(gathered, stock, pieces, kerf));
            var (was, value) = (Value(old), Value(now));
            Assert.True(value.CompareTo(was) <= 0, $"seed {seed}: {was} became {value}");
            fewer += value.Remnants < was.Remnants ? 1 : 0;
            longer += value.Shorter < was.Shorter ? 1 : 0;
        }
        Assert.True(fewer > 25 && longer > 30, $"{fewer} with fewer remnants, {longer} with a longer one");
    }

    [Fact]
    public void Two_bars_of_two_pieces_end_as_well_as_in_the_best_of_all_divisions()
    {
        var better = 0;
        for (var seed = 1; seed <= 300; seed++)
        {
            var random = new Random(seed);
            var pieces = Enumerable.Range(0, 4).Select(_ => random.Next(2, 9) * 500).ToArray();
            FilledBar[] bars = [new(0, [1, 1, 0, 0]), new(1, [0, 0, 1, 1])];
            int[] stock = [pieces[0] + pieces[1] + random.Next(1, 7) * 500, pieces[2] + pieces[3] + random.Next(1, 7) * 500];

            var value = Value(Ends(Gather(bars, stock, pieces, kerf: 0), stock, pieces, kerf: 0));

            var best = Enumerable.Range(0, 16).Select(chosen => Enumerable.Range(0, 4).Select(type => chosen >> type & 1).ToArray())
                .Select(first => (FilledBar[])[new(0, first), new(1, [.. first.Select(count => 1 - count)])])
                .Where(division => division.All(bar => End(stock[bar.Stock], bar.Counts, pieces, 0) is not null))
                .Min(division => Value(Ends(division.Where(bar => bar.Counts.Sum() > 0), stock, pieces, kerf: 0)));
            Assert.True(value == best, $"seed {seed}: {value}, best {best}");
            better += value.CompareTo(Value(Ends(bars, stock, pieces, kerf: 0))) < 0 ? 1 : 0;
        }
        Assert.True(better > 100, $"{better} improved");
    }

    [Fact]
    public void Without_budget_or_once_canceled_the_bars_stay()
    {
        FilledBar[] bars = [new(0, [1, 0]), new(0, [0, 3])];
        using var canceled = new CancellationTokenSource();
        canceled.Cancel();
        BarEnd? OfBar(int stock, IReadOnlyList<int> counts) => End(6000, counts, [4500, 1500], 0);

        Assert.Equal(bars, RemnantGathering.Gather(bars, OfBar, 0, CancellationToken.None));
        Assert.Equal(bars, RemnantGathering.Gather(bars, OfBar, Ample, canceled.Token));
        Assert.Empty(RemnantGathering.Gather([], OfBar, Ample, CancellationToken.None));
        Assert.Throws<ArgumentException>(() => RemnantGathering.Gather([new(0, [2, 0])], OfBar, Ample, CancellationToken.None));
    }

    private static IEnumerable<string> Text(IEnumerable<FilledBar> bars) => bars.Select(bar => string.Join(' ', bar.Counts));

    private static IReadOnlyList<FilledBar> Gather(IReadOnlyList<FilledBar> bars, int[] stock, int[] pieces, long kerf) =>
        RemnantGathering.Gather(bars, (type, counts) => End(stock[type], counts, pieces, kerf), Ample, CancellationToken.None);

    /// <summary>A kerf after each piece; a remainder from 1000 is kept and credited at its length.</summary>
    private static BarEnd? End(long length, IReadOnlyList<int> counts, int[] pieces, long kerf)
    {
        var left = length - counts.Zip(pieces, (count, piece) => count * (piece + kerf)).Sum();
        return left < 0 ? null : new BarEnd(length - (left >= 1000 ? left : 0), left, left >= 1000);
    }

    private static List<BarEnd> Ends(IEnumerable<FilledBar> bars, int[] stock, int[] pieces, long kerf) =>
        [.. bars.Select(bar => End(stock[bar.Stock], bar.Counts, pieces, kerf)!.Value)];

    private static long Kerf(int seed) => seed % 2 == 0 ? 3 : 0;

    private static (decimal Cost, int Remnants, long Shorter) Value(List<BarEnd> ends) =>
        (ends.Sum(end => end.Cost), ends.Count(end => end.IsRemnant), -ends.Max(end => end.IsRemnant ? end.Remainder : 0));

    private static (List<FilledBar> Bars, int[] Stock, int[] Pieces) RandomBars(int seed)
    {
        var random = new Random(seed);
        int[] stock = [6000, 7500];
        // Without kerf and with lengths in steps of half a meter bars are often filled to the end.
        var kerf = Kerf(seed);
        var pieces = Enumerable.Range(0, random.Next(3, 7)).Select(_ => kerf == 0 ? random.Next(1, 7) * 500 : random.Next(50, 350) * 10).ToArray();
        var bars = new List<FilledBar>();
        for (var number = random.Next(2, 9); number > 0; number--)
        {
            var bar = new FilledBar(random.Next(stock.Length), new int[pieces.Length]);
            var counts = new int[pieces.Length];
            counts[random.Next(pieces.Length)]++;
            for (var tries = random.Next(1, 8); tries > 0; tries--)
            {
                var type = random.Next(pieces.Length);
                counts[type]++;
                if (End(stock[bar.Stock], counts, pieces, kerf) is null)
                    counts[type]--;
            }
            bars.Add(bar with { Counts = counts });
        }
        return (bars, stock, pieces);
    }
}
