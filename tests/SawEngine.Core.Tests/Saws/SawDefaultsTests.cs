using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.Saws;

public sealed class SawDefaultsTests
{
    [Fact]
    public void Every_default_has_a_source_and_a_name_of_its_own()
    {
        var values = SawDefaults.For(Capacity(410)).Values;
        Assert.Equal(21, values.Count);
        Assert.Equal(values.Count, values.Select(value => value.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(values, value => Assert.NotEmpty(value.Source));
        Assert.All(values, value => Assert.True(value.Value > 0m));
    }

    [Fact]
    public void Members_are_the_listed_values()
    {
        var defaults = SawDefaults.For(Capacity(410));
        Assert.Equal((18m, 120m), (defaults.SlowestBladeSpeed.MetersPerMinute, defaults.FastestBladeSpeed.MetersPerMinute));
        Assert.Equal((4.0m, 0.75m, 1000m), (defaults.MotorPowerKilowatts, defaults.DriveEfficiency, defaults.FastestBladeFeedMillimetersPerMinute));
        Assert.Equal((500m, 1m), (defaults.BarFeedStroke.Millimeters, defaults.RateFactor));
        Assert.Equal((240m, 600m, 300m), (defaults.Times.LoadSecondsPerBar, defaults.Times.SectionSetUpSeconds, defaults.Times.BladeChangeSeconds));
    }

    [Theory]
    [InlineData(50, 500)]
    [InlineData(100, 800)] // 740 kg
    [InlineData(260, 5100)] // 2 x 6 m x 7850 kg/m3 x pi/4 x 0.26^2 = 5001 kg
    [InlineData(410, 12500)] // 12 437 kg
    [InlineData(1000, 20000)]
    public void Load_limit_is_two_of_the_largest_bars(int capacity, int kilograms) =>
        Assert.Equal(kilograms, SawDefaults.For(Capacity(capacity)).LoadLimit.Kilograms);

    [Theory]
    [InlineData(200, 1.1)]
    [InlineData(201, 2.2)]
    [InlineData(450, 4.0)]
    [InlineData(650, 5.5)]
    [InlineData(651, 7.5)]
    public void Motor_grows_with_the_capacity(int capacity, double kilowatts) =>
        Assert.Equal((decimal)kilowatts, SawDefaults.For(Capacity(capacity)).MotorPowerKilowatts);

    [Theory]
    [InlineData(300, "27x0.9-0.75/1.25", 1.524)]
    [InlineData(450, "34x1.1-0.75/1.25", 1.7526)]
    [InlineData(650, "41x1.3-0.75/1.25", 2.0574)]
    [InlineData(651, "54x1.6-0.75/1.25", 2.413)]
    public void Default_blades_grow_with_the_capacity(int capacity, string first, double kerf)
    {
        var blades = DefaultBlades.For(Capacity(capacity));
        Assert.Equal(10, blades.Count);
        Assert.Equal(first, blades[0].BladeId);
        Assert.All(blades, blade => Assert.Equal((decimal)kerf, blade.Kerf.Millimeters));
    }

    [Theory]
    [InlineData(300)]
    [InlineData(450)]
    [InlineData(650)]
    [InlineData(651)]
    public void Default_kerf_is_written_exactly_in_inches_too(int capacity) =>
        Assert.All(DefaultBlades.For(Capacity(capacity)), blade => Assert.Equal(0, blade.Kerf.Nanometers % Length.ComputedGrid.Nanometers));

    /// <summary>Shigley, flat metal belts (quoted by a secondary source): E t/D with 207 GPa, 1.1 mm over 450 mm is 506 MPa; as a wide strip 556.04 MPa.</summary>
    [Fact]
    public void Bending_stress_of_1_1_mm_over_450_mm_is_506_megapascals()
    {
        var (thickness, wheel) = (Length.FromMillimeters(1.1m), Length.FromMillimeters(450m));
        Assert.Equal(506.0m, BladeStress.BendingMegapascals(thickness, wheel));
        Assert.InRange(BladeStress.WideBendingMegapascals(thickness, wheel, 0.3m), 556.04m * 0.999m, 556.04m * 1.001m);
        Assert.False(BladeStress.IsThickForWheel(thickness, wheel));
        Assert.True(BladeStress.IsThickForWheel(thickness, Length.FromMillimeters(300m)));
    }

    private static SawCapacity Capacity(int size) => new(Length.FromMillimeters(size), Length.FromMillimeters(size), Length.FromMillimeters(size));
}
