using CsCheck;
using SawEngine.Core.Costs;

namespace SawEngine.Core.Tests.Costs;

public class LargestRemainderTests
{
    [Fact]
    public void Three_equal_weights_share_ten_as_four_three_three() =>
        Assert.Equal([4L, 3L, 3L], LargestRemainder.Split(10, [1m, 1m, 1m]));

    // Hamilton's method on the 1790-style textbook example (weights 21, 34, 45 for 10 seats: quotas 2.1, 3.4, 4.5): from memory.
    [Fact]
    public void Seats_go_to_the_largest_remainders() =>
        Assert.Equal([2L, 3L, 5L], LargestRemainder.Split(10, [21m, 34m, 45m]));

    [Fact]
    public void Zero_weights_share_equally() =>
        Assert.Equal([1L, 1L], LargestRemainder.Split(2, [0m, 0m]));

    [Fact]
    public void Negative_totals_add_up_too() =>
        Assert.Equal(-7L, LargestRemainder.Split(-7, [1m, 2m, 3m]).Sum());

    [Fact]
    public void Cents_add_up_to_the_rounded_sum() =>
        Assert.Equal([0.34m, 0.33m, 0.33m], LargestRemainder.Round([1m / 3, 1m / 3, 1m / 3], 0.01m));

    [Fact]
    public void Shares_add_up_and_are_within_one_of_exact() =>
        Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Int[0, 10_000].Array[1, 20]).Sample((total, weights) =>
        {
            var asDecimal = weights.Select(w => (decimal)w).ToArray();
            var shares = LargestRemainder.Split(total, asDecimal);
            var sum = asDecimal.Sum();
            Assert.Equal(total, shares.Sum());
            for (var i = 0; sum > 0 && i < shares.Length; i++)
                Assert.True(Math.Abs(shares[i] - total * asDecimal[i] / sum) <= 1m);
        });
}
