using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>
/// Mitered pieces on a bar, worked by hand (plane geometry). Kerf 2, thinnest slice 3, tail 50; computed lengths on the grid of 0.0127, kerfs up, overlaps down.
/// 30°: kerf along the bar 2 / cos 30° = 2.3094, 181.84 steps, up 182: 2.3114. 45°: 2 sqrt 2 = 2.8284, 222.71 steps, up 223: 2.8321.
/// Compound 20° of height and 30° of width: 2 sqrt(1 + 0.13247 + 0.33333) = 2.4214, 190.66 steps, up 191: 2.4257.
/// Width 100 at 30°: 57.7350, 4546.07 steps, down 4546: 57.7342. The first face of a bar waits for its kerf and a slice.
/// </summary>
public class MiterTests
{
    private static readonly CutRules Rules = new() { Kerf = Mm(2), ThinnestSlice = Mm(3), Tail = Mm(50) };
    private static readonly EndCut Compound = new(Angle.FromDegrees(20), Angle.FromDegrees(30));
    private static readonly EndCut CompoundReversed = new(Angle.FromDegrees(-20), Angle.FromDegrees(-30));

    [Fact]
    public void Trapezoids_of_which_one_is_turned_share_a_cut()
    {
        // First piece: 2.3114 + 3 = 5.3114 to 505.3114, longest on the right. Turned, the next is longest on the left: 505.3114 + 2.3114 - 57.7342 = 449.8886.
        // It ends at 949.8886; + 2.3114 = 952.2, left 5047.8. Centerline: 500 - 57.7350, up 4547 steps, 57.7469: 442.2531.
        // Lost on the centerline: 6000 - 2 × 442.2531 - 5047.8 = 67.6938.
        var line = Piece(Shapes.Flat, 500, LengthAt.LongSide, WidthMiter(-30), WidthMiter(30));

        var layout = Lay(6000, new(line), new(line, PieceTurn.EndForEnd))!;

        Assert.Equal((Mm(5.3114m), Mm(505.3114m)), (layout.Cuts[0].Start, layout.Cuts[0].End));
        Assert.Equal((Mm(449.8886m), Mm(949.8886m)), (layout.Cuts[1].Start, layout.Cuts[1].End));
        Assert.Equal((WidthMiter(30), WidthMiter(-30)), (layout.Cuts[1].StartCut, layout.Cuts[1].EndCut));
        Assert.Equal(PieceTurn.EndForEnd, layout.Cuts[1].Turn);
        Assert.Equal(Mm(442.2531m), layout.Cuts[1].Centerline);
        Assert.Equal(Mm(5047.8m), layout.Remainder.Length);
        Assert.Equal(Mm(67.6938m), layout.KerfTotal);
    }

    /// <summary>A pass before, one behind, and one between while the faces are one kerf apart, though along the bar the pieces overlap by more than a kerf either way.</summary>
    [Fact]
    public void Parallel_faces_share_a_pass_only_one_kerf_apart()
    {
        var line = Piece(Shapes.Flat, 500, LengthAt.LongSide, WidthMiter(-30), WidthMiter(30));
        var layout = Lay(6000, new(line), new(line, PieceTurn.EndForEnd))!;
        var second = layout.Cuts[1];

        Assert.Equal(3, CutCount.Of(layout, Mm(2)));
        Assert.Equal(4, CutCount.Of(layout with { Cuts = [layout.Cuts[0], second with { Start = second.Start + Mm(1), End = second.End + Mm(1) }] }, Mm(2)));
        Assert.Equal(0, CutCount.Of(layout with { Cuts = [] }, Mm(2)));
    }

    [Fact]
    public void Trapezoids_that_are_not_turned_need_two_cuts()
    {
        // 505.3114 + 2 × 2.3114 + 3 = 512.9342: faces of opposite hand meet in one edge and do not overlap.
        var line = Piece(Shapes.Flat, 500, LengthAt.LongSide, WidthMiter(-30), WidthMiter(30));

        Assert.Equal(Mm(512.9342m), Lay(6000, new(line), new(line))!.Cuts[1].Start);
    }

    [Fact]
    public void Parallelograms_follow_one_another_at_their_centerline_and_a_kerf()
    {
        // Overall: 300 + 57.7350, up 4547 steps: 357.7469. From start to start: 357.7469 + 2.3114 - 57.7342 = 302.3241 (300 + 2.3094 but for the grid).
        // 5.3114, 307.6355, 609.9596; the last ends at 967.7065. Left: 6000 - 967.7065 - 2.3114 = 5029.9821. Lost: 6000 - 3 × 300 - 5029.9821 = 70.0179.
        var line = Piece(Shapes.Flat, 300, LengthAt.Centerline, WidthMiter(30), WidthMiter(30));

        var layout = Lay(6000, new(line), new(line), new(line))!;

        Assert.Equal([Mm(5.3114m), Mm(307.6355m), Mm(609.9596m)], layout.Cuts.Select(cut => cut.Start));
        Assert.Equal(Mm(967.7065m), layout.Cuts[2].End);
        Assert.Equal(Mm(5029.9821m), layout.Remainder.Length);
        Assert.Equal(Mm(70.0179m), layout.KerfTotal);
    }

    [Fact]
    public void One_miter_in_the_plane_of_the_width_meets_its_like_turned_end_for_end()
    {
        // Tube 60 wide at 45°: 60 / 0.0127 = 4724.41, down 4724 steps: 59.9948. 0 to 400, then 400 + 2.8321 - 59.9948 = 342.8373 to 742.8373, square; + 2 = 744.8373.
        var line = Piece(Shapes.Tube, 400, LengthAt.Overall, EndCut.Square, WidthMiter(45));

        var layout = Lay(6000, new(line), new(line, PieceTurn.EndForEnd))!;

        Assert.Equal((Mm(0), Mm(342.8373m)), (layout.Cuts[0].Start, layout.Cuts[1].Start));
        Assert.Equal(Mm(5255.1627m), layout.Remainder.Length);
    }

    [Fact]
    public void Trapezoids_in_the_plane_of_the_height_share_a_cut_where_one_is_turned_over()
    {
        // Tube 100 high at 45°: 7874.02, down 7874 steps: 99.9998. 2.8321 + 3 = 5.8321 to 405.8321, then 405.8321 + 2.8321 - 99.9998 = 308.6644 to 708.6644.
        var line = Piece(Shapes.Tube, 400, LengthAt.LongSide, HeightMiter(-45), HeightMiter(45));

        var layout = Lay(6000, new(line), new(line, PieceTurn.Over))!;

        Assert.Equal((Mm(5.8321m), Mm(308.6644m)), (layout.Cuts[0].Start, layout.Cuts[1].Start));
        Assert.Equal(Mm(708.6644m), layout.Cuts[1].End);
    }

    [Fact]
    public void Trapezoid_of_a_channel_cannot_be_turned_to_share_a_cut()
    {
        // The turn that keeps the open side to the right leaves the long edge on its side; the one that does not is refused.
        var line = Piece(Shapes.Channel, 500, LengthAt.LongSide, WidthMiter(-30), WidthMiter(30));

        Assert.Equal([new(PieceTurn.None, WidthMiter(-30), WidthMiter(30))], PieceFaces.Of(line));
        Assert.Equal([NestRule.Turn], Violations(Lay(line.Section!, 6000, new(line), new(line, PieceTurn.EndForEnd))!, line));
        Assert.Equal(Mm(512.9342m), Lay(6000, new(line), new(line, PieceTurn.EndForEndOver))!.Cuts[1].Start);
    }

    [Fact]
    public void Piece_of_an_angle_cannot_be_turned()
    {
        foreach (var section in new[] { Shapes.EqualAngle, Shapes.UnequalAngle })
        {
            var line = Piece(section, 500, LengthAt.Overall, EndCut.Square, Compound);

            Assert.Equal([new(PieceTurn.None, EndCut.Square, Compound)], PieceFaces.Of(line));
            foreach (var turn in new[] { PieceTurn.EndForEnd, PieceTurn.Over, PieceTurn.EndForEndOver })
                Assert.Equal([NestRule.Turn], Violations(Lay(section, 6000, new(line), new(line, turn))!, line));
        }
    }

    [Fact]
    public void Compound_parallelograms_share_their_cuts()
    {
        // Flat 100 × 20: 57.7350 + 20 tan 20° = 57.7350 + 7.2794 = 65.0144; down 5119 steps: 65.0113; overall up 5120 steps: 365.024.
        // 2.4257 + 3 = 5.4257; from start to start 365.024 + 2.4257 - 65.0113 = 302.4384: 307.8641.
        var line = Piece(Shapes.Flat, 300, LengthAt.Centerline, Compound, Compound);

        var layout = Lay(6000, new(line), new(line))!;

        Assert.Equal((Mm(5.4257m), Mm(370.4497m)), (layout.Cuts[0].Start, layout.Cuts[0].End));
        Assert.Equal(Mm(307.8641m), layout.Cuts[1].Start);
    }

    [Fact]
    public void Compound_pieces_share_a_cut_turned_over_and_overlap_in_one_plane_turned_end_for_end()
    {
        // Turned over, ((-20, -30), (20, 30)) becomes ((20, 30), (-20, -30)): 505.4257 + 2.4257 - 65.0113 = 442.8401.
        var both = Piece(Shapes.Flat, 500, LengthAt.LongSide, CompoundReversed, Compound);
        Assert.Equal(Mm(442.8401m), Lay(6000, new(both), new(both, PieceTurn.Over))!.Cuts[1].Start);

        // With one compound end no turn makes the faces parallel. End for end the widths agree: 500 + 2 × 2.4257 + 3 - 57.7342 = 450.1172;
        // end for end and over the heights do: 7.2794, 573.18 steps, down 7.2771: 500 + 7.8514 - 7.2771 = 500.5743.
        var one = Piece(Shapes.Flat, 500, LengthAt.Overall, EndCut.Square, Compound);
        Assert.Equal(Mm(450.1172m), Lay(6000, new(one), new(one, PieceTurn.EndForEnd))!.Cuts[1].Start);
        Assert.Equal(Mm(500.5743m), Lay(6000, new(one), new(one, PieceTurn.EndForEndOver))!.Cuts[1].Start);
    }

    [Fact]
    public void Tail_behind_a_miter_is_held_on_the_short_side()
    {
        // 500 + 2.3114 + 50 = 552.3114. The remainder is 50 on its short side, 107.7 on its long one, and booked at 50.
        // Centerline: 500 - 28.8675, up 2274 steps, 28.8798: 471.1202. Lost on it: 552.3114 - 471.1202 - 50 = 31.1912.
        var line = Piece(Shapes.Flat, 500, LengthAt.Overall, EndCut.Square, WidthMiter(30));

        var layout = Lay(552.3114m, new PlacedPiece(line))!;

        Assert.Equal(Mm(50), layout.Remainder.Length);
        Assert.Equal(Mm(31.1912m), layout.KerfTotal);
        Assert.Null(Lay(552.3113m, new PlacedPiece(line)));
        Assert.Equal([NestRule.Tail], Violations(layout, line, Rules with { Tail = Mm(50.01m) }));
    }

    [Fact]
    public void Wedge_between_unlike_miters_is_as_thin_as_allowed_and_no_thinner()
    {
        // 30° before 45°, both to the right: 2.3114 + 3 + 2.8321 - 57.7342 = -49.5907. At the left edge, where the first face lies 57.7350 back, the faces are
        // 8.1443 apart, two kerfs and 3; at the right edge 100 - 57.7350 more, 50.4093.
        var (first, next) = (Piece(Shapes.Flat, 500, LengthAt.Overall, EndCut.Square, WidthMiter(30)), Piece(Shapes.Flat, 500, LengthAt.Overall, WidthMiter(45), EndCut.Square, "20"));

        var layout = Lay(6000, new(first), new(next))!;

        Assert.Equal(Mm(450.4093m), layout.Cuts[1].Start);
        Assert.Equal(Mm(450.4093m), Lay(6000, new PlacedPiece(next, PieceTurn.EndForEnd), new PlacedPiece(first, PieceTurn.EndForEnd))!.Cuts[1].Start);
        var thinner = layout with
        {
            Cuts = [layout.Cuts[0], layout.Cuts[1] with { Start = layout.Cuts[1].Start - Mm(0.01m), End = layout.Cuts[1].End - Mm(0.01m) }],
            KerfTotal = layout.KerfTotal - Mm(0.01m),
            Remainder = layout.Remainder with { Length = layout.Remainder.Length + Mm(0.01m) },
        };
        Assert.Equal([NestRule.Slice], NestVerifier.VerifyLayout(Problem(Rules, thinner.Stock, first, next), thinner).Select(violation => violation.Code));
    }

    [Theory]
    // Square beside a miter: 2 + 3 + 2.3114, either way round: the wedge of 57.7350 is lost.
    [InlineData(0, 30, 7.3114)]
    [InlineData(30, 0, 7.3114)]
    // Opposite hands: 2.3114 + 3 + 2.8321.
    [InlineData(-30, 45, 8.1435)]
    // The same hand: less the extent of the less inclined.
    [InlineData(-45, -30, -49.5907)]
    [InlineData(45, 30, -49.5907)]
    [InlineData(-30, -30, -55.4228)]
    [InlineData(0, 0, 2)]
    public void Gap_between_two_faces_in_the_plane_of_the_width(int face, int nextFace, double gap) =>
        Assert.Equal(Mm((decimal)gap), LayoutPositions.Between(WidthMiter(face), WidthMiter(nextFace), Shapes.Flat, Rules));

    private static OrderLine Piece(Section section, decimal length, LengthAt lengthAt, EndCut first, EndCut second, string lineId = "10") =>
        Line(lineId, length, 9) with { Section = section, LengthAt = lengthAt, FirstEnd = first, SecondEnd = second };

    private static BarLayout? Lay(Section section, decimal bar, params PlacedPiece[] pieces) =>
        LayoutPositions.Lay(Bar("B", bar, 1) with { Section = section }, pieces, Rules, new(null, 0));

    /// <summary>A layout that the verifier passes; null where the pieces do not fit.</summary>
    private static BarLayout? Lay(decimal bar, params PlacedPiece[] pieces)
    {
        var layout = Lay(pieces[0].Line.Section!, bar, pieces);
        if (layout is not null)
            Assert.Empty(NestVerifier.VerifyLayout(Problem(Rules, layout.Stock, [.. pieces.Select(piece => piece.Line).DistinctBy(line => line.Ref)]), layout));
        return layout;
    }

    private static IEnumerable<string> Violations(BarLayout layout, OrderLine line, CutRules? rules = null) =>
        NestVerifier.VerifyLayout(Problem(rules ?? Rules, layout.Stock, line), layout).Select(violation => violation.Code);

    private static NestProblem Problem(CutRules rules, StockItem stock, params OrderLine[] lines) =>
        new() { Lines = lines, Stock = [stock], Rules = rules };
}
