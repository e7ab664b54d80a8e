using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

public class SubstitutePlanTests
{
    private const string Own = "C45";
    private const string Substitute = "42CrMo4+QT";

    private static readonly Grade Hard = GradeCatalog.Standard.Find(Substitute)!;

    [Fact]
    public void Each_grade_gets_a_job_of_its_own_with_its_cutting_data()
    {
        // Two pieces of 2900 go on a bar: one own bar, the rest from the substitute.
        var problem = Of([Allowing("10", 6)], [Bars("own", Own, 1, 100), Bars("other", Substitute, 5, 150)]);
        var plan = Clean(problem);

        Assert.Equal([("other", 2), ("own", 1)], plan.Claims.Select(claim => (claim.StockId, claim.Quantity)));
        Assert.Equal(new[] { GradeOf(Own), Hard.Designation }.Order(StringComparer.Ordinal), plan.Jobs.Select(job => job.Grade).Order(StringComparer.Ordinal));
        foreach (var job in plan.Jobs)
        {
            var saw = problem.Saws.Single(one => one.Saw.SawId == job.Scheduled.SawId).Saw;
            var alone = CuttingDataCalculator.For(job.Lay.Of(plan.Orders[0].Lines[0].Line.Section!), GradeCatalog.Standard.Find(job.Grade)!, saw, saw.Blades.Single(blade => blade.BladeId == job.BladeId), EndCut.Square, CutBundle.Single).Data!;
            Assert.Equal((alone.BladeSpeed, alone.CutSeconds), (job.Square.BladeSpeed, job.Square.CutSeconds));
        }
        var (soft, hard) = (plan.Jobs.Single(job => job.Grade != Hard.Designation), plan.Jobs.Single(job => job.Grade == Hard.Designation));
        Assert.True(hard.Square.BladeSpeed < soft.Square.BladeSpeed, $"{hard.Square.BladeSpeed} and {soft.Square.BladeSpeed}");
        Assert.Equal(plan.Layouts.Where(layout => layout.Layout.Stock.StockId == "other").Select(layout => layout.JobId).Distinct(), [hard.Scheduled.JobId]);
        // Chips of the two are kept apart, so the grades' groups are what the set-ups go by.
        Assert.NotEqual(GradeCatalog.Standard.Find(Own)!.Group, Hard.Group);
        Assert.Equal(2, plan.Jobs.Sum(job => job.Scheduled.SetUps.Count(setUp => setUp.Kind == "gradeGroup")));
        var nest = Assert.Single(plan.Nests);
        Assert.Equal((GradeOf(Own), Hard.Designation), (nest.Grade, Assert.Single(nest.JoinedGrades)));
    }

    [Fact]
    public void A_line_without_substitutes_stays_with_its_own_grade()
    {
        var plan = Clean(Of([Line("SO-1", "10", "Round 50", Own, 2_900, 2)], [Bars("other", Substitute, 5, 1)]));

        Assert.Empty(plan.Layouts);
        Assert.Equal([new UnplacedPieces(new("SO-1", "10"), 2, UnplacedReason.NoStock)], plan.Unplaced);
    }

    [Theory]
    [InlineData(150, "own")]
    [InlineData(70, "other")]
    public void What_costs_less_is_cut(decimal costOfSubstitute, string stockId)
    {
        var plan = Clean(Of([Allowing("10", 2)], [Bars("own", Own, 1, 100), Bars("other", Substitute, 1, costOfSubstitute)]));

        Assert.Equal([stockId], plan.Claims.Select(claim => claim.StockId));
    }

    [Fact]
    public void Orders_of_two_grades_share_a_bar_of_the_one_that_both_allow()
    {
        var plan = Clean(Of([Allowing("10", 1), Line("SO-1", "20", "Round 50", Substitute, 2_900, 1)], [Bars("own", Own, 1, 100), Bars("other", Substitute, 1, 120)]));

        Assert.Equal([("other", 1)], plan.Claims.Select(claim => (claim.StockId, claim.Quantity)));
        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal([Hard.Designation], plan.Jobs.Select(job => job.Grade));
    }

    [Fact]
    public void Bars_of_a_grade_run_only_on_saws_that_cut_it()
    {
        // A work-hardening grade takes more than a weak motor gives; C45 does not harden.
        var problem = Of([Allowing("10", 4, "304")], [Bars("own", Own, 1, 100), Bars("other", "304", 1, 110)]);
        problem = problem with { Saws = problem.Saws.Select(saw => saw.Saw.SawId == "saw-2" ? saw with { Saw = saw.Saw with { MotorPowerKilowatts = 0.01m } } : saw).ToList() };
        var grade = GradeCatalog.Standard.Find("304")!;
        Assert.Equal([true, false], problem.Saws.Select(saw => BladeChoice.Choose(problem.Stock[0].Section!, grade, saw.Saw, [EndCut.Square]).Choice is not null));

        var plan = Clean(problem);

        Assert.Equal(PlanStatus.Complete, plan.Status);
        Assert.Equal(["saw-1"], plan.Layouts.Single(layout => layout.Layout.Stock.StockId == "other").SawIds);
        Assert.Equal(["saw-1", "saw-2"], plan.Layouts.Single(layout => layout.Layout.Stock.StockId == "own").SawIds);
    }

    [Fact]
    public void A_substitute_serves_where_no_saw_cuts_the_own_grade()
    {
        var problem = Of([Line("SO-1", "10", "Round 50", "304", 2_900, 2) with { Substitutes = [GradeCatalog.Standard.Find(Own)!] }], [Bars("own", "304", 1, 1), Bars("other", Own, 1, 100)]);
        problem = problem with { Saws = problem.Saws.Select(saw => saw with { Saw = saw.Saw with { MotorPowerKilowatts = 0.01m } }).ToList() };

        Assert.Equal(["other"], Clean(problem).Claims.Select(claim => claim.StockId));
    }

    [Fact]
    public void Remnants_are_limited_for_the_grade_of_the_bar()
    {
        var problem = Of([Allowing("10", 2) with { Length = Mm(4_000) }], [Bars("own", Own, 1, 100), Bars("other", Substitute, 1, 100)]) with { Remnants = new(Mm(600), 0.8m) { MostNew = 1 } };

        Assert.Equal(2, Clean(problem).Layouts.Count(layout => layout.RemnantId is not null));
    }

    [Fact]
    public void A_job_that_says_another_grade_than_its_bars_is_refused()
    {
        var problem = Of([Allowing("10", 6)], [Bars("own", Own, 1, 100), Bars("other", Substitute, 5, 150)]);
        var plan = Clean(problem);
        var mutant = plan with { Jobs = [.. plan.Jobs.Select(job => job with { Grade = GradeOf(Own) })] };

        Assert.Equal([PlanRule.JobMaterial], PlanVerifier.Verify(problem, mutant).Select(violation => violation.Code).Distinct());
    }

    [Fact]
    public void A_substitute_that_the_order_does_not_allow_is_refused()
    {
        var problem = Of([Allowing("10", 6)], [Bars("own", Own, 1, 100), Bars("other", Substitute, 5, 150)]);
        var plan = Clean(problem);
        var strict = problem with { Orders = [Order("SO-1", problem.Orders[0].Lines[0] with { Substitutes = [] })] };

        Assert.Contains(PlanVerifier.Verify(strict, plan), violation => violation.Code == NestRule.Grade);
    }

    private static Plan Clean(PlanProblem problem)
    {
        var plan = Plan(problem);
        Assert.Empty(PlanVerifier.Verify(problem, plan));
        Assert.DoesNotContain(plan.Warnings, warning => warning.Code == UnplacedReason.NotVerified);
        return plan;
    }

    private static PlanProblem Of(OrderLine[] lines, StockItem[] stock) => Problem(Order("SO-1", lines)) with { Stock = stock.OrderBy(item => item.StockId, StringComparer.Ordinal).ToList() };

    private static OrderLine Allowing(string lineId, int quantity, string substitute = Substitute) =>
        Line("SO-1", lineId, "Round 50", Own, 2_900, quantity) with { Substitutes = [GradeCatalog.Standard.Find(substitute)!] };

    private static StockItem Bars(string stockId, string grade, int quantity, decimal cost) => Bar(stockId, "Round 50", grade, 6_000, quantity, cost);

    private static string GradeOf(string name) => GradeCatalog.Standard.Find(name)!.Designation;
}
