using CsCheck;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Tests.CuttingData;
using SawEngine.Core.Times;

namespace SawEngine.Core.Tests.Times;

public sealed class BarTimeTests
{
    private static readonly Saw Saw = Shop.Saw() with
    {
        BarFeedStroke = Length.FromMillimeters(500m),
        Times = new SawTimes
        {
            LoadSecondsPerBar = 240m,
            IndexSecondsPerStroke = 7m,
            ClampSecondsPerCut = 3m,
            ApproachSecondsPerCut = 5m,
            SwivelSeconds = 30m,
            UnloadSecondsPerPiece = 12m,
            RemainderSecondsPerBar = 60m,
            SectionSetUpSeconds = 600m,
            BladeChangeSeconds = 300m,
            GradeGroupSetUpSeconds = 300m,
        },
    };

    [Theory]
    [InlineData(0, 0)]
    [InlineData(499_999_999, 1)]
    [InlineData(500_000_000, 1)]
    [InlineData(500_000_001, 2)]
    [InlineData(1_500_000_000, 3)]
    public void Index_longer_than_the_stroke_takes_several_strokes(long nanometers, int strokes) =>
        Assert.Equal(strokes, CutCycle.Strokes(new(nanometers), Saw.BarFeedStroke));

    [Fact]
    public void Bar_unfolds_to_its_parts()
    {
        PlannedCut[] cuts =
        [
            new(Length.FromMillimeters(10m), 20.5m, EndCut.Square, Pieces: 0),
            new(Length.FromMillimeters(1201.6m), 20.5m, EndCut.Square, Pieces: 1),
            new(Length.FromMillimeters(300m), 23.7m, Shop.Swivel(30), Pieces: 1),
        ];
        var time = BarTime.Of(Saw, cuts, hasRemainder: true, EndCut.Square);
        Assert.Equal(new TimeParts(Load: 240m, Index: 5 * 7m, Clamp: 9m, Approach: 15m, Swivel: 30m, Cut: 64.7m, Unload: 24m, Remainder: 60m), time.Parts);
        Assert.Equal(477.7m, time.Parts.Total);
        Assert.Equal([35.5m, 61.5m, 80.7m], time.Cycles.Select(cycle => cycle.Total));
    }

    [Fact]
    public void Bars_cut_together_share_the_motions_of_the_saw()
    {
        // Six bars: a trim cut, and one piece of each at a time. Loading, unloading and remainders are by bar: 6 x 240, 6 x 12, 6 x 60.
        PlannedCut[] cuts = [new(Length.FromMillimeters(10m), 64m, EndCut.Square, Pieces: 0), new(Length.FromMillimeters(801.6m), 64m, EndCut.Square, Pieces: 6)];
        var time = BarTime.Of(Saw, cuts, hasRemainder: true, EndCut.Square, bars: 6);
        Assert.Equal(new TimeParts(Load: 1440m, Index: 3 * 7m, Clamp: 6m, Approach: 10m, Swivel: 0m, Cut: 128m, Unload: 72m, Remainder: 360m), time.Parts);
    }

    [Fact]
    public void Angle_left_by_the_bar_before_costs_a_swivel()
    {
        PlannedCut[] cuts = [new(Length.FromMillimeters(100m), 10m, EndCut.Square, 1)];
        var straight = BarTime.Of(Saw, cuts, hasRemainder: false, EndCut.Square);
        var swiveled = BarTime.Of(Saw, cuts, hasRemainder: false, Shop.Swivel(45));
        Assert.Equal(Saw.Times.SwivelSeconds, swiveled.Parts.Total - straight.Parts.Total);
        Assert.Equal(0m, straight.Parts.Remainder);
    }

    [Fact]
    public void Swivel_and_tilt_are_set_one_after_the_other()
    {
        PlannedCut[] cuts = [new(Length.FromMillimeters(100m), 10m, new(Angle.FromDegrees(20), Angle.FromDegrees(45)), 1)];
        Assert.Equal(2 * Saw.Times.SwivelSeconds, BarTime.Of(Saw, cuts, hasRemainder: false, EndCut.Square).Parts.Swivel);
        Assert.Equal(Saw.Times.SwivelSeconds, BarTime.Of(Saw, cuts, hasRemainder: false, Shop.Swivel(45)).Parts.Swivel);
    }

    /// <summary>Three strokes of 7 s beside a retract of 6 s: the blade retracts within them; a retract of 30 s takes longer than they do.</summary>
    [Theory]
    [InlineData(6, false, 21, 11)]
    [InlineData(6, true, 15, 11)]
    [InlineData(30, true, 0, 35)]
    public void Only_the_longer_of_index_and_retract_takes_time_where_they_overlap(int retract, bool overlaps, int index, int approach)
    {
        var saw = Saw with { Times = Saw.Times with { RetractSecondsPerCut = retract, IndexesWhileRetracting = overlaps } };
        var cycle = CutCycle.Of(saw, new(Length.FromMillimeters(1201.6m), 20m, EndCut.Square, 1), EndCut.Square);
        Assert.Equal((index, approach), (cycle.Index, cycle.Approach));
    }

    [Fact]
    public void Parts_add_up_exactly() =>
        Gen.Select(Gen.Long[0, 3_000_000_000], Gen.Int[1, 100_000], Gen.Int[-2, 2], Gen.Int[0, 1], (feed, tenths, angle, pieces) =>
                new PlannedCut(new(feed), tenths / 10m, Shop.Swivel(angle * 15), pieces))
            .List[0, 30].Sample(cuts =>
            {
                var time = BarTime.Of(Saw, cuts, hasRemainder: true, EndCut.Square);
                var total = time.Load.Total + time.Remainder.Total + time.Cycles.Sum(cycle => cycle.Total);
                Assert.Equal(total, time.Parts.Total);
                Assert.Equal(cuts.Sum(cut => cut.CutSeconds), time.Parts.Cut);
                Assert.Equal(time.Parts + time.Parts, time.Parts * 2);
            }, iter: 300);
}
