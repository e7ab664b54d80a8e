using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Squareness, break-in and condition of blades. The saw leads by 0.3 % of the blade's way at full feed (from memory, the default).</summary>
public sealed class SquarenessTests
{
    private static readonly Blade Good = Shop.Blade(2, 3);

    [Fact]
    public void Full_feed_is_out_of_square_by_the_saws_share_of_the_way() =>
        Assert.Equal(0.29972m, Data(Good, null).OutOfSquare.Millimeters); // 0.3 mm in 100 mm, on the grid of 1.27 µm.

    [Fact]
    public void Half_the_squareness_takes_half_the_feed()
    {
        var (full, square) = (Data(Good, null), Data(Good, 0.15m));
        Assert.Equal(CutLimit.Squareness, square.LimitedBy);
        Assert.InRange(square.CutSeconds / full.CutSeconds, 1.995m, 2.005m);
        Assert.Equal(0.14986m, square.OutOfSquare.Millimeters);
        Assert.Contains(square.Factors, factor => factor is { Code: "squareness", Value: >= 0.499m and <= 0.5m });
    }

    /// <summary>Whatever is ordered, a feed that is held back to it holds it.</summary>
    [Fact]
    public void Ordered_squareness_is_held_wherever_the_feed_is_held_back_to_it() =>
        Assert.All(Enumerable.Range(1, 59).Select(step => step * 0.005m), ordered =>
        {
            var data = Data(Good, ordered);
            Assert.True(data.OutOfSquare <= Length.FromMillimeters(ordered), $"{data.OutOfSquare.Millimeters} of {ordered}");
            Assert.DoesNotContain(data.Warnings, warning => warning.Code == "squareness_not_held");
        });

    /// <summary>A motor, or a saw, that feeds half as fast as grade and teeth allow leads half as much, and an ordered squareness that this holds costs no time.</summary>
    [Fact]
    public void Lead_is_in_proportion_to_the_feed_whatever_holds_it_back()
    {
        var full = Data(Good, null);
        foreach (var saw in new[] { Shop.Saw(motor: full.PowerKilowatts / 2), Shop.Saw() with { FastestBladeFeedMillimetersPerMinute = full.BladeFeedMillimetersPerMinute / 2 } })
        {
            var slow = On(saw, null);
            Assert.InRange(slow.OutOfSquare.Millimeters, 0.148m, 0.152m);
            Assert.Equal(slow.CutSeconds, On(saw, 0.16m).CutSeconds);
            Assert.Equal(slow.LimitedBy, On(saw, 0.16m).LimitedBy);
        }

        static CutData On(Saw saw, decimal? squareness) => CuttingDataCalculator.For(
            TestSection.Solid(100m, 100m), Shop.Grade("1045"), saw, Good, EndCut.Square, CutBundle.Single, squareness: squareness is { } millimeters ? Length.FromMillimeters(millimeters) : null).Data!;
    }

    [Fact]
    public void Good_blade_of_another_pitch_is_taken_for_a_tight_squareness()
    {
        Blade[] blades = [Named("good", 1m, 4, 5), Named("worn", 0.01m, 3, 4)];
        Assert.Equal("worn", Chosen(TestSection.Round(60m), blades, null, null));
        Assert.Equal("good", Chosen(TestSection.Round(60m), blades, null, Length.FromMillimeters(0.1m)));
    }

    [Fact]
    public void Blade_at_its_end_is_taken_last_even_where_it_is_mounted()
    {
        Blade[] blades = [Named("a", 0m, 5, 8), Named("b", 1m, 5, 8)];
        Assert.Equal("b", Chosen(TestSection.Beam(200m, 100m, 5.6m, 8.5m), blades, "a", null));
    }

    [Fact]
    public void Blade_that_does_not_last_for_one_cut_gives_way_to_another()
    {
        Blade[] blades = [Named("a", 1m, 2, 3) with { LifeAreaSquareMeters = 0.005m }, Named("b", 1m, 2, 3) with { LifeAreaSquareMeters = 8m }];
        var choice = BladeChoice.Choose(TestSection.Solid(100m, 100m), Shop.Grade("1045"), Shop.Saw() with { Blades = blades }, [EndCut.Square]).Choice!;
        Assert.Equal("b", choice.Blade.BladeId);
        Assert.Equal(("a", "cut_exceeds_blade_life"), (choice.Rejected[0].BladeId, choice.Rejected[0].Code));
        Assert.Equal(0, BladeChoice.Choose(TestSection.Solid(100m, 100m), Shop.Grade("1045"), Shop.Saw() with { Blades = blades[..1] }, [EndCut.Square]).Choice!.Cuts[0].CutsPerBlade);
    }

    [Fact]
    public void Worn_blade_leads_more_and_is_fed_less()
    {
        var worn = Good with { RemainingLife = 0m };
        Assert.Equal(0.6m, Data(worn, null).OutOfSquare.Millimeters, 2);
        Assert.InRange(Data(worn, 0.15m).CutSeconds / Data(worn, null).CutSeconds, 3.99m, 4.01m);
    }

    [Fact]
    public void Squareness_that_full_feed_holds_costs_no_time() => Assert.Equal(Data(Good, null).CutSeconds, Data(Good, 0.31m).CutSeconds);

    [Fact]
    public void Work_hardening_grade_keeps_its_lightest_load_and_does_not_hold_the_squareness()
    {
        var data = CuttingDataCalculator.For(TestSection.Solid(100m, 100m), Shop.Grade("304"), Shop.Saw(), Good, EndCut.Square, CutBundle.Single, squareness: Length.FromMillimeters(0.01m)).Data!;
        Assert.Equal(CutLimit.ToothLoadMinimum, data.LimitedBy);
        Assert.True(data.OutOfSquare > Length.FromMillimeters(0.01m));
        Assert.Contains(data.Warnings, warning => warning.Code == "squareness_not_held");
    }

    /// <summary>0.06 m2 in cuts of 100 cm2 are six, at half the feed.</summary>
    [Fact]
    public void New_blade_is_broken_in_over_its_first_area_at_half_the_feed()
    {
        var data = Data(Good, null);
        Assert.Equal((6, 0.5m), (data.BreakIn.Cuts, data.BreakIn.FeedFactor));
        Assert.InRange(data.BreakIn.SecondsPerCut / data.CutSeconds, 1.995m, 2.005m);
    }

    [Fact]
    public void Break_in_keeps_the_lightest_load_of_a_work_hardening_grade()
    {
        var data = CuttingDataCalculator.For(TestSection.Solid(250m, 250m), Shop.Grade("304"), Shop.Saw(), Shop.Blade(1.4m, 2m), EndCut.Square).Data!;
        Assert.InRange(data.BreakIn.SecondsPerCut / data.CutSeconds, 1m, 1.99m);
        Assert.Equal((double)(data.CutSeconds / data.BreakIn.SecondsPerCut), (double)data.BreakIn.FeedFactor, 0.002);
    }

    [Fact]
    public void Worn_blades_go_to_shapes_and_good_ones_to_solids_and_to_tight_squareness()
    {
        Blade[] blades = [Named("a", 0.9m, 2, 3), Named("b", 0.3m, 2, 3), Named("c", 0.6m, 2, 3)];
        Blade[] fine = [Named("a", 0.9m, 5, 8), Named("b", 0.3m, 5, 8), Named("c", 0.6m, 5, 8)];
        Assert.Equal("a", Chosen(TestSection.Solid(100m, 100m), blades, null, null));
        Assert.Equal("b", Chosen(TestSection.Beam(200m, 100m, 5.6m, 8.5m), fine, null, null));
        Assert.Equal("a", Chosen(TestSection.Beam(200m, 100m, 5.6m, 8.5m), fine, null, Length.FromMillimeters(0.2m)));
        Assert.Equal("c", Chosen(TestSection.Beam(200m, 100m, 5.6m, 8.5m), fine, "c", null));
    }

    private static string Chosen(TestSection section, Blade[] blades, string? mounted, Length? squareness) =>
        BladeChoice.Choose(section, Shop.Grade("S355J2"), Shop.Saw() with { Blades = blades, MountedBladeId = mounted }, [EndCut.Square], CutBundle.Single, squareness: squareness).Choice!.Blade.BladeId;

    private static Blade Named(string id, decimal life, decimal coarsest, decimal finest) => Shop.Blade(coarsest, finest) with { BladeId = id, RemainingLife = life };

    private static CutData Data(Blade blade, decimal? squareness) => CuttingDataCalculator.For(
        TestSection.Solid(100m, 100m), Shop.Grade("1045"), Shop.Saw(), blade, EndCut.Square, CutBundle.Single,
        squareness: squareness is { } millimeters ? Length.FromMillimeters(millimeters) : null).Data!;
}
