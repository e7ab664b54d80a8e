using CsCheck;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using static SawEngine.Core.Tests.Sections.SectionProfileTests;

namespace SawEngine.Core.Tests.Sections;

public sealed class SectionFaultTests
{
    private static readonly string[] s_codes =
    [
        "missing", "not_used_by_shape", "must_be_positive", "must_not_be_negative", "too_small", "too_large",
        "too_few_points", "too_many_points", "repeated_point", "crosses_itself",
    ];

    [Fact]
    public void Wild_dimensions_give_a_section_or_faults_and_never_an_exception() =>
        RandomSections.Wild.Sample(wild =>
        {
            foreach (var dimensions in (SectionDimensions[])[wild, RandomSections.OnlyUsed(wild)])
            {
                var section = OutlineSection.Create(dimensions, out var faults);
                Assert.Equal(section is null, faults.Count > 0);
                Assert.All(faults, f => Assert.Contains(f.Code, s_codes));
                Assert.All(faults, f => Assert.NotEqual("", f.Member));
                if (section is not null)
                    AssertClose((double)section.Area.SquareMillimeters, Travel.Integrate(section, section.ContactWidthAt), 1e-7, dimensions.ToString());
            }
        }, iter: 3_000);

    [Fact]
    public void All_faults_of_members_are_found_at_once()
    {
        OutlineSection.Create(new() { Designation = " ", Shape = SectionShape.Flat, Height = Length.Zero, Wall = Mm(-1), RootRadius = Mm(-1) }, out var faults);
        Assert.Equal(
            [
                ("designation", "missing"), ("width", "missing"), ("wall", "not_used_by_shape"), ("rootRadius", "not_used_by_shape"),
                ("height", "must_be_positive"), ("wall", "must_be_positive"), ("rootRadius", "must_not_be_negative"),
            ],
            faults.Select(f => (f.Member, f.Code)));
    }

    [Theory]
    [MemberData(nameof(Shapes), MemberType = typeof(SectionProfileTests))]
    public void Nothing_given_names_what_the_shape_needs(SectionShape shape)
    {
        string[] needed = shape switch
        {
            SectionShape.Round => ["diameter"],
            SectionShape.Square => ["width"],
            SectionShape.Hexagon => ["acrossFlats"],
            SectionShape.Flat => ["height", "width"],
            SectionShape.RoundTube or SectionShape.Pipe => ["diameter", "wall"],
            SectionShape.SquareTube => ["width", "wall"],
            SectionShape.RectangleTube => ["height", "width", "wall"],
            SectionShape.Angle => ["height", "width", "thickness"],
            SectionShape.Channel or SectionShape.IBeam or SectionShape.Tee => ["height", "width", "web", "flange"],
            _ => ["outline"],
        };
        AssertFaults(new() { Designation = "x", Shape = shape }, [.. needed.Select(n => (n, "missing"))]);
    }

    [Fact]
    public void Size_has_limits()
    {
        AssertFaults(Round(Length.FromNanometers(999)), ("diameter", "too_small"));
        AssertFaults(Round(Length.FromNanometers(10_000_000_001)), ("diameter", "too_large"));
        AssertFaults(Round(new Length(long.MinValue)), ("diameter", "must_be_positive"));
        Make(Round(Length.FromNanometers(1_000)));
        Make(Round(Mm(10_000)));
    }

    [Fact]
    public void Wall_of_half_the_diameter_or_side_leaves_no_tube()
    {
        AssertFaults(new() { Designation = "x", Shape = SectionShape.RoundTube, Diameter = Mm(50), Wall = Mm(25) }, ("wall", "too_large"));
        AssertFaults(new() { Designation = "x", Shape = SectionShape.SquareTube, Width = Mm(50), Wall = Mm(25) }, ("wall", "too_large"));
        AssertFaults(new() { Designation = "x", Shape = SectionShape.RectangleTube, Height = Mm(30), Width = Mm(50), Wall = Mm(15) }, ("wall", "too_large"));
        Make(new() { Designation = "x", Shape = SectionShape.RoundTube, Diameter = Mm(50), Wall = Mm(24.999999m) });
    }

    [Fact]
    public void Corner_radii_of_a_tube_must_fit_and_leave_a_wall()
    {
        var tube = new SectionDimensions { Designation = "x", Shape = SectionShape.SquareTube, Width = Mm(50), Wall = Mm(5) };
        Make(tube with { OuterRadius = Mm(25), InnerRadius = Mm(20) });
        AssertFaults(tube with { OuterRadius = Mm(25.1m), InnerRadius = Mm(20) }, ("outerRadius", "too_large"));
        AssertFaults(tube with { OuterRadius = Mm(25), InnerRadius = Mm(20.1m) }, ("innerRadius", "too_large"));
        // A sharp inner corner touches an outer arc of 5/(1 - 1/sqrt 2) = 17.07.
        Make(tube with { OuterRadius = Mm(17), InnerRadius = Mm(0) });
        AssertFaults(tube with { OuterRadius = Mm(17.1m), InnerRadius = Mm(0) }, ("outerRadius", "too_large"));
    }

    [Fact]
    public void Corner_radii_that_are_not_given_are_marked_as_common_practice()
    {
        var tube = new SectionDimensions { Designation = "x", Shape = SectionShape.SquareTube, Width = Mm(50), Wall = Mm(5) };
        var assumed = Make(tube);
        var given = Make(tube with { OuterRadius = Mm(10), InnerRadius = Mm(5) });
        Assert.Equal(given.Area, assumed.Area);
        Assert.Equal((Confidence.Caller, "the request"), (given.Confidence, given.Source));
        Assert.Equal(Confidence.CommonPractice, assumed.Confidence);
        Assert.Contains("common practice", assumed.Source, StringComparison.Ordinal);
        Make(tube with { Wall = Mm(20) }); // twice the wall would not fit: half the side instead
    }

    [Fact]
    public void Profile_proportions_name_the_dimension_at_fault()
    {
        var channel = new SectionDimensions { Designation = "x", Shape = SectionShape.Channel, Height = Mm(100), Width = Mm(50), Web = Mm(6), Flange = Mm(8) };
        AssertFaults(channel with { Web = Mm(50), Flange = Mm(50) }, ("web", "too_large"), ("flange", "too_large"));
        AssertFaults(channel with { RootRadius = Mm(42.1m) }, ("rootRadius", "too_large"));
        AssertFaults(channel with { ToeRadius = Mm(8.1m) }, ("toeRadius", "too_large"));
        AssertFaults(channel with { FlangeAt = Mm(20) }, ("flangeAt", "not_used_by_shape"));
        AssertFaults(channel with { FlangeSlope = 0.08m, FlangeAt = Mm(51) }, ("flangeAt", "too_large"));
        AssertFaults(channel with { FlangeSlope = 0.32m }, ("flangeSlope", "too_large")); // 8 - 0.32 * 25 = 0 at the toe
        AssertFaults(channel with { FlangeSlope = 0.9m, Flange = Mm(45) }, ("flangeSlope", "too_large")); // 45 + 0.9 * 19 at the web
        AssertFaults(channel with { FlangeSlope = 0 }, ("flangeSlope", "must_be_positive"));
        AssertFaults(channel with { FlangeSlope = 1 }, ("flangeSlope", "too_large"));
        AssertFaults(channel with { Shape = SectionShape.IBeam, Web = Mm(50), Flange = Mm(50) }, ("web", "too_large"), ("flange", "too_large"));
        AssertFaults(channel with { Shape = SectionShape.IBeam, RootRadius = Mm(22.1m) }, ("rootRadius", "too_large"));
        AssertFaults(channel with { Shape = SectionShape.Tee, Web = Mm(50), Flange = Mm(100) }, ("web", "too_large"), ("flange", "too_large"));
        var angle = new SectionDimensions { Designation = "x", Shape = SectionShape.Angle, Height = Mm(100), Width = Mm(50), Thickness = Mm(10) };
        AssertFaults(angle with { Thickness = Mm(50) }, ("thickness", "too_large"));
        AssertFaults(angle with { RootRadius = Mm(30), ToeRadius = Mm(10.1m) }, ("toeRadius", "too_large"), ("rootRadius", "too_large"));
        Make(angle with { RootRadius = Mm(30), ToeRadius = Mm(10) });
    }

    [Fact]
    public void Custom_outline_must_be_one_simple_polygon()
    {
        AssertOutline("too_few_points", (0, 0), (10, 0));
        AssertOutline("repeated_point", (0, 0), (10, 0), (10, 0), (0, 10));
        AssertOutline("repeated_point", (0, 0), (10, 0), (0, 10), (0, 0));
        AssertOutline("crosses_itself", (0, 0), (10, 10), (10, 0), (0, 10));
        AssertOutline("crosses_itself", (0, 0), (10, 0), (20, 0)); // no area
        AssertOutline("crosses_itself", (0, 0), (10, 0), (10, 10), (10, 5)); // runs back over itself
        AssertOutline("crosses_itself", (0, 0), (20, 0), (20, 10), (10, 0), (0, 10)); // touches a side
        AssertOutline("crosses_itself", (0, 0), (10, 10), (20, 0), (20, 20), (10, 10), (0, 20)); // touches a corner
        AssertOutline("too_large", (0, 0), (10_001, 0), (0, 10));
        AssertOutline("too_small", (0, 0), (1, 0), (0, 0.0009m));
        AssertOutline("too_small", (0, 0), (0.001m, 0), (0.001m, 0.001m)); // 5e-7 mm2
        AssertFaults(
            new() { Designation = "x", Shape = SectionShape.Custom, Outline = [.. Enumerable.Range(0, 501).Select(i => new OutlinePoint(Mm(i), Mm(i * i % 7)))] },
            ("outline", "too_many_points"));
    }

    [Fact]
    public void Corners_in_the_middle_of_a_side_do_no_harm() =>
        Assert.Equal(Custom((0, 0), (10, 0), (10, 10), (0, 10)).Area, Custom((0, 0), (5, 0), (10, 0), (10, 10), (0, 10)).Area);

    private static SectionDimensions Round(Length diameter) => new() { Designation = "x", Shape = SectionShape.Round, Diameter = diameter };

    private static void AssertOutline(string code, params (decimal X, decimal Y)[] corners) =>
        AssertFaults(
            new() { Designation = "x", Shape = SectionShape.Custom, Outline = [.. corners.Select(c => new OutlinePoint(Mm(c.X), Mm(c.Y)))] },
            ("outline", code));

    private static void AssertFaults(SectionDimensions dimensions, params (string Member, string Code)[] expected)
    {
        Assert.Null(OutlineSection.Create(dimensions, out var faults));
        Assert.Equal(expected.Order(), faults.Select(f => (f.Member, f.Code)).Order());
    }
}
