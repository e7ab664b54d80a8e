using CsCheck;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>Random pieces in random turns on one bar.</summary>
public class MiterChainTests
{
    private static readonly Section[] s_sections =
        [Shapes.Flat, Shapes.Tube, Shapes.Channel, Shapes.Tee, Shapes.EqualAngle, Shapes.IBeam, Shapes.Hexagon, Shapes.Pipe];

    // Few angles, so that facing ends are often parallel.
    private static readonly Gen<Angle> s_angle = OneOf(0, 0, 0, 30_000, -30_000, 45_000, -45_000, 22_500, -60_000).Select(thousandths => new Angle(thousandths));
    private static readonly Gen<EndCut> s_end = Gen.Select(s_angle, s_angle, (height, width) => new EndCut(height, width));

    private static readonly Gen<CutRules> s_rules = Gen.Select(Gen.Int[0, 4_000], OneOf(0, 1, 3), OneOf(0, 40), (kerf, slice, tail) =>
        new CutRules { Kerf = Length.FromNanometers(kerf * 1_000L), ThinnestSlice = Mm(slice), Tail = Mm(tail) });

    private static readonly Gen<(CutRules Rules, PlacedPiece[] Pieces)> s_chains =
        from section in OneOf(s_sections)
        from pieces in Gen.Select(s_end, s_end, Gen.Int[1_200_000, 2_500_000], Gen.Enum<LengthAt>(), Gen.Int[0, 3]).Array[1, 8]
        from rules in s_rules
        select (rules, pieces.Select((piece, i) => Placed(section, i, piece)).ToArray());

    [Fact]
    public void Chains_as_laid_are_clean_and_lose_no_less_than_nothing() => s_chains.Sample(
        chain =>
        {
            var layout = Lay(chain);
            Assert.Empty(Verify(chain, layout));
            Assert.True(layout.KerfTotal >= Length.Zero);
        },
        iter: 2_000);

    [Fact]
    public void Pieces_cannot_be_laid_closer() => s_chains.Sample(
        chain =>
        {
            // Two kerfs and an overlap are rounded by less than a step each.
            var (layout, by) = (Lay(chain), 3 * Length.ComputedGrid);
            for (var i = 1; i < layout.Cuts.Count; i++)
            {
                var closer = layout with { Cuts = [.. layout.Cuts.Select((cut, j) => j < i ? cut : cut with { Start = cut.Start - by, End = cut.End - by })] };
                Assert.Contains(Verify(chain, closer), code => code is NestRule.Kerf or NestRule.Slice or NestRule.Overlap);
            }
        },
        iter: 300);

    /// <summary>Lines along the bar through the section's box: each crosses the pieces one after the other, a kerf between them.</summary>
    [Fact]
    public void No_line_along_the_bar_crosses_two_pieces_at_once() => s_chains.Sample(
        chain =>
        {
            var layout = Lay(chain);
            var (width, height) = (Millimeters(layout.Stock.Section!.Width), Millimeters(layout.Stock.Section!.Height));
            foreach (var (x, y) in from x in Enumerable.Range(0, 9) from y in Enumerable.Range(0, 9) select ((x / 8d - 0.5) * width, (y / 8d - 0.5) * height))
            {
                var material = 0d;
                for (var i = 0; i < layout.Cuts.Count; i++)
                {
                    var cut = layout.Cuts[i];
                    var start = Millimeters(cut.Start) + Offset(cut.StartCut, x, y) + (width * Slope(cut.StartCut.WidthAngle.Size) + height * Slope(cut.StartCut.HeightAngle.Size)) / 2;
                    var end = Millimeters(cut.End) + Offset(cut.EndCut, x, y) - (width * Slope(cut.EndCut.WidthAngle.Size) + height * Slope(cut.EndCut.HeightAngle.Size)) / 2;
                    Assert.True(start >= material + (i == 0 ? 0 : Millimeters(chain.Rules.Kerf) * Steepest(layout, i)) - 5e-6);
                    Assert.True(end > start);
                    material = end;
                }
                Assert.True(Millimeters(layout.Stock.Length) - material >= Millimeters(layout.Remainder.Length) - 5e-6);
            }
        },
        iter: 300);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static PlacedPiece Placed(Section section, int index, (EndCut First, EndCut Second, int Micrometers, LengthAt LengthAt, int Turn) piece)
    {
        var line = Line($"{index}", piece.Micrometers / 1000m, 1) with { Section = section, FirstEnd = piece.First, SecondEnd = piece.Second, LengthAt = piece.LengthAt };
        var turns = PieceFaces.Of(line);
        return new(line, turns[piece.Turn % turns.Count].Turn);
    }

    private static BarLayout Lay((CutRules Rules, PlacedPiece[] Pieces) chain) =>
        LayoutPositions.Lay(Bar("B", 40_000, 1) with { Section = chain.Pieces[0].Line.Section }, chain.Pieces, chain.Rules, new(null, 0))!;

    private static IEnumerable<string> Verify((CutRules Rules, PlacedPiece[] Pieces) chain, BarLayout layout) =>
        NestVerifier.VerifyLayout(new() { Lines = [.. chain.Pieces.Select(piece => piece.Line)], Stock = [layout.Stock], Rules = chain.Rules }, layout)
            .Select(violation => violation.Code);

    /// <summary>What a kerf grows by along the bar, of the steeper of two facing ends.</summary>
    private static double Steepest(BarLayout layout, int cut) =>
        new[] { layout.Cuts[cut - 1].EndCut, layout.Cuts[cut].StartCut }.Max(end => Math.Sqrt(1 + Math.Pow(Slope(end.WidthAngle), 2) + Math.Pow(Slope(end.HeightAngle), 2)));

    private static double Offset(EndCut face, double x, double y) => x * Slope(face.WidthAngle) + y * Slope(face.HeightAngle);

    private static double Slope(Angle angle) => Math.Tan((double)angle.Degrees * Math.PI / 180);

    private static double Millimeters(Length length) => (double)length.Millimeters;
}
