using FluentValidation;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Estimates;

/// <summary><c>POST /v1/estimates</c> and <c>estimate FILE</c>.</summary>
public sealed class EstimateOperation(INester nester, IScheduler scheduler) : Operation<EstimateRequest, EstimateResponse>
{
    private readonly Planner _planner = new(nester, scheduler);

    public override string Verb => "estimate";

    public override string OperationId => "calculateEstimate";

    public override string Path => "/v1/estimates";

    public override string Tag => "Estimates";

    public override string Summary => "Time and cost of one order, by line, and prices by quantity.";

    public override string Description =>
        "Finds what an order takes and costs on its own, as if the shop's saws were free and attended all the time: no schedule, nothing is reserved. Each line is also "
        + "priced on its own for the quantities in priceBreaks. Pieces that cannot be cut are listed with the reason.";

    public override string Example => EstimateExample.Json;

    protected override IValidator<EstimateRequest> Rules { get; } = new EstimateRequestRules();

    protected override LengthUnit UnitOf(EstimateRequest request) => request.LengthUnit;

    protected override EstimateResponse Execute(EstimateRequest request, OperationContext context)
    {
        var mapping = EstimateMapping.Of(request);
        context.Warnings.AddRange(mapping.Warnings);
        var whole = _planner.Plan(mapping.Problem, context.Cancellation);
        var alone = mapping.PriceBreaks(request.PriceBreaks).TakeWhile(_ => !context.Cancellation.IsCancellationRequested).ToLookup(one => one.LineId, one => (one.Quantity, _planner.Plan(one.Problem, context.Cancellation)), StringComparer.Ordinal);
        return new EstimateAnswer(request, mapping, whole, alone).Write(context);
    }

    protected override bool IsNothingPlanned(EstimateResponse response) => response.Status == Completion.None;
}
