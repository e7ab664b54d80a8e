using FluentValidation;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary><c>POST /v1/schedules/evaluations</c> and <c>evaluate-schedule FILE</c>.</summary>
public sealed class ScheduleEvaluationOperation(IScheduler scheduler, IScheduleTimer timer) : Operation<ScheduleEvaluationRequest, ScheduleEvaluationResponse>
{
    private readonly VerifiedScheduler _scheduler = new(scheduler);

    public override string Verb => "evaluate-schedule";

    public override string OperationId => "evaluateSchedule";

    public override string Path => "/v1/schedules/evaluations";

    public override string Tag => "Schedules";

    public override string Summary => "Says what a schedule edited by hand breaks, takes and costs.";

    public override string Description =>
        "Holds a schedule against the rules that every schedule of the engine keeps, and lists each rule that is broken with the place in the request: jobs and saws that are "
        + "unknown too. The jobs of an answer are taken as they are. Where a job comes without work, moved by hand, all jobs are timed anew in their sequences, with all overtime that is offered. "
        + "The cost counts the jobs as they stand; the engine's own schedule stands beside it.";

    public override string Example => ScheduleEvaluationExample.Json;

    protected override IValidator<ScheduleEvaluationRequest> Rules { get; } = new ScheduleEvaluationRequestRules();

    protected override LengthUnit UnitOf(ScheduleEvaluationRequest request) => request.LengthUnit;

    protected override ScheduleEvaluationResponse Execute(ScheduleEvaluationRequest request, OperationContext context)
    {
        var mapping = new ScheduleMapping(request);
        var edited = new EditedSchedule(request, mapping, timer);
        context.Warnings.AddRange(mapping.Warnings());
        context.Warnings.AddRange(edited.Warnings());
        var violations = new EditedScheduleCheck(request, edited, mapping.Problem).Run();
        var engine = request.Compare ? _scheduler.Solve(mapping.Problem, request.Effort, context.Cancellation) : null;
        return new ScheduleEvaluationAnswer(request, mapping, edited, violations, engine).Write(context);
    }

    protected override bool IsNothingPlanned(ScheduleEvaluationResponse response) => response.Totals.Scheduled == 0;
}
