using System.Numerics;
using CsCheck;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Tests.Nesting;
using SawEngine.Core.Tests.Sections;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Orders;

public class PieceFacesTests
{
    private static readonly Gen<EndCut> s_end = Gen.Select(Gen.Int[-60_000, 60_000], Gen.Int[-60_000, 60_000], (height, width) => new EndCut(new(height), new(width)));

    /// <summary>The axis of each half turn, in (width to the right, height upward, length along the bar).</summary>
    public static TheoryData<PieceTurn, float, float, float> Axes => new()
    {
        { PieceTurn.EndForEnd, 0, 1, 0 },
        { PieceTurn.Over, 0, 0, 1 },
        { PieceTurn.EndForEndOver, 1, 0, 0 },
    };

    [Theory]
    [MemberData(nameof(Axes))]
    public void Corners_of_a_turned_piece_are_those_of_the_piece_rotated_in_space(PieceTurn turn, float x, float y, float z)
    {
        const double w = 80, h = 120, length = 1000;
        Gen.Select(s_end, s_end).Sample((first, second) =>
        {
            var turned = PieceFaces.Of(Beam() with { FirstEnd = first, SecondEnd = second }, turn);
            var rotation = Matrix4x4.CreateFromAxisAngle(new(x, y, z), MathF.PI);
            var rotated = Corners(first, second).Select(corner => Vector3.Transform(corner, rotation)).ToList();

            Assert.All(Corners(turned.First, turned.Second), corner => Assert.Contains(rotated, other => Vector3.Distance(corner, other) < 0.01));
        });

        // The faces' centers lie at -500 and 500 on the axis; single precision is good to a few micrometers here.
        static List<Vector3> Corners(EndCut first, EndCut second) =>
        [
            .. new[] { (-w / 2, -h / 2), (-w / 2, h / 2), (w / 2, -h / 2), (w / 2, h / 2) }.SelectMany(at => new[]
            {
                new Vector3((float)at.Item1, (float)at.Item2, (float)(-length / 2 + Offset(first, at.Item1, at.Item2))),
                new Vector3((float)at.Item1, (float)at.Item2, (float)(length / 2 + Offset(second, at.Item1, at.Item2))),
            }),
        ];
    }

    [Fact]
    public void Square_piece_lies_one_way() =>
        Assert.Equal([new(PieceTurn.None, EndCut.Square, EndCut.Square)], PieceFaces.Of(Beam()));

    [Fact]
    public void Trapezoid_lies_two_ways_on_a_beam() =>
        Assert.Equal(
            [new(PieceTurn.None, WidthMiter(-30), WidthMiter(30)), new(PieceTurn.EndForEnd, WidthMiter(30), WidthMiter(-30))],
            PieceFaces.Of(Beam() with { FirstEnd = WidthMiter(-30), SecondEnd = WidthMiter(30) }));

    [Fact]
    public void Trapezoid_in_the_plane_of_the_height_is_turned_over_since_end_for_end_leaves_it_as_it_is() =>
        Assert.Equal(
            [new(PieceTurn.None, HeightMiter(-30), HeightMiter(30)), new(PieceTurn.Over, HeightMiter(30), HeightMiter(-30))],
            PieceFaces.Of(Beam() with { FirstEnd = HeightMiter(-30), SecondEnd = HeightMiter(30) }));

    [Fact]
    public void Compound_ends_lie_four_ways() =>
        Assert.Equal(
            [
                new(PieceTurn.None, EndCut.Square, Compound(20, 30)),
                new(PieceTurn.EndForEnd, Compound(-20, 30), EndCut.Square),
                new(PieceTurn.Over, EndCut.Square, Compound(-20, -30)),
                new(PieceTurn.EndForEndOver, Compound(20, -30), EndCut.Square),
            ],
            PieceFaces.Of(Beam() with { SecondEnd = Compound(20, 30) }));

    [Fact]
    public void Channel_keeps_its_open_side() =>
        Assert.Equal(
            [new(PieceTurn.None, EndCut.Square, Compound(20, 30)), new(PieceTurn.EndForEndOver, Compound(20, -30), EndCut.Square)],
            PieceFaces.Of(Beam() with { Section = Shapes.Channel, SecondEnd = Compound(20, 30) }));

    [Fact]
    public void Tee_keeps_its_flange_on_top() =>
        Assert.Equal(
            [new(PieceTurn.None, EndCut.Square, Compound(20, 30)), new(PieceTurn.EndForEnd, Compound(-20, 30), EndCut.Square)],
            PieceFaces.Of(Beam() with { Section = Shapes.Tee, SecondEnd = Compound(20, 30) }));

    [Fact]
    public void Piece_of_an_unnamed_section_lies_as_ordered() => Assert.Equal([PieceTurn.None], PieceFaces.TurnsOf(null));

    /// <summary>Against the outlines: a turn that is allowed leaves every section of the shape as it was; of one that is not, some section shows it.</summary>
    [Theory]
    [InlineData(SectionShape.Round)]
    [InlineData(SectionShape.Square)]
    [InlineData(SectionShape.Hexagon)]
    [InlineData(SectionShape.Flat)]
    [InlineData(SectionShape.RoundTube)]
    [InlineData(SectionShape.Pipe)]
    [InlineData(SectionShape.SquareTube)]
    [InlineData(SectionShape.RectangleTube)]
    [InlineData(SectionShape.Angle)]
    [InlineData(SectionShape.Channel)]
    [InlineData(SectionShape.IBeam)]
    [InlineData(SectionShape.Tee)]
    public void Turns_of_a_shape_are_those_that_leave_its_outline_as_it_was(SectionShape shape)
    {
        var shown = new HashSet<PieceTurn>();
        RandomSections.Of(shape).Sample(
            dimensions =>
            {
                var section = Shapes.Of(dimensions);
                foreach (var turn in Enum.GetValues<PieceTurn>())
                {
                    var keeps = TurnedPiece.Of(turn)!.Value.Keeps(section);
                    Assert.True(keeps || !PieceFaces.TurnsOf(section).Contains(turn), $"{turn} of {shape}");
                    if (!keeps)
                        shown.Add(turn);
                }
            },
            iter: 50,
            threads: 1);

        Assert.Equal(Enum.GetValues<PieceTurn>().Except(PieceFaces.TurnsOf(Shapes.Of(RandomSections.Of(shape).Single()))), shown.Order());
    }

    private static double Offset(EndCut face, double x, double y) =>
        x * Math.Tan((double)face.WidthAngle.Degrees * Math.PI / 180) + y * Math.Tan((double)face.HeightAngle.Degrees * Math.PI / 180);

    private static EndCut Compound(decimal height, decimal width) => new(Angle.FromDegrees(height), Angle.FromDegrees(width));

    private static OrderLine Beam() => Line("10", 1000, 1) with { Section = Shapes.IBeam };
}
