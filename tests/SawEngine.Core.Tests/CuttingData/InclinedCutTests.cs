using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Cuts of saws that swivel and then tilt, and of canted heads, by hand.</summary>
public sealed class InclinedCutTests
{
    private static readonly Saw Tilting = Shop.Saw() with { MiterRange = new(Angle.FromDegrees(60), Angle.FromDegrees(60)) { TiltToFirstEnd = Angle.FromDegrees(45), TiltToSecondEnd = Angle.FromDegrees(60) } };

    /// <summary>End angles in the planes of the section: A sqrt(1 + tan² 45 + tan² 45) = 1.732 A.</summary>
    [Fact]
    public void Face_at_45_and_45_in_the_planes_of_the_section_has_1_732_times_the_area() =>
        Assert.Equal(17_320.508m, DataOf(new(Angle.FromDegrees(45), Angle.FromDegrees(45))).CutArea.SquareMillimeters);

    /// <summary>A saw that swivels by 45 and then tilts by 45: A/(cos 45 cos 45) = 2 A. Its trace in the plane of the height rises by atan(tan 45/cos 45) = 54.7356 degrees.</summary>
    [Fact]
    public void Swivel_of_45_and_tilt_of_45_have_twice_the_area()
    {
        var face = new EndCut(Angle.FromDegrees(54.736m), Angle.FromDegrees(45));
        Assert.InRange(face.TiltTangent, 0.99999, 1.00002);
        Assert.InRange(DataOf(face).CutArea.SquareMillimeters, 19_999.9m, 20_000.4m);
    }

    /// <summary>A face at 45 and 45 needs a tilt of atan(tan 45 cos 45) = 35.264 degrees.</summary>
    [Theory]
    [InlineData(35.265, null)]
    [InlineData(35.264, SawFit.MiterRange)]
    [InlineData(0, SawFit.CompoundMiter)]
    public void Tilt_is_measured_after_the_swivel(double tilt, string? obstacle)
    {
        var saw = Shop.Saw() with { MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(45)) { TiltToSecondEnd = Angle.FromDegrees((decimal)tilt) } };
        Assert.Equal(obstacle, SawFit.Obstacle(saw, TestSection.Solid(100m, 100m), new(Angle.FromDegrees(45), Angle.FromDegrees(45))));
    }

    [Theory]
    [InlineData(-45, null)]
    [InlineData(-46, SawFit.MiterRange)]
    [InlineData(60, null)]
    [InlineData(61, SawFit.MiterRange)]
    public void Each_side_of_the_tilt_has_its_own_limit(int degrees, string? obstacle) =>
        Assert.Equal(obstacle, SawFit.Obstacle(Tilting, TestSection.Solid(100m, 100m), new(Angle.FromDegrees(degrees), Angle.Zero)));

    /// <summary>A swivel widens every run by 1/cos a, a tilt lengthens the travel by 1/cos b; width 100/cos 60 = 200, travel 50/cos 45 = 70.71.</summary>
    [Fact]
    public void Swivel_widens_and_tilt_lengthens()
    {
        var swiveled = CutProfile.Of(TestSection.Solid(100m, 50m), Shop.Swivel(60), CuttingParameters.Default);
        Assert.Equal((200d, 50d), (Math.Round(swiveled.LongestRun, 6), Math.Round(swiveled.Travel, 6)));
        var tilted = CutProfile.Of(TestSection.Solid(100m, 50m), new(Angle.FromDegrees(45), Angle.Zero), CuttingParameters.Default);
        Assert.Equal((100d, 70.710678), (Math.Round(tilted.LongestRun, 6), Math.Round(tilted.Travel, 6)));
    }

    [Theory]
    [InlineData(250, 289, null)]
    [InlineData(250, 291, SawFit.Capacity)]
    [InlineData(206, 100, SawFit.Capacity)]
    public void Swivel_takes_width_and_tilt_takes_height(int width, int height, string? obstacle)
    {
        // 410 mm each way: 205 wide at 60 degrees, or 289.9 high at 45.
        var face = width == 250 ? new EndCut(Angle.FromDegrees(45), Angle.Zero) : Shop.Swivel(60);
        Assert.Equal(obstacle, SawFit.Obstacle(Tilting, TestSection.Solid(width, height), face));
    }

    /// <summary>A canted head travels H + W tan c: 50 + 100 tan 10 = 67.633 mm; the blade meets the same area.</summary>
    [Theory]
    [InlineData("Flat 100x50")]
    [InlineData("RHS 100x50x5 EN 10219")]
    public void Canted_head_travels_farther_through_the_same_area(string designation)
    {
        var section = SectionCatalog.Standard.Find(designation) ?? TestSection.Solid(100m, 50m);
        var profile = CutProfile.Of(section, EndCut.Square, CutBundle.Single, CuttingParameters.Default, Angle.FromDegrees(10));
        Assert.InRange(profile.Slices.Sum(slice => slice.Thickness * slice.Width) / (double)section.Area.SquareMillimeters, 0.9995, 1.0005);
        if (section.IsSolid)
            Assert.Equal(67.632698, profile.HeadTravel, 3);
        else
            Assert.InRange(profile.HeadTravel, 60, 67.633);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(-10)]
    public void Round_is_as_high_to_a_canted_blade(int cant)
    {
        var profile = CutProfile.Of(SectionCatalog.Standard.Find("Round 80")!, EndCut.Square, CutBundle.Single, CuttingParameters.Default, Angle.FromDegrees(cant));
        Assert.Equal(80d, profile.Travel, 2);
        Assert.Equal(80d / Math.Cos(Math.PI / 18), profile.HeadTravel, 2);
    }

    /// <summary>Three bars of 40 by 20 side by side: 20 + 120 tan 5 = 30.499 mm.</summary>
    [Fact]
    public void Bundle_is_stretched_to_the_travel_of_a_canted_blade()
    {
        var section = SectionCatalog.Standard.Find("Flat 40x20")!;
        var profile = CutProfile.Of(section, EndCut.Square, CutBundle.Full(3, 1), CuttingParameters.Default, Angle.FromDegrees(5));
        Assert.Equal(30.498640, profile.HeadTravel, 3);
        Assert.Equal(2400, profile.Slices.Sum(slice => slice.Thickness * slice.Width), 6);
    }

    /// <summary>A beam lies level in its web for most of the way; canted, the blade is never in a whole flange at once.</summary>
    [Fact]
    public void Canted_blade_meets_a_flange_little_by_little()
    {
        var section = SectionCatalog.Standard.Find("IPE 200")!;
        var level = CutProfile.Of(section, EndCut.Square, CuttingParameters.Default);
        var canted = CutProfile.Of(section, EndCut.Square, CutBundle.Single, CuttingParameters.Default, Angle.FromDegrees(10));
        Assert.Equal(100, level.LongestRun, 3);
        Assert.InRange(canted.LongestRun, 20, 70);
    }

    private static CutData DataOf(EndCut face) =>
        CuttingDataCalculator.For(TestSection.Solid(100m, 100m), Shop.Grade("1045"), Tilting, Shop.Blade(2, 3), face).Data!;
}
