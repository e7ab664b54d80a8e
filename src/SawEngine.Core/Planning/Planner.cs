using SawEngine.Core.Nesting;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>The main job: orders, stock and shop in, a verified plan out. Each stage gets values and gives values; nothing is stored.</summary>
public sealed class Planner(INester nester, IScheduler scheduler)
{
    /// <summary>The plan. What cannot be planned is in it with its reason; a plan that the verifiers refuse is withheld as a whole.</summary>
    public Plan Plan(PlanProblem problem, CancellationToken cancellation)
    {
        var groups = CuttingGroup.Of(problem.Orders.SelectMany(order => order.Lines), problem.Stock).SelectMany(group => FittedGroup.Of(problem, group)).ToList();
        var known = new KnownNests();
        var best = Draft(new Dictionary<int, NestVariant>());
        // Where stock has no cost, material cannot be weighed against lateness.
        var plan = (problem.StockIsCosted ? new LatenessLoop(Draft, draft => PlanVerifier.Verify(problem, draft).Count == 0, problem.Effort, cancellation).Run(best) : best).Plan;
        return PlanVerifier.Verify(problem, plan) is { Count: > 0 } violations ? Withheld(problem, violations) : plan;

        PlanDraft Draft(IReadOnlyDictionary<int, NestVariant> variants)
        {
            var nests = new NestStage(problem, nester, known, cancellation).Run(groups, variants);
            var flat = nests.SelectMany(nestsOfGroup => nestsOfGroup).ToList();
            var jobs = new JobStage(problem).Run(flat, out var refused);
            var schedule = new ScheduleStage(problem, scheduler, cancellation).Run(jobs);
            return new(variants, nests, new PlanRollUp(problem, flat, jobs, refused, schedule).Plan());
        }
    }

    private static Plan Withheld(PlanProblem problem, IReadOnlyList<Violation> violations)
    {
        var unplaced = problem.Orders.SelectMany(order => order.Lines)
            .Select(line => new GroupNest(new(line.Section!, [line.Grade!], [line]), null, [], [new(line.Ref, line.Quantity, UnplacedReason.NotVerified)], 0, 0))
            .ToList();
        var plan = new PlanRollUp(problem, unplaced, [], [], Schedule.Nothing).Plan();
        return plan with
        {
            Warnings = [.. violations.Select(violation => new Warning(UnplacedReason.NotVerified, $"{violation.Code}: {violation.Detail}"))],
        };
    }
}
