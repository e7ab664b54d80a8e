using SawEngine.Api.Wire;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Tests.Wire;

public sealed class LengthScaleTests
{
    [Theory]
    [InlineData(LengthUnit.Mm, "0.000001", true)]
    [InlineData(LengthUnit.Mm, "0.0000001", false)]
    [InlineData(LengthUnit.Mm, "0.0000005", false)]
    [InlineData(LengthUnit.In, "0.000005", true)]
    [InlineData(LengthUnit.In, "0.000001", false)]
    [InlineData(LengthUnit.In, "0.015625", true)] // 1/64 in
    public void Grid_is_a_millionth_of_a_millimeter_or_five_millionths_of_an_inch(LengthUnit unit, string value, bool onGrid) =>
        Assert.Equal(onGrid, LengthScale.IsOnGrid(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), unit));

    [Fact]
    public void All_sixty_fourths_of_an_inch_come_back_exactly()
    {
        var inches = new LengthScale(LengthUnit.In);
        for (var i = 1; i <= 40 * 64; i++)
            Assert.Equal(i / 64m, inches.Write(inches.Read(i / 64m)));
    }

    [Fact]
    public void Computed_lengths_are_written_exactly_in_both_units()
    {
        Assert.Equal(0.0127m, new LengthScale(LengthUnit.Mm).Write(Length.ComputedGrid));
        Assert.Equal(0.0005m, new LengthScale(LengthUnit.In).Write(Length.ComputedGrid));
    }

    [Fact]
    public void Objectives_are_rounded_down_to_six_decimals()
    {
        Assert.Equal(1.5m, new LengthScale(LengthUnit.In).WriteMicros(1_500_000, isMoney: true));
        Assert.Equal(0.000001m, new LengthScale(LengthUnit.Mm).WriteMicros(1, isMoney: false));
        Assert.Equal(1m, new LengthScale(LengthUnit.In).WriteMicros(25_400_000, isMoney: false));
        Assert.Equal(0.999999m, new LengthScale(LengthUnit.In).WriteMicros(25_399_999, isMoney: false));
    }
}
