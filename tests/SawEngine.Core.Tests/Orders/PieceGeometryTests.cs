using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Tests.Nesting;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Orders;

/// <summary>Pieces of a section 100 wide and 200 high, by plane geometry; computed lengths on the grid of 0.0127 mm, to the safe side.</summary>
public class PieceGeometryTests
{
    [Fact]
    public void Square_piece_is_as_long_as_ordered() =>
        Assert.Equal(new(Mm(1234.567891m), Mm(1234.567891m), Mm(1234.567891m)), PieceGeometry.Of(Line("10", 1234.567891m, 1)));

    [Fact]
    public void One_miter_measured_on_the_long_side_leaves_overall_exact()
    {
        // Short side: 2350 - 100 tan 30° = 2350 - 57.7350; 57.7350 / 0.0127 = 4546.07, rounded up 4547 steps, 57.7469.
        // Centerline: 28.8675 less, 2273.03 steps, rounded up 2274, 28.8798.
        Assert.Equal(new(Mm(2350), Mm(2292.2531m), Mm(2321.1202m)), Of(2350, LengthAt.LongSide, EndCut.Square, WidthMiter(30)));
    }

    [Fact]
    public void Trapezoid_measured_on_the_short_side_grows_by_both_miters()
    {
        // 1000 + 2 × 100 tan 45° = 1200; 200 / 0.0127 = 15748.03, rounded up 15749 steps, 200.0123. Centerline: 100 more, 7874.02 steps, rounded down 99.9998.
        Assert.Equal(new(Mm(1200.0123m), Mm(1000), Mm(1099.9998m)), Of(1000, LengthAt.ShortSide, WidthMiter(-45), WidthMiter(45)));
    }

    [Fact]
    public void Parallelogram_is_longer_overall_than_on_any_edge()
    {
        // Overall: 1000 + 100 tan 30° = 1057.7350, on the grid 1057.7469; all edges are 1000.
        Assert.Equal(new(Mm(1057.7469m), Mm(1000), Mm(1000)), Of(1000, LengthAt.Centerline, WidthMiter(30), WidthMiter(30)));
        Assert.Equal(new(Mm(1057.7469m), Mm(1000), Mm(1000)), Of(1000, LengthAt.LongSide, WidthMiter(30), WidthMiter(30)));
    }

    [Fact]
    public void Compound_end_measured_overall_shortens_the_short_side_in_both_planes()
    {
        // 2 × (50 tan 45° + 100 tan 30°) = 215.4701; / 0.0127 = 16966.15, rounded up 16967 steps, 215.4809.
        // The centerline is half of it shorter: 107.7350, 8483.07 steps, rounded up 8484, 107.7468.
        var end = new EndCut(Angle.FromDegrees(30), Angle.FromDegrees(45));

        Assert.Equal(new(Mm(1000), Mm(784.5191m), Mm(892.2532m)), Of(1000, LengthAt.Overall, EndCut.Square, end));
    }

    [Fact]
    public void Height_miter_on_the_centerline_adds_half_of_the_height()
    {
        // 100 tan 15° = 26.7949; / 0.0127 = 2109.84, rounded up 2110 steps, 26.797.
        Assert.Equal(new(Mm(526.797m), Mm(473.203m), Mm(500)), Of(500, LengthAt.Centerline, HeightMiter(-15), EndCut.Square));
    }

    [Fact]
    public void Faces_that_cross_have_a_negative_short_side() =>
        Assert.True(Of(150, LengthAt.LongSide, WidthMiter(-45), WidthMiter(45)).ShortSide < Length.Zero);

    [Theory]
    // kerf / cos a, up to the grid: 1.6 / cos 30° = 1.84752 (146 steps); 1.6 / cos 60° = 3.2 (251.97 → 252 steps).
    [InlineData(0, 30, 1.8542)]
    [InlineData(-60, 0, 3.2004)]
    // Compound 45°/45°: 1.6 sqrt 3 = 2.77128 (218.21 → 219 steps).
    [InlineData(45, 45, 2.7813)]
    public void Kerf_grows_along_the_bar_with_the_miter(int height, int width, double along) =>
        Assert.Equal(Mm((decimal)along), new EndCut(Angle.FromDegrees(height), Angle.FromDegrees(width)).KerfAlongBar(Mm(1.6m)));

    [Fact]
    public void End_cut_writes_its_angles_in_degrees() =>
        Assert.Contains("-22.5 deg", WidthMiter(-22.5m).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Mitered_piece_without_a_section_is_refused() =>
        Assert.Throws<ArgumentException>(() => PieceGeometry.Of(Line("10", 100, 1) with { FirstEnd = WidthMiter(30) }));

    private static PieceGeometry Of(decimal length, LengthAt lengthAt, EndCut first, EndCut second) =>
        PieceGeometry.Of(Line("10", length, 1) with
        {
            Section = Rectangle.Of("IPE 200", 100, 200, 2848),
            LengthAt = lengthAt,
            FirstEnd = first,
            SecondEnd = second,
        });

    [Theory]
    [InlineData(2, 0, 1001)]
    [InlineData(0, 1, 999.5)]
    [InlineData(1, 1, 1000)]
    [InlineData(0.000001, 0, 1000.000001)]
    [InlineData(0, 0.000001, 1000)]
    public void Piece_is_aimed_at_the_middle_of_its_tolerance_half_a_nanometer_up(decimal plus, decimal minus, decimal aimed)
    {
        var line = Line("10", 1000, 1) with { Tolerance = new(Mm(plus), Mm(minus)) };

        Assert.Equal(Mm(aimed), line.AimedLength);
        Assert.Equal(new(Mm(aimed), Mm(aimed), Mm(aimed)), PieceGeometry.Of(line));
    }
}
