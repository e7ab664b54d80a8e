using SawEngine.Core.Nesting;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Core.Planning;

/// <summary>The main job: orders, stock and shop in, a verified plan out. Each stage gets values and gives values; nothing is stored.</summary>
/// <param name="nester">Nests.</param>
/// <param name="scheduler">Schedules.</param>
/// <param name="explainer">Says why plans are as they are; null where nobody asks.</param>
public sealed class Planner(INester nester, IScheduler scheduler, IScheduleExplainer? explainer = null)
{
    /// <summary>The plan. What cannot be planned is in it with its reason; a plan that the verifiers refuse is withheld as a whole.</summary>
    public Plan Plan(PlanProblem problem, CancellationToken cancellation)
    {
        var groups = CuttingGroup.Of(problem.Orders.SelectMany(order => order.Lines), problem.Stock).SelectMany(group => FittedGroup.Of(problem, group)).ToList();
        var known = new KnownNests();
        var best = Draft(new Dictionary<int, NestVariant>());
        // Where stock has no cost, material cannot be weighed against lateness.
        var draft = problem.StockIsCosted ? new LatenessLoop(Draft, plan => PlanVerifier.Verify(problem, plan).Count == 0, problem.Effort, cancellation).Run(best) : best;
        return PlanVerifier.Verify(problem, draft.Plan) is { Count: > 0 } violations
            ? Withheld(problem, violations)
            : draft.Plan with { Explanation = explainer?.Explain(draft.Jobs, draft.Plan.Schedule, cancellation) ?? ScheduleExplanation.None };

        PlanDraft Draft(IReadOnlyDictionary<int, NestVariant> variants)
        {
            var nests = new NestStage(problem, nester, known, cancellation).Run(groups, variants);
            var flat = nests.SelectMany(nestsOfGroup => nestsOfGroup).ToList();
            var jobs = new JobStage(problem).Run(flat, out var refused);
            var (scheduled, schedule) = new ScheduleStage(problem, scheduler, cancellation).Run(jobs);
            return new(variants, nests, scheduled, new PlanRollUp(problem, flat, jobs, refused, schedule).Plan());
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
