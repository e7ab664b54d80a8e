using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Cutting data of bars that are cut together, by hand.</summary>
public sealed class BundleTests
{
    private static readonly Saw Saw = Shop.Saw(motor: 40m) with { Bundle = new(6, 4) { HoldDown = true } };

    [Fact]
    public void Profile_of_squares_side_by_side_is_one_run()
    {
        var profile = CutProfile.Of(TestSection.Solid(50m, 40m), EndCut.Square, CutBundle.Full(3, 2), CuttingParameters.Default);
        Assert.Equal((80.0, 12_000.0, 150.0), (profile.Travel, profile.Area, profile.BoundingWidth));
        Assert.Equal((150.0, 150.0), (profile.LongestRun, profile.ShortestRun));
        Assert.Equal(12_000.0, profile.Slices.Sum(slice => slice.Width * slice.Thickness), 6);
    }

    [Fact]
    public void Walls_of_tubes_that_touch_are_one_run_and_the_outer_ones_decide()
    {
        // 60 x 60 x 5: at the sides walls of 5, 10, 10 and 5 mm; above and below 180 mm.
        var profile = CutProfile.Of(TestSection.Tube(60m, 60m, 5m), EndCut.Square, CutBundle.Full(3, 1), CuttingParameters.Default);
        Assert.Equal(5.0, profile.ShortestRun, 9);
        Assert.Equal(180.0, profile.LongestRun, 9);
        Assert.Contains(profile.Slices, slice => Math.Abs(slice.Width - 30) < 1e-9 && Math.Abs(slice.LongestRun - 10) < 1e-9);
        Assert.Equal(3 * 1_100.0, profile.Slices.Sum(slice => slice.Width * slice.Thickness), 6);
        // The pitch is that of one tube: 1100 mm2 over 60 mm.
        Assert.Equal(1_100.0 / 60, profile.TeethWidth, 9);
    }

    [Fact]
    public void Rounds_side_by_side_have_the_area_of_all()
    {
        var profile = CutProfile.Of(TestSection.Round(50m), EndCut.Square, CutBundle.Full(4, 1), CuttingParameters.Default);
        var area = 4 * Math.PI * 25 * 25;
        Assert.InRange(profile.Slices.Sum(slice => slice.Width * slice.Thickness), area * 0.999, area * 1.001);
        Assert.Equal(50.0, profile.LongestRun, 1);
    }

    [Fact]
    public void Short_top_row_counts_with_the_bars_that_it_has()
    {
        var profile = CutProfile.Of(TestSection.Solid(50m, 40m), EndCut.Square, new CutBundle(3, 2, 5), CuttingParameters.Default);
        Assert.Equal(10_000.0, profile.Area, 6);
        Assert.Equal(10_000.0, profile.Slices.Sum(slice => slice.Width * slice.Thickness), 6);
        Assert.Equal(100.0, profile.ShortestRun, 9);
    }

    [Fact]
    public void Bundle_of_solids_is_cut_at_four_fifths_of_the_rate()
    {
        // Six squares of 20 mm, three wide: 60 mm of cut; the blade speed, and with it the rate, is corrected for that width.
        var grade = Shop.Grade("1045");
        var data = Cut(TestSection.Solid(20m, 20m), CutBundle.Full(3, 2), Shop.Blade(3, 4));
        var width = decimal.Round((decimal)WidthCorrection.At(60), 4, MidpointRounding.ToEven);
        // 6 x 4 cm2 at R_ref x width x 0.8.
        var minutes = 24m / (grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute * width * 0.8m);
        Assert.InRange(data.CutSeconds, minutes * 60m, minutes * 60m + 0.1m);
        Assert.Equal(2_400m, data.CutArea.SquareMillimeters);
        Assert.Equal(0.8m, data.Factors.Single(factor => factor.Code == "bundle").Value);
        Assert.DoesNotContain(Cut(TestSection.Solid(20m, 20m), CutBundle.Single, Shop.Blade(3, 4)).Factors, factor => factor.Code == "bundle");
    }

    [Fact]
    public void Bundle_wears_the_blade_as_its_bars_do() =>
        Assert.Equal(6 * Cut(TestSection.Solid(20m, 20m), CutBundle.Single, Shop.Blade(3, 4)).BladeLifeShare, Cut(TestSection.Solid(20m, 20m), CutBundle.Full(3, 2), Shop.Blade(3, 4)).BladeLifeShare, 12);

    [Fact]
    public void Thin_tubes_that_the_load_per_tooth_holds_back_gain_by_lying_side_by_side()
    {
        // Where the tooth load alone limits the feed, two tubes take no longer than one: the factor does not count on top.
        var tube = TestSection.Tube(60m, 60m, 3m);
        var (one, two) = (Cut(tube, CutBundle.Single, Shop.Blade(10, 14)), Cut(tube, CutBundle.Full(2, 1), Shop.Blade(10, 14)));
        Assert.Equal(CutLimit.ToothLoad, one.LimitedBy);
        Assert.True(two.CutSeconds < 2 * one.CutSeconds, $"{two.CutSeconds} s, {one.CutSeconds} s");
        Assert.Equal(one.TeethInWork.Mean, two.TeethInWork.Mean);
    }

    [Theory]
    [InlineData(7, 1, BundleFit.TooManyBars)]
    [InlineData(1, 5, BundleFit.TooManyBars)]
    [InlineData(6, 1, BundleFit.TooLarge)]
    [InlineData(1, 4, BundleFit.TooLarge)]
    public void Bundle_that_the_saw_does_not_take_is_refused(int wide, int high, string code) =>
        Assert.Equal(code, CuttingDataCalculator.For(TestSection.Solid(100m, 120m), Shop.Grade("1045"), Saw, Shop.Blade(3, 4), EndCut.Square, CutBundle.Full(wide, high)).Obstacle!.Code);

    [Fact]
    public void Saw_that_says_nothing_cuts_single_bars() =>
        Assert.Equal(BundleFit.TooManyBars, CuttingDataCalculator.For(TestSection.Solid(20m, 20m), Shop.Grade("1045"), Shop.Saw(), Shop.Blade(3, 4), EndCut.Square, CutBundle.Full(2, 1)).Obstacle!.Code);

    [Fact]
    public void Rounds_need_a_hold_down_and_lie_one_high()
    {
        var loose = Saw with { Bundle = new(6, 1) };
        Assert.Equal(BundleFit.NoHoldDown, BundleFit.Obstacle(loose, TestSection.Round(50m), EndCut.Square, CutBundle.Full(2, 1)));
        Assert.Null(BundleFit.Obstacle(Saw, TestSection.Round(50m), EndCut.Square, CutBundle.Full(2, 1)));
        Assert.Equal(BundleFit.SectionNotBundled, BundleFit.Obstacle(Saw, TestSection.Round(50m), EndCut.Square, CutBundle.Full(2, 2)));
    }

    [Fact]
    public void Swivel_takes_width_of_the_whole_bundle()
    {
        // 4 x 100 mm: 400 mm square, within 410; at 30 degrees 461.9 mm.
        Assert.Null(BundleFit.Obstacle(Saw, TestSection.Solid(100m, 20m), EndCut.Square, CutBundle.Full(4, 1)));
        Assert.Equal(BundleFit.TooLarge, BundleFit.Obstacle(Saw, TestSection.Solid(100m, 20m), Shop.Swivel(30), CutBundle.Full(4, 1)));
    }

    private static CutData Cut(TestSection section, CutBundle bundle, Blade blade) =>
        CuttingDataCalculator.For(section, Shop.Grade("1045"), Saw, blade, EndCut.Square, bundle).Data!;
}
