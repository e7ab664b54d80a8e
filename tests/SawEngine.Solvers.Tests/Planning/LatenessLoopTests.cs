using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Solvers.Nesting;
using SawEngine.Solvers.Scheduling;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>
/// One saw, bars of 6 m, an urgent order of four pieces of 1460 mm and a long one of 1090 mm. One urgent piece and four others fill a bar, so the least material
/// spreads the urgent pieces over four bars of five cuts; alone they take one bar more and four cuts.
/// </summary>
public class LatenessLoopTests
{
    [Fact]
    public void Urgent_pieces_are_nested_apart_where_lateness_costs_more_than_the_bar()
    {
        var problem = Urgent(costPerHourLate: 2_000m);
        var (without, with) = (PlanOnce(problem), Plan(problem));

        Assert.Empty(PlanVerifier.Verify(problem, with));
        Assert.Equal(without.BarsUsed + 1, with.BarsUsed);
        Assert.True(Late(without) > 0, "The order is in time as it is.");
        Assert.True(Late(with) < Late(without), $"{Late(with)} s late, {Late(without)} s without");
        Assert.All(with.Layouts, layout => Assert.Single(layout.Layout.Cuts.Select(cut => cut.Piece.OrderId).Distinct()));
        Assert.True(Total(with) < Total(without), $"{Total(with)}, {Total(without)} without");
    }

    // A week of 1,090 mm pieces, promised day by day, and an urgent order whose pieces the least material spreads over the week's bars.
    [Fact]
    public void Urgent_order_against_a_full_week_is_less_late_for_it()
    {
        var week = Enumerable.Range(1, 5).Select(day => Order($"SO-{day}", Line($"SO-{day}", "10", "Round 80", "C45", 1_090, 120)) with { Due = Start.AddDays(day - 1).AddHours(8), CostPerHourLate = new(20m) });
        var problem = OneSaw([.. week, Order("SO-U", Line("SO-U", "10", "Round 80", "C45", 1_460, 30)) with { Due = Start.AddHours(4), CostPerHourLate = new(400m) }]);
        problem = problem with { Stock = [problem.Stock[0] with { Quantity = 200 }] };
        var (without, with) = (PlanOnce(problem), Plan(problem));

        Assert.Empty(PlanVerifier.Verify(problem, with));
        Assert.Equal(Planned(without), Planned(with));
        Assert.True(without.Orders.Single(order => order.Order.OrderId == "SO-U").SecondsLate > 20 * 3600, "The order is not late as it is.");
        Assert.Equal(0, with.Orders.Single(order => order.Order.OrderId == "SO-U").SecondsLate);
        Assert.True(5 * Late(with) < Late(without), $"{Late(with)} s late, {Late(without)} s without");
        Assert.True(Total(with) < Total(without), $"{Total(with)}, {Total(without)} without");
    }

    [Fact]
    public void Nothing_is_nested_again_once_the_time_is_up()
    {
        using var limit = new CancellationTokenSource();
        var nester = new LimitedNester(limit);

        var plan = new Planner(nester, new DispatchScheduler()).Plan(Urgent(costPerHourLate: 2_000m), limit.Token);

        Assert.Equal(1, nester.Solved);
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.True(Late(plan) > 0, "The order is in time as it is.");
    }

    [Fact]
    public void Least_material_stands_where_lateness_costs_less_than_the_bar()
    {
        var problem = Urgent(costPerHourLate: 1m);
        Assert.Equal(PlanOnce(problem).Layouts.Select(layout => (layout.LayoutId, layout.Layout.Repeat)), Plan(problem).Layouts.Select(layout => (layout.LayoutId, layout.Layout.Repeat)));
    }

    [Fact]
    public void Plans_of_many_urgent_orders_never_cost_more_for_it()
    {
        var better = 0;
        for (var seed = 1; seed <= 25; seed++)
        {
            var problem = Random(seed);
            var (without, with) = (PlanOnce(problem), Plan(problem));
            Assert.Empty(PlanVerifier.Verify(problem, with));
            Assert.Equal(Planned(without), Planned(with));
            Assert.True(Total(with) <= Total(without), $"seed {seed}: {Total(with)}, {Total(without)} without");
            better += Total(with) < Total(without) ? 1 : 0;
        }
        Assert.True(better > 5, $"{better} of 25 better");
    }

    private static PlanProblem Urgent(decimal costPerHourLate) => OneSaw(
        Order("SO-1", Line("SO-1", "10", "Round 80", "C45", 1_090, 16)) with { Due = Start.AddDays(3), CostPerHourLate = new(10m) },
        Order("SO-2", Line("SO-2", "10", "Round 80", "C45", 1_460, 4)) with { Due = Start.AddMinutes(50), CostPerHourLate = new(costPerHourLate) });

    private static PlanProblem Random(int seed)
    {
        var random = new Random(seed);
        return OneSaw([.. Enumerable.Range(1, 6).Select(i =>
            Order($"SO-{i}", Line($"SO-{i}", "10", "Round 80", "C45", 300 + random.Next(1_800), 4 + random.Next(12)))
                with { Due = Start.AddHours(1 + random.Next(9)), CostPerHourLate = new(random.Next(400)) })]);
    }

    private static PlanProblem OneSaw(params SalesOrder[] orders)
    {
        var problem = Problem(orders);
        return problem with { Saws = [problem.Saws[0]], Stock = [Bar("R80-6M", "Round 80", "C45", 6_000, 60, 350m)], Remnants = null };
    }

    private static Plan PlanOnce(PlanProblem problem)
    {
        var groups = CuttingGroup.Of(problem.Orders.SelectMany(order => order.Lines), problem.Stock).SelectMany(group => FittedGroup.Of(problem, group)).ToList();
        var nests = new NestStage(problem, new ColumnNester(), new(), CancellationToken.None).Run(groups, new Dictionary<int, NestVariant>()).SelectMany(nest => nest).ToList();
        var jobs = new JobStage(problem).Run(nests, out var refused);
        return new PlanRollUp(problem, nests, jobs, refused, new ScheduleStage(problem, new DispatchScheduler(), CancellationToken.None).Run(jobs).Schedule).Plan();
    }

    private static long Late(Plan plan) => plan.Orders.Sum(order => order.SecondsLate);

    private static int Planned(Plan plan) => plan.Orders.Sum(order => order.Lines.Sum(line => line.Planned));

    /// <summary>The time is up when the first nest is made.</summary>
    private sealed class LimitedNester(CancellationTokenSource limit) : INester
    {
        public int Solved { get; private set; }

        public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
        {
            var nest = new ColumnNester().Solve(problem, effort, CancellationToken.None);
            Solved++;
            limit.Cancel();
            return nest;
        }

        public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) => new ColumnNester().Bound(problem, effort, CancellationToken.None);
    }

    private static decimal Total(Plan plan) => plan.Cost.Amount + plan.Orders.Sum(order => order.Order.CostPerHourLate.Amount * order.SecondsLate / 3600m);
}
