using FluentValidation;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary><c>POST /v1/nests</c> and <c>nest FILE</c>.</summary>
public sealed class NestOperation(INester nester) : Operation<NestRequest, NestResponse>
{
    public override string Verb => "nest";

    public override string OperationId => "calculateNest";

    public override string Path => "/v1/nests";

    public override string Tag => "Nests";

    public override string Summary => "Lays pieces out on bars and remnants.";

    public override string Description =>
        "Finds which bar gives which piece at the least cost of stock, less the value of the remnants kept. Each section and grade is nested for itself, or together with those that substitutes join. "
        + "Pieces that cannot be placed are listed with the reason. The bound states what no layout can undercut.";

    public override string Example => NestExample.Json;

    public override IReadOnlyList<(string Name, string Summary, string Json)> MoreExamples => NestExample.More;

    protected override IValidator<NestRequest> Rules { get; } = new NestRequestRules();

    protected override LengthUnit UnitOf(NestRequest request) => request.LengthUnit;

    protected override NestResponse Execute(NestRequest request, OperationContext context)
    {
        var materials = new NestMaterials(request);
        var answer = NestAnswer.Of(request, materials, nester, context.Cancellation);
        context.Warnings.AddRange(NestWarnings.Of(request, materials, [.. answer.Layouts]));
        var choices = new NestChoices(request, materials, nester, context.Cancellation);
        var response = answer.Write(context) with { Alternatives = choices.Alternatives(answer.Nests), NearMisses = choices.NearMisses(answer.Nests) };
        return request.HasChoices && context.Cancellation.IsCancellationRequested ? response with { StoppedBy = WireEnum.Text(StoppedBy.TimeLimit) } : response;
    }

    protected override bool IsNothingPlanned(NestResponse response) => response.Status == NestAnswer.Infeasible;
}
