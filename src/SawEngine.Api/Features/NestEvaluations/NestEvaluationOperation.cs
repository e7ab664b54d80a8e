using FluentValidation;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary><c>POST /v1/nests/evaluations</c> and <c>evaluate-nest FILE</c>.</summary>
public sealed class NestEvaluationOperation(INester nester) : Operation<NestEvaluationRequest, NestEvaluationResponse>
{
    public override string Verb => "evaluate-nest";

    public override string OperationId => "evaluateNest";

    public override string Path => "/v1/nests/evaluations";

    public override string Tag => "Nests";

    public override string Summary => "Says what a nest edited by hand breaks, takes and costs.";

    public override string Description =>
        "Holds layouts against the rules that every nest of the engine keeps, and lists each rule that is broken with the place in the request: stock or pieces that "
        + "are unknown too. Cuts without positions are laid one behind the other. Pieces in no layout are listed and break no rule. Value and totals count the layouts "
        + "as they stand; the engine's own nest stands beside them.";

    public override string Example => NestEvaluationExample.Json;

    protected override IValidator<NestEvaluationRequest> Rules { get; } = new NestEvaluationRequestRules();

    protected override LengthUnit UnitOf(NestEvaluationRequest request) => request.LengthUnit;

    /// <summary>Positions left out are those that follow; with them the order of the cuts stands in the digest.</summary>
    protected override NestEvaluationRequest WithDefaults(NestEvaluationRequest request) => request with { Layouts = new EditedNest(request, new NestMaterials(request)).WithPositions() };

    protected override NestEvaluationResponse Execute(NestEvaluationRequest request, OperationContext context)
    {
        var materials = new NestMaterials(request);
        var nest = new EditedNest(request, materials);
        context.Warnings.AddRange(NestWarnings.Of(request, materials, [.. nest.Known]));
        var edited = new EditedMaterials(request, materials);
        var violations = new EditedNestCheck(nest, edited, new(request.LengthUnit), request.IsCosted).Run();
        var engine = request.Compare ? NestAnswer.Of(request, materials, nester, context.Cancellation).Write(context) : null;
        return new NestEvaluationAnswer(request, materials, nest, edited, violations, engine).Write(context);
    }

    protected override bool IsNothingPlanned(NestEvaluationResponse response) => response.Totals.BarsUsed == 0;
}
