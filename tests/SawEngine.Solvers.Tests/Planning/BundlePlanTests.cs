using SawEngine.Core.Cautions;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Times;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

public class BundlePlanTests
{
    [Fact]
    public void Time_of_a_job_is_that_of_its_cycles()
    {
        var plan = Plan(Bundles.Flats());
        var (job, layout) = (Assert.Single(plan.Jobs), Assert.Single(plan.Layouts).Layout);
        Assert.Equal((6, CutBundle.Full(3, 2), 1), (layout.Repeat, layout.Bundle, layout.Cycles));
        Assert.Equal(CutBundle.Full(3, 2), job.Bundle);
        // Six bars at once, five passes, by the defaults of a saw: bars 240 s each to load and 60 s their remainders, pieces 36 s each; each pass three strokes of
        // 500 mm for 1101.5 mm at 10 s, 4 s of clamping, 10 s of approach, and the cut through 6 x 5 cm2.
        Assert.Equal(new TimeParts(Load: 6 * 240m, Index: 5 * 3 * 10m, Clamp: 5 * 4m, Approach: 5 * 10m, Swivel: 0m, Cut: 5 * job.Square.CutSeconds, Unload: 30 * 36m, Remainder: 6 * 60m), job.Time);
        Assert.Equal(6 * 500m, job.Square.CutArea.SquareMillimeters);
    }

    [Fact]
    public void Bars_cut_singly_take_the_motions_of_each()
    {
        var job = Assert.Single(Plan(Bundles.Flats(new(1, 1))).Jobs);
        Assert.Equal((6 * 5 * 3 * 10m, 6 * 5 * 4m, 6 * 5 * 10m), (job.Time.Index, job.Time.Clamp, job.Time.Approach));
    }

    [Fact]
    public void Bundles_save_time_and_cost_and_wear_blades_alike()
    {
        var (bundled, single) = (Plan(Bundles.Flats()), Plan(Bundles.Flats(new(1, 1))));
        Assert.True(bundled.Jobs[0].Time.Total < single.Jobs[0].Time.Total);
        var (cost, than) = (bundled.Orders[0].Lines[0].Cost, single.Orders[0].Lines[0].Cost);
        Assert.True(cost.Machine.Amount < than.Machine.Amount && cost.Labor.Amount < than.Labor.Amount);
        Assert.Equal((than.Material, than.Blade, than.Handling), (cost.Material, cost.Blade, cost.Handling));
    }

    [Fact]
    public void Bars_that_are_cut_no_quicker_together_are_cut_singly()
    {
        // A round of 100 mm is cut at the rate of its grade: a bundle takes four fifths of it, and loses more than the motions of one cut.
        var plan = Plan(Bundles.Of(new(2, 1) { HoldDown = true }, Line("SO-1", "10", "Round 100", "C45", 1_100, 40)));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.All(plan.Layouts, layout => Assert.Equal(CutBundle.Single, layout.Layout.Bundle));
    }

    [Theory]
    [InlineData(80, 3)]
    [InlineData(70, 2)]
    [InlineData(30, 1)]
    public void Bundle_is_no_heavier_than_the_bar_feed_carries(int kilograms, int mostBars)
    {
        // A bar of 50 x 10, 6 m long, has 23.55 kg.
        var problem = Bundles.Flats(new(3, 1));
        var plan = Plan(problem with { Saws = [problem.Saws[0] with { Saw = problem.Saws[0].Saw with { LoadLimit = new(kilograms) } }] });
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(mostBars, plan.Layouts.Max(layout => layout.Layout.Bundle.Bars));
    }

    [Fact]
    public void Bundle_is_within_the_width_and_height_of_the_saw()
    {
        var plan = Plan(Bundles.Flats(new(4, 4) { HoldDown = true, LargestWidth = Mm(110), LargestHeight = Mm(25) }));
        // As it comes two of 50 mm lie side by side and two of 10 mm on one another; on its side two of 10 mm, none of 50.
        Assert.All(plan.Layouts, layout => Assert.True(layout.Layout.Bundle is { Wide: <= 2, High: <= 2 }));
        Assert.Equal(4, plan.Layouts[0].Layout.Bundle.Bars);
    }

    [Fact]
    public void Trapezoids_are_cut_one_wide_and_parallelograms_side_by_side()
    {
        var tube = Line("SO-1", "10", "SHS 50x50x3 EN 10219", "S235JR", 1_100, 40) with { LengthAt = LengthAt.Centerline };
        var trapezoids = Plan(Bundles.Of(new(3, 2) { HoldDown = true }, tube with { FirstEnd = Miter(30), SecondEnd = Miter(-30) }));
        var parallelograms = Plan(Bundles.Of(new(3, 2) { HoldDown = true }, tube with { FirstEnd = Miter(30), SecondEnd = Miter(30) }));
        Assert.All(trapezoids.Layouts, layout => Assert.Equal(1, layout.Layout.Bundle.Wide));
        Assert.Contains(trapezoids.Layouts, layout => layout.Layout.Bundle.High == 2);
        Assert.Contains(parallelograms.Layouts, layout => layout.Layout.Bundle.Wide > 1);
    }

    [Fact]
    public void Bundle_carries_its_cautions()
    {
        var plan = Plan(Bundles.Flats());
        Assert.Contains(plan.Cautions, caution => caution.Caution.Code == CautionCatalog.CutBundle.Code && caution.Caution.Detail.StartsWith("6 bars are cut together, 3 wide and 2 high", StringComparison.Ordinal));
        // 6 x 23.55 kg.
        Assert.Contains(plan.Cautions, caution => caution.Caution.Code == CautionCatalog.CraneLift.Code && caution.Caution.Detail.StartsWith("Bundle of 6 bars B weighs 141.3 kg", StringComparison.Ordinal));
        Assert.DoesNotContain(Plan(Bundles.Flats(new(1, 1))).Cautions, caution => caution.Caution.Code == CautionCatalog.CutBundle.Code);
    }

    private static EndCut Miter(decimal degrees) => new(Angle.Zero, Angle.FromDegrees(degrees));
}
