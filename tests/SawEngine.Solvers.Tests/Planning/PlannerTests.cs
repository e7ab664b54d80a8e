using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Scheduling;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

public class PlannerTests
{
    [Fact]
    public void All_pieces_of_the_orders_are_planned_and_the_verifier_is_content()
    {
        var plan = Plan(Problem());
        Assert.Empty(PlanVerifier.Verify(Problem(), plan));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.DoesNotContain(plan.Warnings, warning => warning.Code == UnplacedReason.NotVerified);
        Assert.Equal(33, plan.Orders.SelectMany(order => order.Lines).Sum(line => line.Planned));
    }

    /// <summary>Rounds run on both saws, of which one has the narrower kerf: proved is the nest for the wider one alone.</summary>
    [Fact]
    public void Nests_that_cost_more_than_their_bound_are_not_said_to_be_proved()
    {
        var nests = Plan(Problem(Order("SO-1", Line("SO-1", "10", "Round 50", "C45", 1_400, 8)))).Nests;
        Assert.All(nests, nest => Assert.True(nest.ValueMicros > nest.BoundMicros, $"{nest.ValueMicros}, bound {nest.BoundMicros}"));
        Assert.All(nests, nest => Assert.Equal(StoppedBy.Effort, nest.StoppedBy));
    }

    [Fact]
    public void Mitered_beams_run_on_the_saw_that_swivels()
    {
        var plan = Plan(Problem());
        var beams = plan.Jobs.Where(job => job.Section == "IPE 200").ToList();
        Assert.NotEmpty(beams);
        Assert.All(beams, job => Assert.Equal("saw-1", job.Scheduled.SawId));
    }

    [Fact]
    public void Turned_pieces_stay_turned_and_share_their_cuts()
    {
        // Trapezoids, as ordered and end for end by turns: a bar of n takes its first face's cut and one behind each piece.
        var line = Line("SO-1", "10", "IPE 200", "S355J2", 1_400, 12) with { FirstEnd = WidthMiter(-30), SecondEnd = WidthMiter(30), LengthAt = LengthAt.LongSide };
        var (problem, sawn) = (Problem(Order("SO-1", line)), 0);

        var plan = new Planner(new TurningNester(PieceTurn.None, PieceTurn.EndForEnd), new DispatchScheduler()).Plan(problem, CancellationToken.None);

        Assert.Empty(PlanVerifier.Verify(problem, plan));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        foreach (var layout in plan.Layouts.Select(planned => planned.Layout))
        {
            Assert.All(layout.Cuts, (cut, i) => Assert.Equal(i % 2 == 0 ? PieceTurn.None : PieceTurn.EndForEnd, cut.Turn));
            Assert.Equal(layout.Cuts.Count + 1, SawCut.Of(layout).Count);
            Assert.All(SawCut.Of(layout), cut => Assert.True(cut.Index > Length.Zero));
            sawn += layout.Cuts.Count * layout.Repeat;
        }
        Assert.Equal(12, sawn);
        Assert.All(Plan(problem).Layouts, planned => Assert.Equal(planned.Layout.Cuts.Count + 1, SawCut.Of(planned.Layout).Count));
    }

    [Fact]
    public void Pieces_turned_to_a_hand_that_the_saw_does_not_reach_are_not_planned()
    {
        // The saw swivels 45° to the left and 60° to the right; end for end and over, +50° becomes -50°.
        var line = Line("SO-1", "10", "IPE 200", "S355J2", 1_400, 2) with { SecondEnd = WidthMiter(50) };
        var problem = Problem(Order("SO-1", line));

        var plan = new Planner(new TurningNester(PieceTurn.EndForEndOver), new DispatchScheduler()).Plan(problem, CancellationToken.None);

        Assert.Equal([new UnplacedPieces(line.Ref, 2, UnplacedReason.NotVerified)], plan.Unplaced);
        Assert.Equal(PlanStatus.Complete, new Planner(new TurningNester(PieceTurn.EndForEnd), new DispatchScheduler()).Plan(problem, CancellationToken.None).Status);
    }

    [Fact]
    public void A_single_heat_line_with_a_certificate_is_cut_from_one_certified_heat()
    {
        var plan = Plan(Problem());
        var stock = plan.Layouts.Where(layout => layout.Layout.Cuts.Any(cut => cut.Piece == new PieceRef("SO-2", "10"))).Select(layout => layout.Layout.Stock).ToList();
        Assert.Single(stock.Select(item => item.Heat).Distinct());
        Assert.All(stock, item => Assert.Equal(Certificate.Type31, item.Certificate));
    }

    [Fact]
    public void Costs_of_the_lines_add_up_to_what_the_bars_consume_to_the_cent()
    {
        var plan = Plan(Problem());
        var consumed = plan.Layouts.Sum(layout => LayoutCost.MaterialMicros(layout.Layout)) / 1_000_000m;
        Assert.Equal(Math.Round(consumed, 2, MidpointRounding.ToEven), plan.Orders.SelectMany(order => order.Lines).Sum(line => line.Cost.Material.Amount));
        Assert.Equal(plan.Orders.SelectMany(order => order.Lines).Sum(line => line.Cost.Total.Amount), plan.Cost.Amount);
    }

    [Fact]
    public void Pulling_a_bar_is_handling_of_its_lines()
    {
        var pulled = Problem() with { Stock = [.. Stock.Select(item => item with { PullCostMicros = 5_000_000 })] };
        var (without, with) = (Plan(Problem()), Plan(pulled));

        Assert.Equal(without.BarsUsed, with.BarsUsed);
        Assert.Equal(Handling(without) + 5m * with.BarsUsed, Handling(with));

        static decimal Handling(Plan plan) => plan.Orders.SelectMany(order => order.Lines).Sum(line => line.Cost.Handling.Amount);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void No_more_remnants_of_a_section_and_grade_are_left_than_allowed(int most)
    {
        var three = Order("SO-1", Line("SO-1", "10", "Round 50", "C45", 4_000, 3));
        var plan = Plan(Problem(three) with { Remnants = Problem().Remnants! with { MostNew = most } });

        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(most, plan.Layouts.Where(layout => layout.RemnantId is not null).Sum(layout => layout.Layout.Repeat));
        Assert.Contains(plan.Warnings, warning => warning.Code == RemnantLimit.Reached);
    }

    [Fact]
    public void Scrap_dearer_than_any_bar_earns_nothing()
    {
        var problem = Problem(Order("SO-1", Line("SO-1", "10", "Round 50", "C45", 245, 700))) with
        {
            Stock = [Bar("BUY", "Round 50", "C45", 6_000, 1, 1m) with { Kind = StockKind.Purchasable, Quantity = null }, Bar("FREE", "Round 50", "C45", 6_000, 100_000, 0m)],
            Rates = new(new(42m), new(2.5m), new(100_000m)),
        };
        var plan = Plan(problem);
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.All(plan.Nests, nest => Assert.InRange(nest.BoundMicros, 0, nest.ValueMicros));
    }

    [Fact]
    public void Section_larger_than_every_saw_is_unplaced_with_reason() =>
        AssertUnplaced(UnplacedReason.NoSawHoldsSection, Line("SO-9", "1", "Round 500", "C45", 100, 2));

    [Fact]
    public void Miter_beyond_every_swivel_is_unplaced_with_reason() =>
        AssertUnplaced(UnplacedReason.NoSawCutsMiter, Line("SO-9", "1", "IPE 200", "S355J2", 2000, 1) with { FirstEnd = new(Angle.FromDegrees(50), Angle.FromDegrees(20)) });

    [Fact]
    public void Grade_without_stock_is_unplaced_with_reason() =>
        AssertUnplaced(UnplacedReason.NoStock, Line("SO-9", "1", "Round 50", "1.4301", 100, 2));

    [Fact]
    public void Piece_longer_than_every_bar_is_unplaced_with_reason() =>
        AssertUnplaced(UnplacedReason.LongerThanEveryBar, Line("SO-9", "1", "Round 50", "C45", 6000, 2));

    [Fact]
    public void Piece_shorter_than_the_saws_shortest_is_unplaced_with_reason()
    {
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 5, 2)));
        problem = problem with { Saws = problem.Saws.Select(saw => saw with { Saw = saw.Saw with { ShortestPiece = Mm(6) } }).ToList() };
        Assert.Equal(UnplacedReason.PieceTooShort, Assert.Single(Plan(problem).Unplaced).Reason);
    }

    [Fact]
    public void Bars_too_heavy_for_every_bar_feed_are_left_with_reason()
    {
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 500, 2)));
        problem = problem with { Saws = problem.Saws.Select(saw => saw with { Saw = saw.Saw with { LoadLimit = new(20m) } }).ToList() };
        Assert.Equal(UnplacedReason.BarTooHeavy, Assert.Single(Plan(problem).Unplaced).Reason);
    }

    [Fact]
    public void Piece_for_which_only_the_bars_too_heavy_are_long_enough_is_left_for_their_weight()
    {
        // 6 m of Round 50 weigh 92 kg, the remnant of 2.31 m 36 kg.
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 3_000, 2)));
        problem = problem with { Saws = problem.Saws.Select(saw => saw with { Saw = saw.Saw with { LoadLimit = new(50m) } }).ToList() };
        Assert.Equal(UnplacedReason.BarTooHeavy, Assert.Single(Plan(problem).Unplaced).Reason);
    }

    [Fact]
    public void Bound_counts_on_bars_that_only_one_of_the_saws_carries()
    {
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 2_000, 1)));
        problem = problem with
        {
            Stock = [Bar("CHEAP-6M", "Round 50", "C45", 6_000, 1, 1m), Bar("DEAR-3M", "Round 50", "C45", 3_000, 1, 1.0004m)],
            Saws = problem.Saws.Select((saw, i) => saw with { Saw = saw.Saw with { LoadLimit = new(i == 0 ? 50m : 500m), MachineCostPerHour = default } }).ToList(),
            Remnants = null,
            Rates = new(default, default, default),
        };
        var nest = Assert.Single(Plan(problem).Nests);
        Assert.True(nest.BoundMicros <= 1_000_000, "The 6 m bar on the second saw costs 1.00.");
    }

    [Fact]
    public void Stock_that_other_lines_of_the_section_used_up_is_said_to_be_used_up()
    {
        // Mitered lines that lie another way are nested apart, after the square ones.
        var plan = Plan(Problem(Order(
            "SO-9",
            Line("SO-9", "1", "IPE 200", "S355J2", 11_000, 5),
            Line("SO-9", "2", "IPE 200", "S355J2", 5_000, 1),
            Line("SO-9", "3", "IPE 200", "S355J2", 2_000, 1) with { SecondEnd = new(Angle.Zero, Angle.FromDegrees(30)) },
            Line("SO-9", "4", "IPE 200", "S355J2", 2_000, 1) with { SecondEnd = new(Angle.FromDegrees(30), Angle.Zero) })));
        Assert.NotEmpty(plan.Unplaced);
        Assert.All(plan.Unplaced, pieces => Assert.Equal(UnplacedReason.StockUsedUp, pieces.Reason));
    }

    [Fact]
    public void Miter_in_the_plane_of_the_height_turns_the_section_a_quarter()
    {
        var plan = Plan(Problem(Order("SO-9", Line("SO-9", "1", "IPE 200", "S355J2", 2000, 2) with { SecondEnd = new(Angle.FromDegrees(30), Angle.Zero) })));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(1, Assert.Single(plan.Jobs).Lay.QuarterTurns % 2);
    }

    [Fact]
    public void Miters_in_two_planes_are_cut_in_two_nests()
    {
        var plan = Plan(Problem(Order(
            "SO-9",
            Line("SO-9", "1", "IPE 200", "S355J2", 2000, 2) with { SecondEnd = new(Angle.FromDegrees(30), Angle.Zero) },
            Line("SO-9", "2", "IPE 200", "S355J2", 2000, 2) with { SecondEnd = new(Angle.Zero, Angle.FromDegrees(30)) })));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(2, plan.Nests.Count);
    }

    [Fact]
    public void Saws_without_a_shift_leave_jobs_unscheduled_with_reason()
    {
        var problem = Problem();
        problem = problem with { Saws = problem.Saws.Select(saw => saw with { Schedule = saw.Schedule with { Windows = [] } }).ToList() };
        var plan = Plan(problem);
        Assert.Equal(PlanStatus.None, plan.Status);
        Assert.NotEmpty(plan.Unscheduled);
        Assert.All(plan.Unscheduled, job => Assert.Equal(UnscheduledReason.NoShift, job.Reason));
        Assert.Empty(PlanVerifier.Verify(problem, plan));
    }

    [Fact]
    public void Bought_bars_are_not_cut_before_they_are_there()
    {
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 500, 2)));
        problem = problem with { Stock = [Bar("BUY", "Round 50", "C45", 6000, 1, 150m) with { Kind = Core.Stock.StockKind.Purchasable, Quantity = null, LeadDays = 2 }] };
        Assert.Equal(2 * 86_400L, Assert.Single(Plan(problem).Jobs).Scheduled.Start);
    }

    [Fact]
    public void Orders_are_not_cut_before_their_release()
    {
        var order = Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 500, 2)) with { Release = Start.AddHours(3) };
        Assert.Equal(3 * 3600L, Assert.Single(Plan(Problem(order)).Jobs).Scheduled.Start);
    }

    [Fact]
    public void An_overdue_order_is_planned_with_a_warning()
    {
        var plan = Plan(Problem(RoundsAndBeams with { Due = Start.AddDays(-1) }));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Contains(plan.Warnings, warning => warning.Code == "order_overdue" && warning.OrderId == "SO-1");
        Assert.True(Assert.Single(plan.Orders).SecondsLate > 86_400);
    }

    [Fact]
    public void A_big_order_is_shared_by_saws_that_ask_for_the_same_kerf_and_tail()
    {
        var problem = Problem(Order("SO-9", Line("SO-9", "1", "Round 50", "C45", 245, 600)) with { Due = Start.AddHours(8), CostPerHourLate = new(100m) });
        problem = problem with
        {
            Stock = [Bar("R50", "Round 50", "C45", 6000, 100, 148m)],
            Saws = [problem.Saws[1], new(problem.Saws[1].Saw with { SawId = "saw-3" }, problem.Saws[1].Schedule.Windows)],
        };
        var plan = Plan(problem);
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(["saw-2", "saw-3"], plan.Jobs.Select(job => job.Scheduled.SawId).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Bars_heavier_than_two_can_lift_carry_the_crane_caution()
    {
        var plan = Plan(Problem());
        Assert.Contains(plan.Cautions, caution => caution.Caution.Code == "crane_lift" && caution.Caution.Detail.Contains("IPE200-12M", StringComparison.Ordinal));
        Assert.All(plan.Jobs, job => Assert.All(job.CautionIds, id => Assert.Contains(plan.Cautions, caution => caution.CautionId == id)));
    }

    [Fact]
    public void The_same_problem_gives_the_same_plan()
    {
        var (first, second) = (Plan(Problem()), Plan(Problem()));
        Assert.Equal(first.Layouts.Select(Text), second.Layouts.Select(Text));
        Assert.Equal(first.Jobs.Select(job => (job.Scheduled.JobId, job.Scheduled.SawId, job.Scheduled.Start)), second.Jobs.Select(job => (job.Scheduled.JobId, job.Scheduled.SawId, job.Scheduled.Start)));

        static string Text(PlannedLayout layout) => $"{layout.LayoutId} {layout.JobId} {string.Join(",", layout.Layout.Cuts)} {layout.Layout.Remainder}";
    }

    private static void AssertUnplaced(string reason, OrderLine line)
    {
        var problem = Problem(RoundsAndBeams, Order("SO-9", line));
        var plan = Plan(problem);
        var unplaced = Assert.Single(plan.Unplaced);
        Assert.Equal((line.Ref, line.Quantity, reason), (unplaced.Piece, unplaced.Quantity, unplaced.Reason));
        Assert.Equal(PlanStatus.Partial, plan.Status);
        Assert.Empty(PlanVerifier.Verify(problem, plan));
    }

    private static EndCut WidthMiter(decimal degrees) => new(Angle.Zero, Angle.FromDegrees(degrees));
}
