using SawEngine.Solvers.Nesting.Proof;

namespace SawEngine.Solvers.Tests.Nesting.Proof;

public class PackedCountsTests
{
    [Fact]
    public void Taking_agrees_with_counting()
    {
        var random = new Random(1);
        for (var i = 0; i < 2_000; i++)
        {
            var most = Enumerable.Range(0, random.Next(1, 20)).Select(_ => random.Next(1, 30)).ToArray();
            var counts = PackedCounts.For(most)!;
            var (from, taken) = (most.Select(one => random.Next(one + 1)).ToArray(), most.Select(one => random.Next(3) == 0 ? random.Next(one + 1) : 0).ToArray());
            var values = most.Select(_ => (long)random.Next(100)).ToArray();
            var (packedFrom, packedTaken) = (Packed(counts, from), Packed(counts, taken));

            Assert.Equal(from.Zip(taken).All(pair => pair.First >= pair.Second), counts.TryTake(packedFrom, packedTaken, out var rest));
            if (counts.TryTake(packedFrom, packedTaken, out _))
                Assert.Equal(from.Zip(taken, (a, b) => a - b), counts.Unpack(rest));
            var (left, missing) = counts.TakeThere(packedFrom, packedTaken, values);
            Assert.Equal(from.Zip(taken, (a, b) => Math.Max(0, a - b)), counts.Unpack(left));
            Assert.Equal(from.Zip(taken, (a, b) => Math.Max(0L, b - a)).Zip(values, (a, b) => a * b).Sum(), missing);
            if (from.Any(count => count > 0))
                Assert.Equal(Array.FindIndex(from, count => count > 0), counts.FirstOf(packedFrom));
        }
    }

    [Fact]
    public void Counts_that_take_more_than_128_bits_are_not_packed()
    {
        Assert.NotNull(PackedCounts.For(Enumerable.Repeat(127, 16).ToArray()));
        Assert.Null(PackedCounts.For(Enumerable.Repeat(127, 17).ToArray()));
    }

    private static UInt128 Packed(PackedCounts counts, int[] values) => counts.Pack(values.Select((value, type) => (type, value)));
}
