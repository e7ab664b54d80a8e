using CsCheck;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.Saws;

public sealed class CutBundleTests
{
    [Theory]
    [InlineData(6, 3, 2)]
    [InlineData(5, 3, 2)]
    [InlineData(4, 2, 2)]
    [InlineData(3, 3, 1)]
    [InlineData(2, 2, 1)]
    [InlineData(1, 1, 1)]
    public void What_is_left_of_three_wide_and_two_high_lies_in_few_even_rows(int bars, int wide, int high) =>
        Assert.Equal(new(wide, high, bars), CutBundle.Full(3, 2).For(bars));

    [Fact]
    public void Fifteen_bars_six_at_a_time_are_cut_in_two_full_bundles_and_one_of_three() =>
        Assert.Equal([(CutBundle.Full(3, 2), 2), (CutBundle.Full(3, 1), 1)], CutBundle.Full(3, 2).Split(15));

    [Fact]
    public void Bundles_hold_all_bars_and_are_as_few_as_can_be() =>
        Gen.Select(Gen.Int[1, 20], Gen.Int[1, 10], Gen.Int[1, 500]).Sample((wide, high, bars) =>
        {
            var bundle = CutBundle.Full(wide, high);
            var split = bundle.Split(bars);
            Assert.Equal(bars, split.Sum(part => part.Bundle.Bars * part.Times));
            Assert.Equal((bars + bundle.Bars - 1) / bundle.Bars, split.Sum(part => part.Times));
            Assert.All(split, part => Assert.True(part.Bundle.Wide <= wide && part.Bundle.High <= high && part.Bundle.Wide * part.Bundle.High >= part.Bundle.Bars && part.Bundle.Wide * (part.Bundle.High - 1) < part.Bundle.Bars));
        }, iter: 500);
}
