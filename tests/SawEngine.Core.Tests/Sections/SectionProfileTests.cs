using CsCheck;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.Sections;

public sealed class SectionProfileTests
{
    private const int RandomPerShape = 200; // 13 shapes, each also turned

    public static TheoryData<SectionShape> Shapes => [.. Enum.GetValues<SectionShape>()];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Contact_width_adds_up_to_the_area_in_either_lie(SectionShape shape) =>
        RandomSections.Of(shape).Sample(dimensions =>
        {
            var section = Make(dimensions);
            foreach (var lie in (Section[])[section, section.Turned()])
                AssertClose((double)section.Area.SquareMillimeters, Travel.Integrate(lie, lie.ContactWidthAt), 1e-9, dimensions.ToString());
        }, iter: RandomPerShape);

    /// <summary>
    /// 10 010 random dimensions, 770 of each of the 13 shapes, each as it comes and turned, cut square and mitered by a swivel a and a tilt b: a swivel widens the contact
    /// width by 1/cos a, a tilt lengthens the travel by 1/cos b (plane geometry), so that the cut face is A/(cos a cos b).
    /// </summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Contact_width_of_10_000_random_sections_adds_up_to_the_cut_area_within_1e_9_turned_and_mitered(SectionShape shape) =>
        Gen.Select(RandomSections.Of(shape), Gen.Double[0, 60], Gen.Double[0, 60]).Sample((dimensions, swivel, tilt) =>
        {
            var section = Make(dimensions);
            var (widening, lengthening) = (1 / Math.Cos(swivel * Math.PI / 180), 1 / Math.Cos(tilt * Math.PI / 180));
            foreach (var lie in (Section[])[section, section.Turned()])
            {
                AssertClose((double)section.Area.SquareMillimeters, Travel.Integrate(lie, lie.ContactWidthAt), 1e-9, dimensions.ToString());
                var mitered = Travel.Integrate(lie, depth => lie.ContactWidthAt(depth) * widening) * lengthening;
                AssertClose((double)section.Area.SquareMillimeters, mitered / (widening * lengthening), 1e-9, dimensions.ToString());
            }
        }, iter: 770, threads: 1);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Runs_are_ascending_apart_and_inside_at_every_depth(SectionShape shape) =>
        Gen.Select(RandomSections.Of(shape), Gen.Double[0, 1].Array[20]).Sample((dimensions, shares) =>
        {
            var section = Make(dimensions);
            foreach (var lie in (Section[])[section, section.Turned()])
            {
                var height = lie.Height.ApproximateMillimeters;
                foreach (var depth in shares.Select(s => s * height).Concat(lie.Breakpoints).Concat(lie.Breakpoints.Select(Math.BitIncrement)).Concat(lie.Breakpoints.Select(Math.BitDecrement)))
                    AssertRuns(lie, depth);
                Assert.Empty(lie.RunsAt(-0.001));
                Assert.Empty(lie.RunsAt(height + 0.001));
                Assert.Empty(lie.RunsAt(double.NaN));
            }
        }, iter: RandomPerShape);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Breakpoints_ascend_from_top_to_bottom(SectionShape shape) =>
        RandomSections.Of(shape).Sample(dimensions =>
        {
            var section = Make(dimensions);
            Assert.Equal(0, section.Breakpoints[0]);
            Assert.Equal(section.Height.ApproximateMillimeters, section.Breakpoints[^1]);
            Assert.All(section.Breakpoints.Zip(section.Breakpoints.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        }, iter: RandomPerShape);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Turned_twice_is_the_same_profile_upside_down(SectionShape shape) =>
        Gen.Select(RandomSections.Of(shape), Gen.Double[0, 1]).Sample((dimensions, share) =>
        {
            var section = Make(dimensions);
            var turned = section.Turned();
            var twice = turned.Turned();
            Assert.Equal((section.Width, section.Height), (turned.Height, turned.Width));
            Assert.Equal((section.Height, section.Width, section.Area), (twice.Height, twice.Width, twice.Area));
            Assert.Equal((section.Designation, section.Shape, section.Source, section.Confidence), (turned.Designation, turned.Shape, turned.Source, turned.Confidence));
            var height = section.Height.ApproximateMillimeters;
            var depth = share * height;
            // Next to a breakpoint the two sides differ, and 1 - (1 - x) may fall on the other one.
            if (section.Breakpoints.All(b => Math.Abs(b - depth) > 1e-6))
                Assert.Equal(section.ContactWidthAt(depth), twice.ContactWidthAt(height - depth), 1e-6);
        }, iter: RandomPerShape);

    [Fact]
    public void Tops_and_bottoms_of_flat_faces_are_in_full_contact()
    {
        var section = Catalog("IPE 200");
        Assert.Equal([(0d, 100d)], section.RunsAt(0));
        Assert.Equal([(0d, 100d)], section.RunsAt(200));
        Assert.Equal(100, section.ContactWidthAt(8.5), 1e-9);
        Assert.Equal(5.6, section.ContactWidthAt(100), 1e-9);
    }

    [Fact]
    public void Tangent_of_a_hole_does_not_split_the_run()
    {
        var tube = Make(new() { Designation = "tube", Shape = SectionShape.RoundTube, Diameter = Mm(100), Wall = Mm(10) });
        Assert.Single(tube.RunsAt(10));
        Assert.Equal(2, tube.RunsAt(10.001).Count);
        Assert.Equal(60, tube.ContactWidthAt(10), 1e-9); // 2 sqrt(50^2 - 40^2)
        Assert.Equal(20, tube.ContactWidthAt(50), 1e-9);
        Assert.Empty(tube.RunsAt(0));
    }

    [Fact]
    public void Contact_width_of_a_round_is_the_chord()
    {
        var round = Catalog("Round 80");
        foreach (var depth in (double[])[0.01, 5, 20, 40, 71.3])
            Assert.Equal(2 * Math.Sqrt(40 * 40 - (40 - depth) * (40 - depth)), round.ContactWidthAt(depth), 1e-10);
    }

    [Fact]
    public void Side_where_material_is_left_counts_on_a_step()
    {
        // A U open at the top: two prongs of 10 and a base 40 wide. The floor of the slot lies at depth 30.
        var u = Custom((0, 0), (40, 0), (40, 40), (30, 40), (30, 10), (10, 10), (10, 40), (0, 40));
        Assert.Equal([(0d, 10d), (30d, 40d)], u.RunsAt(0));
        Assert.Equal([(0d, 10d), (30d, 40d)], u.RunsAt(29.999));
        Assert.Equal([(0d, 40d)], u.RunsAt(30));
        Assert.Equal([(0d, 40d)], u.Turned().RunsAt(0));
    }

    [Fact]
    public void Points_that_meet_at_a_depth_pair_rightly()
    {
        // A W: valleys and peak at the same depth as corners of the neighbors.
        var w = Custom((0, 40), (10, 0), (20, 20), (30, 0), (40, 40), (30, 20), (20, 40), (10, 20));
        Assert.Equal(2, w.RunsAt(25).Count);
        AssertClose((double)w.Area.SquareMillimeters, Travel.Integrate(w, w.ContactWidthAt), 1e-12, "W");
        foreach (var depth in w.Breakpoints)
            AssertRuns(w, depth);
    }

    [Fact]
    public void Integral_finds_kinks_between_breakpoints()
    {
        // max(w, c) over a round: the chord exceeds c = r sqrt 3 in the middle half of the travel, where half of it lies between -r/2 and r/2.
        var round = Catalog("Round 100");
        const double r = 50;
        var c = r * Math.Sqrt(3);
        var middle = r * r * (Math.Sqrt(3) / 2 + Math.PI / 3); // 2 * integral of sqrt(r^2 - x^2) from -r/2 to r/2
        AssertClose(middle + c * r, Travel.Integrate(round, y => Math.Max(c, round.ContactWidthAt(y))), 1e-9, "kink");
    }

    [Fact]
    public void Integral_ends_where_the_function_is_no_number_or_rounding_is_all_there_is()
    {
        Assert.True(double.IsNaN(Travel.Integrate(Catalog("Round 100"), _ => double.NaN)));
        var foil = Make(new() { Designation = "foil", Shape = SectionShape.SquareTube, Width = Mm(10_000), Wall = Mm(0.001m), OuterRadius = Mm(0), InnerRadius = Mm(0) });
        AssertClose((double)foil.Area.SquareMillimeters, Travel.Integrate(foil, foil.ContactWidthAt), 1e-6, "foil");
    }

    private static void AssertRuns(Section section, double depth)
    {
        var last = double.NegativeInfinity;
        foreach (var (start, end) in section.RunsAt(depth))
        {
            Assert.True(start > last && end > start && start >= 0 && end <= section.Width.ApproximateMillimeters);
            last = end;
        }
    }

    internal static void AssertClose(double expected, double actual, double relative, string? what)
    {
        const double areaRounding = 5e-7; // areas are rounded to 1e-6 mm2
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected) + areaRounding, $"{what}: {actual:R} instead of {expected:R}");
    }

    internal static OutlineSection Make(SectionDimensions dimensions)
    {
        var section = OutlineSection.Create(dimensions, out var faults);
        Assert.True(section is not null, $"{dimensions}: {string.Join("; ", faults)}");
        return section;
    }

    internal static OutlineSection Custom(params (decimal X, decimal Y)[] corners) =>
        Make(new() { Designation = "custom", Shape = SectionShape.Custom, Outline = [.. corners.Select(c => new OutlinePoint(Mm(c.X), Mm(c.Y)))] });

    internal static Length Mm(decimal millimeters) => Length.FromMillimeters(millimeters);

    private static Section Catalog(string designation) => SectionCatalog.Standard.Find(designation)!;
}
