using CsCheck;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using static SawEngine.Core.Tests.Sections.SectionProfileTests;

namespace SawEngine.Core.Tests.Sections;

/// <summary>
/// Areas against the closed formulas by which the section tables are computed: EN 10056 to EN 10061, EN 10210-2 and EN 10219-2 (annex on
/// sectional properties), EN 10365, AISC manual. Quoted from memory; each reproduces the tables (see <see cref="PublishedValuesTests"/>).
/// </summary>
public sealed class SectionFormulaTests
{
    [Fact]
    public void Round_is_a_quarter_pi_d2() => Check(SectionShape.Round, d => Math.PI / 4 * Sq(d.Diameter));

    [Fact]
    public void Square_is_its_side_squared() => Check(SectionShape.Square, d => Sq(d.Width));

    [Fact]
    public void Hexagon_is_half_root_three_s2() => Check(SectionShape.Hexagon, d => Math.Sqrt(3) / 2 * Sq(d.AcrossFlats));

    [Fact]
    public void Flat_is_width_times_height() => Check(SectionShape.Flat, d => Mm(d.Height) * Mm(d.Width));

    [Theory]
    [InlineData(SectionShape.RoundTube)]
    [InlineData(SectionShape.Pipe)]
    public void Round_tube_is_pi_t_times_mean_diameter(SectionShape shape) => Check(shape, d => Math.PI * Mm(d.Wall) * (Mm(d.Diameter) - Mm(d.Wall)));

    [Theory]
    [InlineData(SectionShape.SquareTube)]
    [InlineData(SectionShape.RectangleTube)]
    public void Hollow_section_is_its_walls_less_its_corners(SectionShape shape) => Check(shape, d =>
    {
        var (h, b, t) = (Mm(d.Height ?? d.Width), Mm(d.Width), Mm(d.Wall));
        var halfSide = new Length(Math.Min((d.Height ?? d.Width)!.Value.Nanometers, d.Width!.Value.Nanometers) / 2); // whole nanometers
        var outer = d.OuterRadius is { } given ? Mm(given) : Math.Min(2 * t, Mm(halfSide));
        var inner = d.InnerRadius is { } inside ? Mm(inside) : outer - t;
        return 2 * t * (b + h - 2 * t) - (4 - Math.PI) * (outer * outer - inner * inner);
    });

    [Fact]
    public void Angle_is_its_legs_and_fillet_less_its_toes() => Check(SectionShape.Angle, d =>
        Mm(d.Thickness) * (Mm(d.Height) + Mm(d.Width) - Mm(d.Thickness)) + (1 - Math.PI / 4) * (Sq(d.RootRadius) - 2 * Sq(d.ToeRadius)));

    [Fact]
    public void I_beam_is_flanges_web_and_fillets() => Check(SectionShape.IBeam, d =>
        2 * Mm(d.Width) * Mm(d.Flange) + (Mm(d.Height) - 2 * Mm(d.Flange)) * Mm(d.Web) + (4 - Math.PI) * Sq(d.RootRadius));

    [Fact]
    public void Tee_is_flange_web_and_fillets() => Check(SectionShape.Tee, d =>
        Mm(d.Width) * Mm(d.Flange) + (Mm(d.Height) - Mm(d.Flange)) * Mm(d.Web) + 2 * (1 - Math.PI / 4) * Sq(d.RootRadius));

    [Fact]
    public void Channel_is_web_flanges_and_fillets_less_toes() => Check(SectionShape.Channel, d =>
    {
        var overhang = Mm(d.Width) - Mm(d.Web);
        var slope = (double)(d.FlangeSlope ?? 0);
        // Thickness at the middle of the overhang, measured at half the width: the web is half its thickness farther from there.
        var middle = Mm(d.Flange) - slope * Mm(d.Web) / 2;
        // A fillet between two faces that turn by phi covers r2 (tan phi/2 - phi/2); here both turn by 90 degrees less the slope.
        var phi = Math.PI / 2 - Math.Atan(slope);
        var corner = Math.Tan(phi / 2) - phi / 2;
        return Mm(d.Height) * Mm(d.Web) + 2 * overhang * middle + 2 * corner * (Sq(d.RootRadius) - Sq(d.ToeRadius));
    });

    [Fact]
    public void Custom_section_is_half_the_cross_products() => Check(SectionShape.Custom, d =>
    {
        var (points, twice) = (d.Outline!, 0d);
        for (var i = 0; i < points.Count; i++)
        {
            var next = points[(i + 1) % points.Count];
            twice += Mm(points[i].X) * Mm(next.Y) - Mm(next.X) * Mm(points[i].Y);
        }
        return Math.Abs(twice) / 2;
    });

    [Fact]
    public void Custom_section_is_the_same_whichever_way_round_and_wherever_it_is_drawn()
    {
        var drawn = SectionProfileTests.Custom((0, 0), (60, 0), (60, 10), (10, 10), (10, 40), (0, 40));
        var reversed = SectionProfileTests.Custom((-5, 47), (5, 47), (5, 17), (55, 17), (55, 7), (-5, 7));
        var angle = Make(new() { Designation = "angle", Shape = SectionShape.Angle, Height = SectionProfileTests.Mm(40), Width = SectionProfileTests.Mm(60), Thickness = SectionProfileTests.Mm(10) });
        foreach (var section in (Section[])[drawn, reversed])
        {
            Assert.Equal((angle.Height, angle.Width, angle.Area), (section.Height, section.Width, section.Area));
            foreach (var depth in (double[])[0, 12, 30, 35, 40])
                Assert.Equal(angle.RunsAt(depth), section.RunsAt(depth));
        }
    }

    [Fact]
    public void Mass_of_a_meter_is_density_times_area() => // EN 10060: round 50, 15.4 kg/m
        Assert.Equal(15.4m, SectionCatalog.Standard.Find("Round 50")!.MassPerMeter(new Density(7850m)).Kilograms, 1);

    [Fact]
    public void Area_of_what_has_straight_sides_is_exact() =>
        Assert.Equal(new Area(1234.5m * 67.8m), Make(new() { Designation = "flat", Shape = SectionShape.Flat, Width = SectionProfileTests.Mm(1234.5m), Height = SectionProfileTests.Mm(67.8m) }).Area);

    private static void Check(SectionShape shape, Func<SectionDimensions, double> area) =>
        RandomSections.Of(shape).Sample(d => AssertClose(area(d), (double)Make(d).Area.SquareMillimeters, 1e-9, d.ToString()), iter: 200);

    private static double Mm(Length? length) => length?.ApproximateMillimeters ?? 0;

    private static double Sq(Length? length) => Mm(length) * Mm(length);
}
