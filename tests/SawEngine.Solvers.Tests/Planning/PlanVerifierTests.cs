using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>Mutants of a good plan: each breaks one rule and is rejected with that rule's code.</summary>
public class PlanVerifierTests
{
    private static readonly PlanProblem Given = Problem();
    private static readonly Plan Good = Plan(Given);

    private static readonly PlanProblem Bundling = Bundles.Flats();
    private static readonly Plan Bundled = Plan(Bundling);

    [Fact]
    public void The_plan_with_bundles_is_clean()
    {
        Assert.Empty(PlanVerifier.Verify(Bundling, Bundled));
        Assert.Contains(Bundled.Layouts, layout => layout.Layout.Bundle.Bars > 1);
    }

    [Fact]
    public void The_good_plan_is_clean() => Assert.Empty(PlanVerifier.Verify(Given, Good));

    public static TheoryData<string, string> Mutants => new()
    {
        { "a layout is lost", PlanRule.PieceNotAccounted },
        { "a piece is reported unplaced though it is on a bar", PlanRule.PieceNotAccounted },
        { "a line says it has one more piece planned", PlanRule.PlannedCount },
        { "a layout names no job", PlanRule.LayoutWithoutJob },
        { "a job runs on a saw for which its layouts are not valid", PlanRule.SawNotAllowed },
        { "a mitered layout runs on a saw that cuts square only", NestRule.MiterRange },
        { "a job runs with a blade that its saw has not", PlanRule.BladeNotOnSaw },
        { "a remnant is cut twice", PlanRule.StockOverused },
        { "more remnants are left than may be", PlanRule.TooManyRemnants },
        { "a claim is missing", PlanRule.ClaimsWrong },
        { "a claim is one bar short", PlanRule.ClaimsWrong },
        { "a job starts before its order is released", PlanRule.StartsBeforeRelease },
        { "a job takes a minute less than its times say", PlanRule.DurationWrong },
        { "a job counts a cycle too few", PlanRule.CyclesWrong },
        { "a bundle is cut bar by bar", PlanRule.CyclesWrong },
        { "a bundle is cut on a saw that clamps none", NestRule.BundleTooLarge },
        { "a bundle is heavier than the bar feed carries", NestRule.BundleTooHeavy },
        { "a bundle is wider than its saw takes as the bars lie", PlanRule.BundleDoesNotLieSo },
        { "an order is said to be finished an hour early", PlanRule.FinishWrong },
        { "an order's lateness is hidden", PlanRule.FinishWrong },
        { "a line's material is a cent short", PlanRule.CostDoesNotAddUp },
        { "a line's labor is in tenths of a cent", PlanRule.CostDoesNotAddUp },
        { "the status says none", PlanRule.StatusWrong },
        { "two layouts have one id", PlanRule.DuplicateId },
    };

    [Theory]
    [MemberData(nameof(Mutants))]
    public void Mutant_is_rejected_with_the_code_of_its_rule(string mutation, string rule)
    {
        var (problem, plan) = Mutate(mutation);
        Assert.Contains(PlanVerifier.Verify(problem, plan), violation => violation.Code == rule);
    }

    private static (PlanProblem Problem, Plan Plan) Mutate(string mutation) => mutation switch
    {
        "a layout is lost" => (Given, Good with { Layouts = Good.Layouts.Skip(1).ToList() }),
        "a piece is reported unplaced though it is on a bar" => (Given, Good with { Unplaced = [new(new("SO-1", "10"), 1, UnplacedReason.StockUsedUp)] }),
        "a line says it has one more piece planned" => (Given, WithLine(line => line with { Planned = line.Planned + 1 })),
        "a layout names no job" => (Given, WithLayout(layout => layout with { JobId = "J99" })),
        "a job runs on a saw for which its layouts are not valid" => (Given, WithLayout(layout => layout with { SawIds = [] })),
        "a mitered layout runs on a saw that cuts square only" => (Given with { Saws = Given.Saws.Select(saw => saw with { Saw = saw.Saw with { MiterRange = null } }).ToList() }, Good),
        "a job runs with a blade that its saw has not" => (Given, WithJob(job => job with { BladeId = "another" })),
        "a remnant is cut twice" => (Given, WithLayout(layout => layout with { Layout = layout.Layout with { Repeat = layout.Layout.Stock.Quantity!.Value + 1 } })),
        "more remnants are left than may be" => (Given with { Remnants = Given.Remnants! with { MostNew = 0 } }, Good),
        "a claim is missing" => (Given, Good with { Claims = Good.Claims.Skip(1).ToList() }),
        "a claim is one bar short" => (Given, Good with { Claims = [Good.Claims[0] with { Quantity = Good.Claims[0].Quantity - 1 }, .. Good.Claims.Skip(1)] }),
        "a job starts before its order is released" => (Given with { Orders = Given.Orders.Select(order => order with { Release = Start.AddDays(1) }).ToList() }, Good),
        "a job takes a minute less than its times say" => (Given, WithJob(job => job with { Time = job.Time with { Cut = job.Time.Cut + 60 } })),
        "a job counts a cycle too few" => (Given, WithJob(job => job with { Time = job.Time with { Clamp = job.Time.Clamp - 4, Index = job.Time.Index + 4 } })),
        "a bundle is cut bar by bar" => (Bundling, Bundled with { Layouts = Bundled.Layouts.Select(layout => layout with { Layout = layout.Layout with { Bundle = CutBundle.Single } }).ToList() }),
        "a bundle is cut on a saw that clamps none" => (Bundling with { Saws = Bundling.Saws.Select(saw => saw with { Saw = saw.Saw with { Bundle = null } }).ToList() }, Bundled),
        "a bundle is heavier than the bar feed carries" => (Bundling with { Saws = Bundling.Saws.Select(saw => saw with { Saw = saw.Saw with { LoadLimit = new(100m) } }).ToList() }, Bundled),
        "a bundle is wider than its saw takes as the bars lie" => (Bundling with { Saws = Bundling.Saws.Select(saw => saw with { Saw = saw.Saw with { Bundle = saw.Saw.Bundle! with { LargestWidth = Mm(149) } } }).ToList() }, Bundled),
        "an order is said to be finished an hour early" => (Given, WithOrder(order => order with { Finish = order.Finish - 3600 })),
        "an order's lateness is hidden" => (Given with { Orders = Overdue }, Good with { Orders = Good.Orders.Select((order, i) => order with { Order = Overdue[i] }).ToList() }),
        "a line's material is a cent short" => (Given, WithLine(line => line with { Cost = line.Cost with { Material = line.Cost.Material - new Money(0.01m) } })),
        "a line's labor is in tenths of a cent" => (Given, WithLine(line => line with { Cost = line.Cost with { Labor = line.Cost.Labor + new Money(0.001m) } })),
        "the status says none" => (Given, Good with { Status = PlanStatus.None }),
        "two layouts have one id" => (Given, Good with { Layouts = Good.Layouts.Select(layout => layout with { LayoutId = "same" }).ToList() }),
        _ => throw new ArgumentOutOfRangeException(nameof(mutation), mutation, null),
    };

    private static List<Core.Orders.SalesOrder> Overdue { get; } = Given.Orders.Select(order => order with { Due = Start.AddDays(-1) }).ToList();

    private static Plan WithLayout(Func<PlannedLayout, PlannedLayout> change) => Good with { Layouts = [change(Good.Layouts[0]), .. Good.Layouts.Skip(1)] };

    private static Plan WithJob(Func<PlannedJob, PlannedJob> change) => Good with { Jobs = [change(Good.Jobs[0]), .. Good.Jobs.Skip(1)] };

    private static Plan WithOrder(Func<PlannedOrder, PlannedOrder> change) => Good with { Orders = [change(Good.Orders[0]), .. Good.Orders.Skip(1)] };

    private static Plan WithLine(Func<PlannedLine, PlannedLine> change) =>
        WithOrder(order => order with { Lines = [change(order.Lines[0]), .. order.Lines.Skip(1)] });
}
