using CsCheck;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.CuttingData;

public sealed class CuttingDataCalculatorTests
{
    private static readonly IReadOnlyList<Blade> Blades = DefaultBlades.For(Shop.Saw().Capacity);

    private static readonly Gen<TestSection> Sections = Gen.Select(Gen.Int[0, 4], Gen.Int[10, 300], Gen.Int[10, 300], Gen.Int[2, 20], Make);

    private static readonly Gen<Grade> Grades = Gen.Int[0, GradeCatalog.Standard.Items.Count - 1].Select(index => GradeCatalog.Standard.Items[index]);

    private static readonly Gen<Blade> AnyBlade = Gen.Int[0, Blades.Count - 1].Select(index => Blades[index]);

    [Fact]
    public void Clipped_speed_lowers_the_rate_in_proportion()
    {
        var section = TestSection.Round(101.6m);
        var full = Data(section, "1045", Shop.Saw(fastest: 67.1m), Shop.Blade(2, 3));
        var half = Data(section, "1045", Shop.Saw(fastest: 33.55m), Shop.Blade(2, 3));
        Assert.Equal(CutLimit.SawSpeedRange, half.LimitedBy);
        Assert.InRange(half.CutSeconds / full.CutSeconds, 1.99m, 2.01m);
        Assert.Contains(half.Factors, factor => factor is { Code: "saw_speed_range", Value: >= 0.4999m and <= 0.5003m });
    }

    [Fact]
    public void Solid_round_is_limited_by_the_rate_of_the_grade() =>
        Assert.Equal(CutLimit.GradeRate, Data(TestSection.Round(100m), "1045", Shop.Saw(), Shop.Blade(2, 3)).LimitedBy);

    [Fact]
    public void Thin_web_is_limited_by_the_load_per_tooth_with_a_warning()
    {
        var data = Data(TestSection.Beam(200m, 100m, 5.6m, 8.5m), "S355J2", Shop.Saw(), Shop.Blade(5, 8));
        Assert.Equal(CutLimit.ToothLoad, data.LimitedBy);
        Assert.Contains(data.Warnings, warning => warning.Code == "few_teeth_in_shortest_run");
    }

    /// <summary>
    /// Usual rates against a solid's: single tubes 0.6 to 0.8, single shapes 0.5 to 0.75 (from memory; the heaviest load per tooth was chosen by them).
    /// No factor is applied, so the load per tooth alone has to give that.
    /// </summary>
    [Fact]
    public void Load_per_tooth_alone_slows_tubes_and_shapes_as_is_usual()
    {
        Assert.All([TestSection.Tube(40m, 40m, 3m), TestSection.Tube(100m, 100m, 5m), TestSection.Tube(150m, 150m, 8m)], tube => Assert.InRange(ShareOfSolid(tube), 0.6m, 0.8m));
        Assert.All([TestSection.Beam(100m, 55m, 4.1m, 5.7m), TestSection.Beam(200m, 100m, 5.6m, 8.5m), TestSection.Beam(300m, 300m, 11m, 19m)], beam => Assert.InRange(ShareOfSolid(beam), 0.45m, 0.75m));

        static decimal ShareOfSolid(TestSection section) => Rate(section) / Rate(TestSection.Round(100m));

        static decimal Rate(TestSection section) =>
            BladeChoice.Choose(section, Shop.Grade("S355J2"), Shop.Saw(), [EndCut.Square]).Choice!.Cuts[0].CuttingRate.SquareCentimetersPerMinute;
    }

    [Fact]
    public void Lightest_load_lifts_a_work_hardening_grade_to_the_upper_end_of_its_rates_at_most()
    {
        var grade = Shop.Grade("Alloy 718");
        var data = Data(TestSection.Beam(300m, 300m, 11m, 19m), "Alloy 718", Shop.Saw(slowest: 10m), Shop.Blade(3, 4));
        Assert.Contains(data.Warnings, warning => warning.Code == "tooth_load_below_minimum");
        Assert.True(data.CuttingRate.SquareCentimetersPerMinute <= 1.4m * 1.15m * grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute);
    }

    [Fact]
    public void Swivel_widens_the_cut_by_one_over_the_cosine()
    {
        var section = TestSection.Solid(100m, 100m);
        var miter = CuttingDataCalculator.For(section, Shop.Grade("1045"), Shop.Saw(), Shop.Blade(2, 3), Shop.Swivel(45)).Data!;
        Assert.InRange(miter.CutArea.SquareMillimeters, 14142.135m, 14142.136m);
        Assert.InRange(miter.TeethInWork.Mean, 100m * 1.41421m * 2.5m / 25.4m - 0.001m, 100m * 1.41421m * 2.5m / 25.4m + 0.001m);
    }

    [Fact]
    public void Weak_motor_lowers_the_feed_to_its_power()
    {
        var strong = Data(TestSection.Solid(100m, 100m), "1045", Shop.Saw(motor: 4m), Shop.Blade(2, 3));
        var weak = Data(TestSection.Solid(100m, 100m), "1045", Shop.Saw(motor: 0.4m), Shop.Blade(2, 3));
        Assert.Equal(CutLimit.Power, weak.LimitedBy);
        Assert.Equal(0.4m, weak.PowerKilowatts);
        Assert.Equal(strong.BladeSpeed, weak.BladeSpeed);
        Assert.True(weak.CutSeconds > strong.CutSeconds);
    }

    [Fact]
    public void Weak_motor_above_its_base_speed_lowers_the_blade_speed_and_keeps_the_load_per_tooth()
    {
        var section = TestSection.Solid(100m, 100m);
        var strong = Data(section, "1045", Shop.Saw(motor: 4m), Shop.Blade(2, 3));
        var weak = Data(section, "1045", Shop.Saw(motor: 0.8m) with { BaseBladeSpeed = new(30m) }, Shop.Blade(2, 3));
        Assert.Equal(CutLimit.Power, weak.LimitedBy);
        Assert.True(weak.BladeSpeed < strong.BladeSpeed);
        Assert.InRange(Load(weak) / Load(strong), 0.99m, 1.01m);
    }

    [Fact]
    public void Power_falls_below_the_base_speed_of_a_constant_torque_drive()
    {
        var saw = Shop.Saw(fastest: 30m, motor: 0.8m);
        var section = TestSection.Solid(100m, 100m);
        var driven = Data(section, "1045", saw with { BaseBladeSpeed = new(30m) }, Shop.Blade(2, 3));
        var halved = Data(section, "1045", saw with { BaseBladeSpeed = new(60m) }, Shop.Blade(2, 3));
        Assert.InRange(halved.PowerKilowatts, 0.39m, 0.40m);
        Assert.True(halved.CutSeconds > driven.CutSeconds);
    }

    /// <summary>
    /// A drive of 0.6 kW with constant torque below 60 m/min has 0.2 kW at 20 m/min. By hand: 0.2 kW x 0.75 / (0.175 cm x 0.0364 kW per cm3/min x 2 x 1.2)
    /// = 9.812 cm2/min, so 100 cm2 take 10.192 min.
    /// </summary>
    [Fact]
    public void Torque_at_20_meters_per_minute_gives_a_third_of_the_power()
    {
        var saw = Shop.Saw(fastest: 20m, motor: 0.6m) with { BaseBladeSpeed = new(60m) };
        var data = Data(TestSection.Solid(100m, 100m), "1045", saw, Shop.Blade(1.4m, 2m));
        Assert.Equal((CutLimit.Power, 0.20m, 20m), (data.LimitedBy, data.PowerKilowatts, data.BladeSpeed.MetersPerMinute));
        Assert.InRange(data.CutSeconds, 611.5m, 611.6m);
    }

    [Fact]
    public void Work_hardening_grade_is_not_cut_by_a_motor_too_weak_for_its_lightest_chip()
    {
        var saw = Shop.Saw(slowest: 30m, motor: 0.05m);
        var result = CuttingDataCalculator.For(TestSection.Solid(100m, 100m), Shop.Grade("304"), saw, Shop.Blade(2, 3), EndCut.Square);
        Assert.Equal("not_enough_power", result.Obstacle!.Code);
    }

    [Fact]
    public void Slow_grade_on_a_fast_saw_is_cut_at_the_saws_slowest_speed_with_a_warning_but_no_faster()
    {
        var slow = Data(TestSection.Round(100m), "Alloy 718", Shop.Saw(slowest: 10m), Shop.Blade(1.4m, 2m));
        var fast = Data(TestSection.Round(100m), "Alloy 718", Shop.Saw(slowest: 20m), Shop.Blade(1.4m, 2m));
        Assert.Contains(fast.Warnings, warning => warning.Code == "blade_speed_above_grade");
        Assert.DoesNotContain(slow.Warnings, warning => warning.Code == "blade_speed_above_grade");
        Assert.Equal(20m, fast.BladeSpeed.MetersPerMinute);
    }

    [Theory]
    [InlineData("304")]
    [InlineData("Ti-6Al-4V")]
    [InlineData("6061")]
    public void Load_per_tooth_stays_within_its_limits_on_a_saw_of_120_meters_per_minute(string designation)
    {
        var grade = Shop.Grade(designation);
        var saw = Shop.Saw(fastest: 120m);
        Gen.Select(Gen.Int[10, 300], Gen.Bool).Sample((size, round) =>
        {
            var section = round ? TestSection.Round(size) : TestSection.Solid(size, size);
            var choice = BladeChoice.Choose(section, grade, saw, [EndCut.Square]).Choice!;
            var profile = CutProfile.Of(section, EndCut.Square, CuttingParameters.Default);
            var load = new ToothLoad(profile, grade, choice.Blade, CuttingParameters.Default);
            var speed = BladeSpeed.Of(profile, grade, saw, choice.Blade, CuttingParameters.Default);
            var feed = PowerFit.Fit(profile, grade, saw, choice.Blade, speed, load, share: 1, CuttingParameters.Default)!.Feed;
            Assert.All(profile.Slices, slice =>
            {
                var tooth = feed.At(slice).Feed * load.Pitch / (1000 * feed.Speed);
                Assert.True(tooth <= 0.030 * (1 + 1e-9) && (!grade.WorkHardening || tooth >= 0.005 * (1 - 1e-9)), $"{section.Designation}: {tooth}");
            });
        }, iter: 200);
    }

    [Fact]
    public void Stronger_motor_is_never_slower() =>
        Gen.Select(Sections, Grades, AnyBlade, Gen.Double[0.05, 5], Gen.Double[1, 4]).Sample((section, grade, blade, motor, stronger) =>
        {
            var weak = Seconds(section, grade, Shop.Saw(motor: (decimal)motor), blade);
            var strong = Seconds(section, grade, Shop.Saw(motor: (decimal)(motor * stronger)), blade);
            Assert.True(strong <= weak, $"{section.Designation} {grade.Designation} {blade.BladeId} {motor} x {stronger}: {strong} > {weak}");
        }, iter: 2000);

    [Fact]
    public void Faster_saw_is_never_slower() =>
        Gen.Select(Sections, Grades, AnyBlade, Gen.Int[20, 150], Gen.Int[0, 100], Gen.Double[0.2, 5]).Sample((section, grade, blade, fastest, more, motor) =>
        {
            var slow = Seconds(section, grade, Shop.Saw(fastest: fastest, motor: (decimal)motor), blade);
            var fast = Seconds(section, grade, Shop.Saw(fastest: fastest + more, motor: (decimal)motor), blade);
            Assert.True(fast <= slow, $"{section.Designation} {grade.Designation} {blade.BladeId} {fastest} + {more}: {fast} > {slow}");
        }, iter: 2000);

    /// <summary>Speed, rate and all else fixed; only the solid is larger.</summary>
    [Fact]
    public void Larger_area_is_never_quicker() =>
        Gen.Select(Gen.Bool, Gen.Int[10, 300], Gen.Int[10, 300], Gen.Int[0, 60], Gen.Int[0, 60], Grades, AnyBlade).Sample((round, width, height, wider, higher, grade, blade) =>
        {
            var small = round ? TestSection.Round(width) : TestSection.Solid(width, height);
            var large = round ? TestSection.Round(width + wider) : TestSection.Solid(width + wider, height + higher);
            var (less, more) = (CuttingDataCalculator.For(small, grade, Shop.Saw(slowest: 1m, fastest: 10m), blade, EndCut.Square).Data, CuttingDataCalculator.For(large, grade, Shop.Saw(slowest: 1m, fastest: 10m), blade, EndCut.Square).Data);
            if (less is not null && more is not null && less.Factors.Select(factor => factor.Code).SequenceEqual(more.Factors.Select(factor => factor.Code)) && less.BladeSpeed == more.BladeSpeed)
                Assert.True(more.CutSeconds >= less.CutSeconds, $"{large.Designation} {more.CutSeconds} < {small.Designation} {less.CutSeconds} {grade.Designation} {blade.BladeId}");
        }, iter: 3000);

    [Fact]
    public void Better_blade_is_never_slower() =>
        Gen.Select(Sections, Grades, AnyBlade, Gen.Int[0, 100], Gen.Int[0, 100], Gen.Int[1, 200]).Sample((section, grade, blade, life, more, square) =>
        {
            var (worn, good) = (blade with { RemainingLife = Math.Min(life, more) / 100m }, blade with { RemainingLife = Math.Max(life, more) / 100m });
            var (slow, fast) = (Square(worn), Square(good));
            Assert.True(fast <= slow, $"{section.Designation} {grade.Designation} {blade.BladeId} {worn.RemainingLife} {good.RemainingLife}: {fast} > {slow}");
            Assert.True(Seconds(section, grade, Shop.Saw(), blade with { ToothMaterial = ToothMaterial.Carbide }) <= Seconds(section, grade, Shop.Saw(), blade with { ToothMaterial = ToothMaterial.Bimetal }));
            Assert.True(Seconds(section, grade, Shop.Saw(), blade with { ToothMaterial = ToothMaterial.Bimetal }) <= Seconds(section, grade, Shop.Saw(), blade with { ToothMaterial = ToothMaterial.CarbonSteel }));

            decimal Square(Blade one) => CuttingDataCalculator.For(section, grade, Shop.Saw(), one, EndCut.Square, CutBundle.Single, squareness: new(square * 10_000)).Data?.CutSeconds ?? decimal.MaxValue;
        }, iter: 2000);

    /// <summary>The rate of a solid that no other limit holds back is the grade's, times each factor that is listed, once.</summary>
    [Fact]
    public void Factors_listed_are_the_factors_applied()
    {
        var seen = 0;
        Gen.Select(Gen.Int[40, 300], Grades, AnyBlade, Gen.Int[20, 150], Gen.Bool, Gen.Int[1, 20]).Sample((size, grade, blade, fastest, coolant, factor) =>
        {
            var saw = Shop.Saw(fastest: fastest, motor: 100m) with { Coolant = coolant, RateFactor = factor / 10m };
            if (CuttingDataCalculator.For(TestSection.Solid(size, size), grade, saw, blade, EndCut.Square).Data is not { LimitedBy: CutLimit.GradeRate or CutLimit.SawSpeedRange } data)
                return;
            Interlocked.Increment(ref seen);
            Assert.Equal(data.Factors.Count, data.Factors.DistinctBy(one => one.Code).Count());
            var expected = data.Factors.Aggregate(grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute, (rate, one) => rate * one.Value);
            Assert.InRange(size * size / 100m / expected * 60m, data.CutSeconds * 0.999m - 0.2m, data.CutSeconds * 1.001m + 0.2m);
        }, iter: 2000);
        Assert.True(seen > 300, $"{seen}");
    }

    [Theory]
    [InlineData("4140 pre-hard", "4140 annealed")]
    [InlineData("42CrMo4+QT", "42CrMo4+A")]
    public void Harder_condition_of_a_catalog_grade_is_never_faster(string harder, string softer) =>
        Gen.Select(Sections, AnyBlade).Sample((section, blade) => Assert.True(
            Seconds(section, Shop.Grade(harder), Shop.Saw(), blade) >= Seconds(section, Shop.Grade(softer), Shop.Saw(), blade)), iter: 500);

    [Fact]
    public void Harder_condition_of_a_callers_grade_is_never_faster() =>
        Gen.Select(Sections, Grades, AnyBlade, Gen.Int[60, 600], Gen.Int[0, 300]).Sample((section, grade, blade, hardness, more) =>
        {
            var soft = Seconds(section, Hardened(grade, hardness), Shop.Saw(slowest: 1m), blade);
            var hard = Seconds(section, Hardened(grade, hardness + more), Shop.Saw(slowest: 1m), blade);
            Assert.True(hard >= soft, $"{section.Designation} {grade.Designation} {blade.BladeId} {hardness} + {more}: {hard} < {soft}");
        }, iter: 2000);

    [Fact]
    public void Any_cut_gives_data_or_an_obstacle() =>
        Gen.Select(
            Gen.Select(Gen.Int[0, 4], Gen.Int[1, 3000], Gen.Int[1, 3000], Gen.Int[1, 400], Make),
            Grades,
            Gen.Select(Gen.Decimal[0.01m, 60m], Gen.Decimal[0.01m, 60m], Gen.Int[0, 2], (a, b, teeth) => Shop.Blade(Math.Min(a, b), Math.Max(a, b), 1.75m, (ToothMaterial)teeth)),
            Gen.Select(Gen.Int[1, 500], Gen.Int[0, 2000], Gen.Decimal[0.001m, 300m], Gen.Bool, (slow, more, motor, coolant) =>
                Shop.Saw(slow + more, slow, motor, 3000m) with { Coolant = coolant, BaseBladeSpeed = coolant ? null : new(slow + more / 2) }),
            Gen.Select(Gen.Int[-90_000, 90_000], Gen.Int[-1, 1], (width, height) => new EndCut(new(height * 1000), new(width))))
        .Sample((section, grade, blade, saw, cut) =>
        {
            var result = CuttingDataCalculator.For(section, grade, saw, blade, cut);
            Assert.True(result.Data is null ^ result.Obstacle is null);
            if (result.Data is { } data)
            {
                Assert.True(data.CutSeconds > 0m);
                Assert.True(data.PowerKilowatts <= saw.MotorPowerKilowatts + 0.005m, $"{data.PowerKilowatts} of {saw.MotorPowerKilowatts}");
                Assert.InRange(data.BladeSpeed.MetersPerMinute, saw.SlowestBladeSpeed.MetersPerMinute - 0.05m, saw.FastestBladeSpeed.MetersPerMinute + 0.05m);
            }
        }, iter: 3000);

    [Fact]
    public void Any_section_gets_a_blade_or_an_obstacle() =>
        Gen.Select(Sections, Grades, Gen.Double[0.05, 8], Gen.Select(Gen.Int[-70, 70], Gen.Int[-70, 70], Gen.Int[0, 2], Miter).List[1, 3]).Sample((section, grade, motor, cuts) =>
        {
            var result = BladeChoice.Choose(section, grade, Shop.Saw(motor: (decimal)motor), cuts);
            Assert.True(result.Choice is null ^ result.Obstacle is null);
            if (result.Choice is { } choice)
            {
                Assert.Equal(cuts.Count, choice.Cuts.Count);
                Assert.Equal(9, choice.Rejected.Count);
                Assert.All(cuts, cut => Assert.Null(SawFit.Obstacle(Shop.Saw(), choice.Lay.Of(section), choice.Lay.Of(cut))));
            }
        }, iter: 300);

    private static EndCut Miter(int width, int height, int planes) => planes switch
    {
        0 => EndCut.Square,
        1 => Shop.Swivel(width),
        _ => new(new(height * 1000), new(0)),
    };

    private static decimal Load(CutData data) => data.BladeFeedMillimetersPerMinute / data.BladeSpeed.MetersPerMinute;

    private static Grade Hardened(Grade like, decimal hardness) => GradeCatalog.Standard.FromCaller(
        new CallerGrade { Designation = "hardened", LikeGrade = like.Designation, Density = like.Density.Value, HardnessHb = hardness })!;

    private static decimal Seconds(TestSection section, Grade grade, Saw saw, Blade blade) =>
        CuttingDataCalculator.For(section, grade, saw, blade, EndCut.Square).Data?.CutSeconds ?? decimal.MaxValue;

    private static CutData Data(TestSection section, string grade, Saw saw, Blade blade) =>
        CuttingDataCalculator.For(section, Shop.Grade(grade), saw, blade, EndCut.Square).Data!;

    private static TestSection Make(int kind, int width, int height, int wall) => kind switch
    {
        0 => TestSection.Round(width),
        1 => TestSection.Solid(width, height),
        4 => TestSection.RoundTube(width, Math.Min(wall, width / 3m)),
        2 => TestSection.Tube(width, height, Math.Min(wall, Math.Min(width, height) / 3m)),
        _ => TestSection.Beam(height, width, Math.Min(wall, width / 2m), Math.Min(wall, height / 3m)),
    };
}
