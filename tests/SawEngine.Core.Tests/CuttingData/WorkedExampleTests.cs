using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Worked examples, each with its source, computed by the engine's own equations.</summary>
public sealed class WorkedExampleTests
{
    /// <summary>Area-rate method, by definition: 100 mm round at 45 cm2/min takes 1.7453 min.</summary>
    [Fact]
    public void Round_of_100_mm_at_45_cm2_per_minute_takes_1_7453_minutes()
    {
        var data = Cut(TestSection.Round(100m), 45m, 80m);
        Assert.InRange(data.CutArea.SquareMillimeters / 100m, 78.5398m * 0.999m, 78.5398m * 1.001m);
        Assert.InRange(data.CutSeconds, 60m * 1.7453m * 0.999m, 60m * 1.7453m * 1.001m + 0.1m);
    }

    /// <summary>Area-rate method, by definition: 4 in round at 6 in2/min (38.71 cm2/min) takes 2.0944 min.</summary>
    [Fact]
    public void Round_of_4_in_at_6_in2_per_minute_takes_2_0944_minutes()
    {
        var data = Cut(TestSection.Round(101.6m), 6m * 6.4516m, 80m);
        Assert.InRange(data.CutSeconds, 60m * 2.0944m * 0.999m, 60m * 2.0944m * 1.001m + 0.1m);
    }

    /// <summary>Mean width, area over travel, by definition: a tube of 100 mm with a wall of 10 mm has 28.274 mm.</summary>
    [Fact]
    public void Mean_width_of_a_tube_of_100_mm_is_28_274_mm()
    {
        var profile = CutProfile.Of(TestSection.RoundTube(100m, 10m), EndCut.Square, CuttingParameters.Default);
        Assert.InRange(profile.MeanWidth, 28.274 * 0.999, 28.274 * 1.001);
        Assert.InRange(profile.Slices.Sum(slice => slice.Width * slice.Thickness) / 100, 28.2743 * 0.999, 28.2743 * 1.001);
        Assert.InRange(profile.ShortestRun, 10.0, 10.1);
    }

    /// <summary>Definition of teeth per inch: 100 mm square, 3/4 variable pitch: 11.811, 13.78 and 15.748 teeth.</summary>
    [Fact]
    public void Square_of_100_mm_has_13_78_mean_teeth_of_a_3_4_blade_in_it()
    {
        var teeth = Cut(TestSection.Solid(100m, 100m), 45m, 80m).TeethInWork;
        Assert.Equal((11.811m, 13.780m, 15.748m), (teeth.Min, teeth.Mean, teeth.Max));
    }

    /// <summary>Three-tooth rule (Bacon, Introduction to Machining, OpenWA Pressbooks 7.4): a wall of 3 mm needs 25.4 teeth per inch.</summary>
    [Fact]
    public void Wall_of_3_mm_has_three_teeth_in_it_at_25_4_teeth_per_inch()
    {
        var profile = CutProfile.Of(TestSection.Tube(60m, 60m, 3m), EndCut.Square, CuttingParameters.Default);
        Assert.Equal(3.0, TeethCount.Of(profile, Shop.Blade(25.4m, 25.4m)).Min, 9);
    }

    /// <summary>Kinematic identity: 45 cm2/min in 100 mm width is 45 mm/min, and at 80 m/min and 3.5 teeth per inch 4.082 µm a tooth.</summary>
    [Fact]
    public void Feed_of_45_mm_per_minute_loads_a_tooth_with_4_082_micrometers()
    {
        var data = Cut(TestSection.Solid(100m, 100m), 45m, 80m);
        Assert.Equal(45.0m, data.BladeFeedMillimetersPerMinute);
        var load = data.BladeFeedMillimetersPerMinute * 25.4m / 3.5m / (1000m * data.BladeSpeed.MetersPerMinute);
        Assert.InRange(load, 0.004082m * 0.999m, 0.004082m * 1.001m);
    }

    /// <summary>
    /// Geometry with a packing factor of 6: 150 mm wide, 10 µm a tooth, needs 9.0 mm2 of gullet. With 9.0 mm2 of gullet at a pitch of 8.467 mm
    /// the heaviest load in a run of 150 mm is therefore 10 µm.
    /// </summary>
    [Fact]
    public void Gullet_of_9_mm2_takes_10_micrometers_a_tooth_in_150_mm()
    {
        var pitch = 25.4m / 3m;
        var parameters = CuttingParameters.Default with { GulletShare = 9.0m / (pitch * pitch) };
        var profile = CutProfile.Of(TestSection.Solid(150m, 50m), EndCut.Square, parameters);
        var load = new ToothLoad(profile, Shop.Grade("1045"), Shop.Blade(3, 3), parameters);
        Assert.Equal(0.010, load.MostAt(profile.Slices[0]), 9);
    }

    /// <summary>
    /// Plain carbon steel at 180 to 200 HB: 2.24 kW per cm3/s, Machinery's Handbook, 31st ed., p. 1147, table 1b; 45 cm2/min and a kerf of 1.6 mm
    /// take 0.336 kW of the motor at an efficiency of 0.8.
    /// </summary>
    [Fact]
    public void Power_of_1045_at_190_HB_is_0_336_kilowatts()
    {
        var power = new CuttingPower(1.6, 2.24 / 60, ThinChip: 1.0, Wear: 1.0, Efficiency: 0.8);
        Assert.InRange(power.Kilowatts(45), 0.336 * 0.999, 0.336 * 1.001);
        Assert.InRange(power.RateAt(0.336), 45 * 0.999, 45 * 1.001);
    }

    /// <summary>The same with a thin-chip factor of 1.968 (Kienzle, 0.30 mm to 0.02 mm, exponent 0.25, from memory) and wear 1.25: 0.8266 kW.</summary>
    [Fact]
    public void Thin_chips_and_wear_raise_it_to_0_827_kilowatts()
    {
        var thinChip = Math.Pow(0.30 / 0.02, 0.25);
        var power = new CuttingPower(1.6, 2.24 / 60, thinChip, Wear: 1.25, Efficiency: 0.8);
        Assert.InRange(power.Kilowatts(45), 0.8266 * 0.998, 0.8266 * 1.002);
    }

    /// <summary>
    /// Stainless steel at 150 to 250 HB: 1.0 hp per in3/min (Groover, quoted by a secondary source); 3 in2/min and a kerf of 0.063 in take 0.252 hp at 0.75.
    /// </summary>
    [Fact]
    public void Power_of_304_is_0_252_horsepower()
    {
        const double kilowattsPerHorsepower = 0.745700, cm3PerIn3 = 16.387064;
        var power = new CuttingPower(0.063 * 25.4, 1.0 * kilowattsPerHorsepower / cm3PerIn3, ThinChip: 1.0, Wear: 1.0, Efficiency: 0.75);
        Assert.InRange(power.Kilowatts(3.0 * 6.4516) / kilowattsPerHorsepower, 0.252 * 0.999, 0.252 * 1.001);
    }

    /// <summary>The same equation with the engine's thin-chip and wear factors.</summary>
    [Fact]
    public void Power_reported_is_rate_times_kerf_times_unit_power()
    {
        var data = Cut(TestSection.Solid(100m, 100m), 45m, 80m);
        // 45 cm2/min x 0.16 cm x 0.0364 kW per cm3/min (1045 in table 1b) x 2 x 1.2 / 0.75.
        Assert.Equal(decimal.Round(45m * 0.16m * 0.0364m * 2m * 1.2m / 0.75m, 2, MidpointRounding.ToEven), data.PowerKilowatts);
    }

    private static CutData Cut(TestSection section, decimal rate, decimal speed)
    {
        var grade = GradeCatalog.Standard.FromCaller(new CallerGrade
        {
            Designation = "test",
            LikeGrade = "1045",
            Density = new(7850m),
            // Undo the correction by width, so that the example's speed and rate are those of the cut.
            ReferenceBladeSpeed = new(speed / Correction(section)),
            ReferenceCuttingRate = new(rate / Correction(section)),
        })!;
        return CuttingDataCalculator.For(section, grade, Shop.Saw(), Shop.Blade(3, 4, kerf: 1.6m), EndCut.Square).Data!;
    }

    private static decimal Correction(TestSection section) =>
        decimal.Round((decimal)WidthCorrection.At((double)section.Width.Millimeters), 4, MidpointRounding.ToEven);
}
