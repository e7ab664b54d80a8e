using FluentValidation;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary><c>POST /v1/plans</c> and <c>plan FILE</c>.</summary>
public sealed class PlanOperation(INester nester, IScheduler scheduler, IScheduleExplainer explainer) : Operation<PlanRequest, PlanResponse>
{
    private readonly Planner _planner = new(nester, scheduler, explainer);

    public override string Verb => "plan";

    public override string OperationId => "calculatePlan";

    public override string Path => "/v1/plans";

    public override string Tag => "Plans";

    public override string Summary => "Plans orders from stock on the saws of a shop.";

    public override string Description =>
        "Decides which bar or remnant gives each piece, on which saw, with which blade, speed and feed, how long it takes, what it costs by order line, in what "
        + "order it is cut and when it is finished. What cannot be planned is listed with the reason. The stock that the plan counts on is listed as claims: commit "
        + "them at once or ask again.";

    public override string Example => PlanExample.Json;

    protected override IValidator<PlanRequest> Rules { get; } = new PlanRequestRules();

    protected override LengthUnit UnitOf(PlanRequest request) => request.LengthUnit;

    protected override PlanResponse Execute(PlanRequest request, OperationContext context)
    {
        var mapping = PlanMapping.Of(request);
        context.Warnings.AddRange(mapping.Warnings);
        return new PlanAnswer(request, mapping, _planner.Plan(mapping.Problem, context.Cancellation)).Write(context);
    }

    protected override bool IsNothingPlanned(PlanResponse response) => response.Status == Completion.None;
}
