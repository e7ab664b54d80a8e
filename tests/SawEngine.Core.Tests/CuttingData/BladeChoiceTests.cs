using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.CuttingData;

public sealed class BladeChoiceTests
{
    /// <summary>6 to 12 mean teeth wanted in solids, coarsest that fits (common practice, no source).</summary>
    [Theory]
    [InlineData(20, 8, 12)]
    [InlineData(50, 4, 6)]
    [InlineData(100, 2, 3)]
    [InlineData(200, 0.75, 1.25)]
    public void Solid_round_gets_the_coarsest_blade_with_six_mean_teeth(int diameter, double coarsest, double finest)
    {
        var choice = Choose(TestSection.Round(diameter)).Choice!;
        Assert.Equal(((decimal)coarsest, (decimal)finest), (choice.Blade.CoarsestTeethPerInch, choice.Blade.FinestTeethPerInch));
        Assert.InRange(choice.Cuts[0].TeethInWork.Mean, 6m, 12m);
    }

    [Theory]
    [InlineData("S355J2")]
    [InlineData("304")]
    [InlineData("Ti-6Al-4V")]
    [InlineData("6061")]
    public void Every_section_of_the_catalog_gets_a_blade_from_the_ten_production_pitches(string grade)
    {
        var wide = Length.FromMillimeters(1000);
        var saw = Shop.Saw() with { Capacity = new(wide, wide, wide), Blades = DefaultBlades.For(new(wide, wide, wide)) };
        Assert.Equal(10, saw.Blades.Count);
        Assert.All(SectionCatalog.Standard.Items, item => Assert.NotNull(BladeChoice.Choose(item.Section, Shop.Grade(grade), saw, [EndCut.Square]).Choice));
    }

    [Fact]
    public void Beam_with_a_thin_web_gets_the_coarsest_blade_that_keeps_a_tooth_in_the_web()
    {
        var choice = LayChoice.Choose(
            new Lay(0), TestSection.Beam(200m, 100m, 5.6m, 8.5m), Shop.Grade("S355J2"), Shop.Saw(), [EndCut.Square], CutBundle.Single, CuttingParameters.Default).Choice!;
        Assert.Equal(5m, choice.Blade.CoarsestTeethPerInch);
        Assert.Contains(choice.Rejected, blade => blade is { BladeId: "34x1.1-2/3", Code: "fewer_than_wanted_teeth" });
        Assert.Contains(choice.Rejected, blade => blade is { BladeId: "34x1.1-10/14", Code: "coarser_blade_fits" });
        Assert.Equal(9, choice.Rejected.Count);
    }

    [Fact]
    public void Beam_is_laid_on_its_side_where_that_is_faster()
    {
        var choice = Choose(TestSection.Beam(200m, 100m, 5.6m, 8.5m)).Choice!;
        Assert.Equal(new Lay(1), choice.Lay);
        Assert.Equal(3m, choice.Blade.CoarsestTeethPerInch);
    }

    [Fact]
    public void Flat_lies_as_its_wanted_teeth_are_in_the_work_even_where_standing_is_faster()
    {
        var choice = BladeChoice.Choose(TestSection.Solid(100m, 10m), Shop.Grade("S355J2"), Shop.Saw(), [EndCut.Square]).Choice!;
        Assert.Equal(new Lay(0), choice.Lay);
        Assert.InRange(choice.Cuts[0].TeethInWork.Mean, 6m, 12m);
    }

    [Fact]
    public void Every_parameter_has_a_name_of_its_own_and_a_source()
    {
        var values = CuttingParameters.Default.Values;
        Assert.Equal(22, values.Select(value => value.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(values, value => Assert.NotEmpty(value.Source));
    }

    [Fact]
    public void Blade_without_a_tooth_in_the_wall_is_rejected_with_its_teeth()
    {
        var choice = Choose(TestSection.Tube(300m, 60m, 3m)).Choice!;
        Assert.Contains(choice.Rejected, blade => blade is { Code: "too_few_teeth" });
        Assert.True(choice.Cuts[0].TeethInWork.Min >= 1m);
    }

    [Fact]
    public void Nearest_blade_is_taken_with_a_warning_where_none_has_3_to_24_teeth()
    {
        var saw = Shop.Saw() with { Blades = [Shop.Blade(8, 12), Shop.Blade(10, 14)] };
        var choice = BladeChoice.Choose(TestSection.Round(200m), Shop.Grade("1045"), saw, [EndCut.Square]).Choice!;
        Assert.Equal(8m, choice.Blade.CoarsestTeethPerInch);
        Assert.Contains(choice.Cuts[0].Warnings, warning => warning.Code == "teeth_outside_range");
    }

    [Fact]
    public void One_blade_that_is_too_coarse_says_so()
    {
        var obstacle = BladeChoice.Choose(TestSection.Tube(60m, 60m, 3m), Shop.Grade("S235JR"), Shop.Saw() with { Blades = [Shop.Blade(2, 3)] }, [EndCut.Square]).Obstacle!;
        Assert.Equal("too_few_teeth", obstacle.Code);
        Assert.Contains("0.24 teeth", obstacle.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void No_blade_fits_where_not_even_one_tooth_is_in_the_wall()
    {
        var saw = Shop.Saw() with { Blades = [Shop.Blade(2, 3), Shop.Blade(1.4m, 2m)] };
        Assert.Equal("no_blade_fits", BladeChoice.Choose(TestSection.Tube(60m, 60m, 3m), Shop.Grade("S235JR"), saw, [EndCut.Square]).Obstacle!.Code);
    }

    [Fact]
    public void Carbide_of_the_same_pitch_is_taken_in_titanium_and_bimetal_is_slower()
    {
        var saw = Shop.Saw() with { Blades = [Shop.Blade(2, 3) with { BladeId = "bimetal" }, Shop.Blade(2, 3, teeth: ToothMaterial.Carbide) with { BladeId = "carbide" }] };
        var choice = BladeChoice.Choose(TestSection.Round(100m), Shop.Grade("Ti-6Al-4V"), saw, [EndCut.Square]).Choice!;
        Assert.Equal("carbide", choice.Blade.BladeId);
        Assert.Equal("slower", Assert.Single(choice.Rejected).Code);
    }

    [Fact]
    public void Section_is_turned_so_that_the_saw_can_swivel_into_the_miter()
    {
        var miter = new EndCut(Angle.FromDegrees(30), Angle.Zero);
        var choice = BladeChoice.Choose(TestSection.Tube(60m, 100m, 5m), Shop.Grade("S235JR"), Shop.Saw(), [EndCut.Square, miter]).Choice!;
        Assert.Equal(1, choice.Lay.QuarterTurns % 2);
        Assert.Equal(Angle.Zero, choice.Lay.Of(miter).HeightAngle);
        Assert.True(choice.Cuts[1].CutArea > choice.Cuts[0].CutArea);
    }

    [Fact]
    public void Bar_is_turned_over_where_only_the_other_hand_reaches_the_angle()
    {
        var miter = Shop.Swivel(-55);
        var choice = BladeChoice.Choose(TestSection.Tube(60m, 60m, 5m), Shop.Grade("S235JR"), Shop.Saw(), [miter]).Choice!;
        Assert.Equal(Angle.FromDegrees(55), choice.Lay.Of(miter).WidthAngle);
    }

    [Theory]
    [InlineData(70, 0, "miter_beyond_saw")]
    [InlineData(30, 30, "compound_miter_not_possible")]
    public void Miter_that_no_lay_allows_is_refused_with_its_reason(int width, int height, string code)
    {
        var cut = new EndCut(Angle.FromDegrees(height), Angle.FromDegrees(width));
        Assert.Equal(code, BladeChoice.Choose(TestSection.Tube(60m, 60m, 5m), Shop.Grade("S235JR"), Shop.Saw(), [cut]).Obstacle!.Code);
    }

    [Fact]
    public void Miter_takes_capacity_by_one_over_the_cosine()
    {
        var saw = Shop.Saw(capacity: 100m);
        var section = TestSection.Solid(90m, 50m);
        Assert.Null(SawFit.Obstacle(saw, section, EndCut.Square));
        Assert.Null(SawFit.Obstacle(saw, section, Shop.Swivel(25)));
        Assert.Equal("section_exceeds_capacity", SawFit.Obstacle(saw, section, Shop.Swivel(30)));
    }

    [Fact]
    public void Four_quarter_turns_leave_every_cut_as_it_was()
    {
        var cut = new EndCut(new(10_000), new(-25_000));
        var quarter = new Lay(1);
        Assert.Equal(cut, quarter.Of(quarter.Of(quarter.Of(quarter.Of(cut)))));
        Assert.Equal(new Lay(2).Of(cut), quarter.Of(quarter.Of(cut)));
        Assert.Equal(new Lay(3).Of(cut), quarter.Of(new Lay(2).Of(cut)));
    }

    private static BladeChoiceResult Choose(TestSection section) => BladeChoice.Choose(section, Shop.Grade("1045"), Shop.Saw(), [EndCut.Square]);
}
