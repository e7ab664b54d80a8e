using CsCheck;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Tests.CuttingData;
using static SawEngine.Core.Tests.Sections.SectionProfileTests;

namespace SawEngine.Core.Tests.Sections;

/// <summary>Custom sections by area and contact widths. Expected areas are sums of trapezoids by hand.</summary>
public sealed class ProfileSectionTests
{
    /// <summary>A square tube of 100 mm with a wall of 10 mm: 2 x 100 x 10 + 2 x 80 x 10 = 3600 mm2.</summary>
    private static SectionDimensions Tube { get; } = Stated(100, (0, 100, 1), (10, 100, 1), (10, 20, 2), (90, 20, 2), (90, 100, 1), (100, 100, 1));

    /// <summary>A trapezoid 40 mm wide on top, 80 mm at the bottom, 50 mm high: 3000 mm2.</summary>
    private static SectionDimensions Trapezoid { get; } = Stated(80, (0, 40, 1), (50, 80, 1));

    [Fact]
    public void Area_is_the_integral_of_the_contact_widths_where_none_is_stated()
    {
        Assert.Equal(3600m, Made(Tube).Area.SquareMillimeters);
        Assert.Equal(3000m, Made(Trapezoid).Area.SquareMillimeters);
        Assert.Equal((Mm(50), Mm(80)), (Made(Trapezoid).Height, Made(Trapezoid).Width));
    }

    [Fact]
    public void Stated_area_counts_where_the_contact_widths_agree_within_one_percent()
    {
        Assert.Equal(3029m, Made(Trapezoid with { AreaMm2 = 3029m }).Area.SquareMillimeters);
        Assert.Equal(23.77765m, Made(Trapezoid with { AreaMm2 = 3029m }).MassPerMeter(new(7850m)).Kilograms);
        AssertFaults(Trapezoid with { AreaMm2 = 3031m }, ("areaMm2", "area_disagrees"));
        AssertFaults(Trapezoid with { AreaMm2 = 2970m }, ("areaMm2", "area_disagrees"));
        AssertFaults(Trapezoid with { AreaMm2 = 0m }, ("areaMm2", "must_be_positive"));
    }

    [Fact]
    public void Contact_width_of_random_profiles_adds_up_to_the_area_within_1e_9() =>
        Gen.Select(Gen.Int[1, 5_000], Gen.Int[0, 300_000], Gen.Int[1, 5]).Array[2, 40].Sample(steps =>
        {
            var depth = 0;
            var widths = steps.Select(step => new ContactWidth(Mm((depth += step.Item1) / 1000m), Mm(step.Item2 / 1000m), step.Item3)).ToList();
            var first = widths[0].Depth;
            var section = Section.Create(
                new() { Designation = "p", Shape = SectionShape.Custom, Width = Mm(301), ContactWidths = [.. widths.Select(pair => pair with { Depth = pair.Depth - first })] }, out var faults);
            Assert.True(section is not null || faults.All(fault => fault.Code == "too_small"), string.Join("; ", faults));
            if (section is null)
                return;
            AssertClose((double)section.Area.SquareMillimeters, Travel.Integrate(section, section.ContactWidthAt), 1e-9, "profile");
            foreach (var at in section.Breakpoints)
            {
                var runs = section.RunsAt(at);
                Assert.All(runs.Zip(runs.Skip(1)), pair => Assert.True(pair.First.End < pair.Second.Start));
                Assert.All(runs, run => Assert.True(run.Start >= 0 && run.End > run.Start && run.End <= 301 + 1e-9));
            }
        }, iter: 1_000);

    [Fact]
    public void Runs_are_as_many_as_stated_and_a_step_counts_with_more_material()
    {
        var tube = Made(Tube);
        Assert.Equal([(0d, 10d), (90d, 100d)], tube.RunsAt(50));
        Assert.Equal([(0d, 100d)], tube.RunsAt(10));
        Assert.Equal([(0d, 100d)], tube.RunsAt(5));
        Assert.Equal([0d, 10d, 90d, 100d], tube.Breakpoints);
        Assert.Empty(tube.RunsAt(-0.1));
        Assert.Empty(tube.RunsAt(100.1));
        Assert.Empty(tube.RunsAt(double.NaN));
        Assert.Equal(60, Made(Trapezoid).ContactWidthAt(25), 1e-12);
    }

    /// <summary>The same tube by its dimensions, with sharp corners, is cut alike with the same blade.</summary>
    [Fact]
    public void Tube_by_contact_widths_is_cut_as_the_tube_is()
    {
        var tube = Make(new() { Designation = "tube", Shape = SectionShape.SquareTube, Width = Mm(100), Wall = Mm(10), OuterRadius = Mm(0), InnerRadius = Mm(0) });
        var byOutline = CuttingDataCalculator.For(tube, Shop.Grade("1045"), Shop.Saw(), Shop.Blade(5, 8), EndCut.Square).Data!;
        var byWidths = CuttingDataCalculator.For(Made(Tube), Shop.Grade("1045"), Shop.Saw(), Shop.Blade(5, 8), EndCut.Square).Data!;
        Assert.Equal((byOutline.CutSeconds, byOutline.TeethInWork, byOutline.BladeSpeed), (byWidths.CutSeconds, byWidths.TeethInWork, byWidths.BladeSpeed));
    }

    [Fact]
    public void Section_without_turned_contact_widths_lies_only_as_it_comes()
    {
        var section = Made(Trapezoid);
        Assert.False(section.CanTurn);
        Assert.Throws<InvalidOperationException>(section.Turned);
        Assert.Equal([new Lay(0)], BladeChoice.LaysFor(section, [EndCut.Square]));
        Assert.Equal([new Lay(0), new Lay(2)], BladeChoice.LaysFor(section, [new(Angle.Zero, Angle.FromDegrees(30m))]));
        Assert.Equal(0, BladeChoice.Choose(section, Shop.Grade("1045"), Shop.Saw(), [EndCut.Square]).Choice!.Lay.QuarterTurns);
    }

    [Fact]
    public void Miter_in_the_plane_of_the_height_needs_the_contact_widths_of_the_turned_section()
    {
        EndCut inHeight = new(Angle.FromDegrees(30m), Angle.Zero);
        Assert.Equal(SawFit.MiterPlane, BladeChoice.Choose(Made(Trapezoid), Shop.Grade("1045"), Shop.Saw(), [inHeight]).Obstacle!.Code);
        Assert.Equal(1, BladeChoice.Choose(Made(TurnedTrapezoid), Shop.Grade("1045"), Shop.Saw(), [inHeight]).Choice!.Lay.QuarterTurns % 2);
    }

    [Fact]
    public void Turned_contact_widths_are_those_of_the_section_turned_a_quarter()
    {
        var section = Made(TurnedTrapezoid);
        var turned = section.Turned();
        Assert.Equal((section.Height, section.Width, section.Area), (turned.Width, turned.Height, turned.Area));
        Assert.Same(section, turned.Turned());
        Assert.Equal(50, turned.ContactWidthAt(40), 1e-12);
        AssertClose(3000, Travel.Integrate(turned, turned.ContactWidthAt), 1e-9, "turned");
    }

    [Fact]
    public void Symmetry_is_not_taken_for_granted()
    {
        var section = Made(Tube);
        Assert.Equal([PieceTurn.None], PieceFaces.TurnsOf(section));
        Assert.False(SectionMirror.LeavesAsBefore(section, leftToRight: true, topToBottom: false));
        Assert.False(section.IsSolid);
        Assert.NotNull(BundleFit.Obstacle(new(4, 1), null, section, EndCut.Square, CutBundle.Full(2, 1)));
    }

    [Fact]
    public void Faults_of_contact_widths_name_their_place()
    {
        AssertFaults(Stated(80, (0, 40, 1)), ("contactWidths", "too_few_points"));
        AssertFaults(Stated(80, [.. Enumerable.Range(0, 501).Select(i => ((decimal)i, 40m, 1))]), ("contactWidths", "too_many_points"));
        AssertFaults(Stated(80, (1, 40, 1), (50, 40, 1)), ("contactWidths[0].depth", "depths_not_ascending"));
        AssertFaults(Stated(80, (0, 40, 1), (50, 40, 1), (40, 40, 1)), ("contactWidths[2].depth", "depths_not_ascending"));
        AssertFaults(Stated(80, (0, 40, 1), (50, 40, 1), (50, 30, 1), (50, 20, 1)), ("contactWidths[3].depth", "depths_not_ascending"));
        AssertFaults(Stated(80, (0, 40, 1), (10_001, 40, 1)), ("contactWidths[1].depth", "too_large"));
        AssertFaults(Stated(80, (0, 40, 1), (0, 40, 1)), ("contactWidths[1].depth", "too_small"));
        AssertFaults(Stated(80, (0, -1, 1), (50, 81, 1)), ("contactWidths[0].width", "must_not_be_negative"), ("contactWidths[1].width", "too_large"));
        AssertFaults(Stated(80, (0, 80, 2), (50, 40, 101), (60, 40, 0)), ("contactWidths[0].runs", "too_large"), ("contactWidths[1].runs", "too_large"), ("contactWidths[2].runs", "too_small"));
        AssertFaults(Stated(80, (0, 0, 1), (50, 0, 1)), ("contactWidths", "too_small"));
    }

    [Fact]
    public void Faults_of_turned_contact_widths_name_their_place()
    {
        AssertFaults(Trapezoid with { ContactWidthsTurned = [new(Mm(0), Mm(40)), new(Mm(79), Mm(40))] }, ("contactWidthsTurned[1].depth", "extent_disagrees"));
        AssertFaults(Trapezoid with { ContactWidthsTurned = [new(Mm(0), Mm(51)), new(Mm(80), Mm(40))] }, ("contactWidthsTurned[0].width", "too_large"));
        AssertFaults(Trapezoid with { ContactWidthsTurned = [new(Mm(0), Mm(40)), new(Mm(80), Mm(40))] }, ("contactWidthsTurned", "area_disagrees"));
    }

    [Fact]
    public void Members_of_the_two_ways_to_state_a_custom_section_do_not_mix()
    {
        AssertFaults(Tube with { Outline = [] }, ("outline", "not_used_by_shape"));
        AssertFaults(Tube with { Width = null }, ("width", "missing"));
        AssertFaults(Tube with { ContactWidths = null }, ("outline", "missing"), ("width", "not_used_by_shape"));
        AssertFaults(Tube with { Shape = SectionShape.Square }, ("contactWidths", "not_used_by_shape"));
        Assert.True(Tube.Gives("contactWidths[3].depth"));
    }

    private static SectionDimensions TurnedTrapezoid { get; } = Trapezoid with { ContactWidthsTurned = [new(Mm(0), Mm(0)), new(Mm(20), Mm(50)), new(Mm(60), Mm(50)), new(Mm(80), Mm(0))] };

    private static SectionDimensions Stated(decimal width, params (decimal Depth, decimal Width, int Runs)[] widths) => new()
    {
        Designation = "profile",
        Shape = SectionShape.Custom,
        Width = Mm(width),
        ContactWidths = [.. widths.Select(pair => new ContactWidth(Mm(pair.Depth), Mm(pair.Width), pair.Runs))],
    };

    private static ProfileSection Made(SectionDimensions dimensions)
    {
        var section = Section.Create(dimensions, out var faults);
        Assert.True(section is not null, string.Join("; ", faults));
        return Assert.IsType<ProfileSection>(section);
    }

    private static void AssertFaults(SectionDimensions dimensions, params (string Member, string Code)[] expected)
    {
        Assert.Null(Section.Create(dimensions, out var faults));
        Assert.Equal(expected.Order(), faults.Select(fault => (fault.Member, fault.Code)).Order());
    }
}
