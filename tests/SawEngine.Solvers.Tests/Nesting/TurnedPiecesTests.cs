using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Sections;
using SawEngine.Solvers.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting;

/// <summary>
/// Pieces are turned so that facing ends are parallel and share a cut. By hand, for a beam 100 wide and a kerf of 2: at 45° a kerf takes 2.8321 of the bar (2.8284,
/// rounded up to the engine's grid) and faces overlap by 99.9998.
/// </summary>
public class TurnedPiecesTests
{
    public static TheoryData<INester> Nesters => [new GreedyNester(), new ColumnNester()];

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Trapezia_follow_one_another_as_parallelograms_do(INester nester)
    {
        // Ten of 500 by the centerline, 600.0125 overall: 2.8321 before the first, 2.8321 - 99.9998 between two, 2.8321 behind the last.
        // 10 × 600.0125 + 11 × 2.8321 - 9 × 99.9998 = 5131.2799.
        var line = Mitered("IPE 200", SectionShape.IBeam, WidthMiter(45), WidthMiter(-45));

        Assert.Equal([1, 2], BarsOf(nester, line, 10, 5131.28m, 5131.279m));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void Pieces_mitered_at_one_end_meet_in_pairs(INester nester)
    {
        // One face square: 500 by the centerline and half of 100, in steps of 0.0127 up to 50.0126. Square end first, then the shared miter, and square again up to the
        // end of the bar: 2 × 550.0126 + 2.8321 - 99.9998 = 1002.8575.
        var line = Mitered("IPE 200", SectionShape.IBeam, WidthMiter(45), EndCut.Square);

        Assert.Equal([1, 2], BarsOf(nester, line, 2, 1002.8575m, 1002.857m));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void A_channel_keeps_its_open_side_so_that_trapezia_lose_a_wedge_each(INester nester)
    {
        // Turned end for end and over, the faces are as before. 600.0125 each, and 2 × 2.8321 between two faces that are not parallel:
        // 10 × 600.0125 + 2.8321 + 9 × 5.6642 + 2.8321 = 6056.767.
        var line = Mitered("UPN 200", SectionShape.Channel, WidthMiter(45), WidthMiter(-45));

        Assert.Equal([1, 2], BarsOf(nester, line, 10, 6056.767m, 6056.766m));
    }

    [Theory]
    [MemberData(nameof(Nesters))]
    public void An_angle_is_not_turned(INester nester)
    {
        var line = Mitered("L 100", SectionShape.Angle, WidthMiter(45), WidthMiter(-45));

        Assert.Equal([1, 2], BarsOf(nester, line, 10, 6056.767m, 6056.766m));
    }

    private static OrderLine Mitered(string designation, SectionShape shape, EndCut first, EndCut second) =>
        Line("10", 500, 1) with { Section = Rectangle.Of(designation, 100, 200, 2848, shape), LengthAt = LengthAt.Centerline, FirstEnd = first, SecondEnd = second };

    /// <summary>How many bars are needed of each length; every nest is checked by the verifier.</summary>
    private static IEnumerable<int> BarsOf(INester nester, OrderLine line, int pieces, params decimal[] lengths)
    {
        foreach (var length in lengths)
        {
            var problem = new NestProblem { Lines = [line with { Quantity = pieces }], Stock = [Bar("A", length, null) with { Section = line.Section }], Rules = new() { Kerf = Mm(2) } };
            var nest = nester.Solve(problem, Effort.Standard, CancellationToken.None);
            Assert.Empty(NestVerifier.Verify(problem, nest));
            Assert.Empty(nest.Unplaced);
            yield return nest.Layouts.Sum(layout => layout.Repeat);
        }
    }
}
