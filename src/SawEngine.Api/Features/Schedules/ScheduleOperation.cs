using FluentValidation;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Schedules;

/// <summary><c>POST /v1/schedules</c> and <c>schedule FILE</c>.</summary>
public sealed class ScheduleOperation(IScheduler scheduler, IScheduleExplainer explainer) : Operation<ScheduleRequest, ScheduleResponse>
{
    private readonly VerifiedScheduler _scheduler = new(scheduler);

    public override string Verb => "schedule";

    public override string OperationId => "calculateSchedule";

    public override string Path => "/v1/schedules";

    public override string Tag => "Schedules";

    public override string Summary => "Puts jobs in order on the saws of a shop.";

    public override string Description =>
        "Gives each job a saw, a place in its sequence and times within the saw's attended time, with the set-ups that the sequence needs. The cost counts hours of saws "
        + "and operators and hours late; the bound is what no schedule of the same jobs can undercut. Each job says what it waits for and why it is on its saw; a late one why, and what would cure it. What cannot be scheduled is listed with the reason.";

    public override string Example => ScheduleExample.Json;

    protected override IValidator<ScheduleRequest> Rules { get; } = new ScheduleRequestRules();

    protected override LengthUnit UnitOf(ScheduleRequest request) => request.LengthUnit;

    protected override ScheduleResponse Execute(ScheduleRequest request, OperationContext context)
    {
        var mapping = new ScheduleMapping(request);
        var schedule = _scheduler.Solve(mapping.Problem, request.Effort, context.Cancellation);
        return new ScheduleAnswer(request, mapping, schedule).Write(context, explainer.Explain(mapping.Problem, schedule, context.Cancellation));
    }

    protected override bool IsNothingPlanned(ScheduleResponse response) => response.Status == Completion.None;
}
