using CsCheck;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

public class CutFitTests
{
    private static readonly CutRules Rules = new()
    {
        Kerf = Mm(1.6m),
        Capacity = new(Mm(260), Mm(280), Mm(210)),
        MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(60)),
    };

    [Theory]
    [InlineData(280, 210, null)]
    // Held only turned a quarter.
    [InlineData(210, 280, null)]
    [InlineData(281, 210, UnplacedReason.NoSawHoldsSection)]
    [InlineData(211, 211, UnplacedReason.NoSawHoldsSection)]
    public void Section_is_held_as_it_lies_or_turned_a_quarter(int width, int height, string? reason) =>
        Assert.Equal(reason, Reason(width, height, EndCut.Square));

    [Fact]
    public void Round_is_held_up_to_the_capacity_for_rounds()
    {
        var line = Line("10", 1000, 1);

        Assert.Null(CutFit.ReasonAgainst(line with { Section = Rectangle.Of("Round 260", 260, 260, 53093, SectionShape.Round) }, Rules));
        Assert.Equal(
            UnplacedReason.NoSawHoldsSection,
            CutFit.ReasonAgainst(line with { Section = Rectangle.Of("Round 261", 261, 261, 53502, SectionShape.Round) }, Rules));
    }

    [Theory]
    // 280 mm of width hold W / cos a: 242 / cos 30° = 279.4; 243 / cos 30° = 280.6 (plane geometry).
    [InlineData(242, 200, 30, null)]
    [InlineData(243, 200, 30, UnplacedReason.NoSawCutsMiter)]
    // The swivel reaches 45° to the left and 60° to the right.
    [InlineData(100, 200, -45, null)]
    [InlineData(100, 200, 60, null)]
    [InlineData(100, 200, 61, UnplacedReason.NoSawCutsMiter)]
    // Beyond 45° to the left the bar is turned over.
    [InlineData(100, 200, -60, null)]
    [InlineData(100, 200, -61, UnplacedReason.NoSawCutsMiter)]
    public void Miter_in_the_width_is_cut_as_the_bar_lies_or_turned_over(int width, int height, int degrees, string? reason) =>
        Assert.Equal(reason, Reason(width, height, WidthMiter(degrees)));

    [Fact]
    public void Miter_in_the_height_is_cut_with_the_bar_turned_a_quarter()
    {
        Assert.Null(Reason(100, 200, HeightMiter(30)));
        // Turned, 100 mm of width stand upright, and 250 / cos 30° = 288.7 lie along the blade.
        Assert.Equal(UnplacedReason.NoSawCutsMiter, Reason(100, 250, HeightMiter(30)));
    }

    [Fact]
    public void Both_miters_of_a_piece_are_cut_in_one_lay()
    {
        // 50° needs the right side, -50° the bar turned over.
        var line = Mitered(100, 200, WidthMiter(50));

        Assert.Null(CutFit.ReasonAgainst(line with { FirstEnd = WidthMiter(50) }, Rules));
        Assert.Equal(UnplacedReason.NoSawCutsMiter, CutFit.ReasonAgainst(line with { FirstEnd = WidthMiter(-50) }, Rules));
        Assert.Equal([0], CutFit.LaysOf(line, Rules).Select(lay => lay.QuarterTurns));
        Assert.Equal([2], CutFit.LaysOf(line with { SecondEnd = WidthMiter(-50) }, Rules).Select(lay => lay.QuarterTurns));
        Assert.Equal([0, 2], CutFit.LaysOf(line with { SecondEnd = WidthMiter(30) }, Rules).Select(lay => lay.QuarterTurns));
    }

    [Fact]
    public void Compound_miter_is_out_of_reach_of_a_swivel() =>
        Assert.Equal(UnplacedReason.NoSawCutsMiter, Reason(100, 100, new(Angle.FromDegrees(10), Angle.FromDegrees(10))));

    /// <summary>The solvers' view of swivel, tilt and capacity against the verifier's, which computes them by itself.</summary>
    [Fact]
    public void Verifier_passes_just_the_miters_that_some_lay_allows()
    {
        var seen = new int[2];
        Gen.Select(Gen.Int[100, 300], Gen.Int[100, 300], Angles, Gen.Select(Angles, Angles), Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60])).Sample((width, height, first, angles, tilts) =>
        {
            var rules = Rules with { MiterRange = Rules.MiterRange! with { TiltToFirstEnd = Angle.FromDegrees(tilts.Item1), TiltToSecondEnd = Angle.FromDegrees(tilts.Item2) } };
            var line = Line("10", 3000, 1) with { Section = Rectangle.Of($"Flat {width}x{height}", width, height, width * height, SectionShape.Flat), FirstEnd = first, SecondEnd = new(angles.Item1.HeightAngle, angles.Item2.WidthAngle) };
            var problem = new NestProblem { Lines = [line], Stock = [Bar("B", 6000, 1) with { Section = line.Section }], Rules = rules };
            var laid = LayoutPositions.Lay(problem.Stock[0], [line], rules, LayoutCost.Of(problem))!;
            var isRefused = NestVerifier.VerifyLayout(problem, laid).Any(violation => violation.Code is NestRule.Capacity or NestRule.MiterPlane or NestRule.MiterRange);
            Assert.Equal(CutFit.LaysOf(line, rules).Count == 0, isRefused);
            Interlocked.Increment(ref seen[isRefused ? 1 : 0]);
        }, iter: 3000);
        Assert.All(seen, count => Assert.True(count > 300, $"{seen[0]} passed, {seen[1]} refused"));
    }

    private static readonly Gen<EndCut> Angles = Gen.Select(Gen.Int[-60, 60], Gen.Int[-60, 60], Gen.Int[0, 3], (height, width, planes) =>
        new EndCut(Angle.FromDegrees((planes & 1) == 0 ? 0 : height), Angle.FromDegrees((planes & 2) == 0 ? 0 : width)));

    [Fact]
    public void Saw_without_swivel_cuts_no_miter() =>
        Assert.Equal(UnplacedReason.NoSawCutsMiter, CutFit.ReasonAgainst(Mitered(100, 100, WidthMiter(5)), Rules with { MiterRange = null }));

    [Fact]
    public void Without_a_saw_every_miter_is_cut() =>
        Assert.Null(CutFit.ReasonAgainst(Mitered(100, 100, new(Angle.FromDegrees(70), Angle.FromDegrees(70))), new() { Kerf = Mm(1.6m) }));

    [Fact]
    public void Short_side_counts_for_the_shortest_piece()
    {
        // 1000 overall with one 45° miter over 100 mm of width: 900 on the short side, 899.9951 on the safe side of the grid.
        var line = Mitered(100, 100, WidthMiter(45));

        Assert.Null(CutFit.ReasonAgainst(line, Rules with { ShortestPiece = Mm(899) }));
        Assert.Equal(UnplacedReason.PieceTooShort, CutFit.ReasonAgainst(line, Rules with { ShortestPiece = Mm(901) }));
    }

    [Fact]
    public void Faces_that_cross_make_no_piece()
    {
        var line = Mitered(200, 100, WidthMiter(60)) with { Length = Mm(300) };

        Assert.Equal(UnplacedReason.PieceTooShort, CutFit.ReasonAgainst(line, Rules with { Capacity = null }));
    }

    [Fact]
    public void Overall_counts_for_the_longest_piece() =>
        Assert.Equal(UnplacedReason.PieceTooLong, CutFit.ReasonAgainst(Line("10", 1000, 1), Rules with { LongestPiece = Mm(999) }));

    [Fact]
    public void Bar_is_weighed_whole()
    {
        // 2848 mm2 × 12 m × 7850 kg/m3 = 268.2816 kg.
        var bar = Bar("B", 12000, 1) with { Section = Rectangle.Of("IPE 200", 100, 200, 2848), Grade = Steel("S355J2") };

        Assert.True(CutFit.Carries(bar, Rules with { LoadLimit = new(268.2816m) }));
        Assert.False(CutFit.Carries(bar, Rules with { LoadLimit = new(268.2815m) }));
    }

    private static string? Reason(int width, int height, EndCut second) => CutFit.ReasonAgainst(Mitered(width, height, second), Rules);

    private static OrderLine Mitered(int width, int height, EndCut second) =>
        Line("10", 1000, 1) with { Section = Rectangle.Of("S", width, height, width * height), SecondEnd = second };
}
