using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Tests.Nesting;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Planning;

/// <summary>Passes of the blade by hand: a flat 100 wide, kerf 2, thinnest slice 3 (see <see cref="MiterTests"/> for the positions).</summary>
public class SawCutTests
{
    private static readonly CutRules Rules = new() { Kerf = Mm(2), ThinnestSlice = Mm(3), Tail = Mm(50) };

    [Fact]
    public void Parallelograms_take_one_pass_each_and_one_for_the_first_face()
    {
        // On the centerline, half of 57.7342 from start and end: 5.3114 + 28.8671 = 34.1785; 363.0583 - 28.8671 = 334.1912; from there on 302.3241 each.
        var passes = Passes(LengthAt.Centerline, 30, PieceTurn.None, PieceTurn.None, PieceTurn.None);

        Assert.Equal([Mm(34.1785m), Mm(300.0127m), Mm(302.3241m), Mm(302.3241m)], passes.Select(pass => pass.Index));
        Assert.Equal([false, true, true, true], passes.Select(pass => pass.FreesPiece));
    }

    [Fact]
    public void Trapezoids_take_two_passes_between_them_unless_one_is_turned()
    {
        // Faces of opposite hand, 2 × 2.3114 + 3 = 7.6228 apart where they are nearest, are 57.7342 more apart on the centerline: 65.357.
        var apart = Passes(LengthAt.LongSide, -30, PieceTurn.None, PieceTurn.None);
        var shared = Passes(LengthAt.LongSide, -30, PieceTurn.None, PieceTurn.EndForEnd);

        Assert.Equal((4, 3), (apart.Count, shared.Count));
        Assert.Equal(Mm(65.357m), apart[2].Index);
    }

    private static IReadOnlyList<SawCut> Passes(LengthAt lengthAt, int firstAngle, params PieceTurn[] turns)
    {
        var line = Line("10", 300, 9) with { Section = Shapes.Flat, LengthAt = lengthAt, FirstEnd = WidthMiter(firstAngle), SecondEnd = WidthMiter(30) };
        var layout = LayoutPositions.Lay(Bar("B", 6000, 1) with { Section = line.Section }, [.. turns.Select(turn => new PlacedPiece(line, turn))], Rules, new(null, 0))!;
        return SawCut.Of(layout);
    }
}
