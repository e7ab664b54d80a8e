using FluentValidation;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>Rules of a request to evaluate a nest: those of the nest, and a bound on the work. What an edit may get wrong is no fault but part of the answer.</summary>
public sealed class NestEvaluationRequestRules : AbstractValidator<NestEvaluationRequest>
{
    public NestEvaluationRequestRules()
    {
        Include(new NestProblemRequestRules());
        this.Unique(r => r.Layouts, layout => layout.LayoutId, nameof(EditedLayoutJson.LayoutId));
        RuleFor(r => r.Layouts).Custom(TotalQuantity);
    }

    private static void TotalQuantity(IReadOnlyList<EditedLayoutJson> layouts, ValidationContext<NestEvaluationRequest> context)
    {
        var bars = layouts.Sum(layout => (long)layout.Repeat);
        if (bars > Limits.TotalQuantity)
            context.Fault("", FaultCode.TooMuchWork, $"The layouts take {bars} bars; at most {Limits.TotalQuantity} can be evaluated in one request.");
        var pieces = layouts.Sum(layout => (long)layout.Repeat * layout.Cuts.Count);
        if (pieces > Limits.TotalQuantity)
            context.Fault("", FaultCode.TooMuchWork, $"The layouts hold {pieces} pieces; at most {Limits.TotalQuantity} can be evaluated in one request.");
    }
}
