using FluentValidation;

namespace SawEngine.Api.Features.Nests;

/// <summary>Rules of a request for a nest: those of its pieces and stock.</summary>
public sealed class NestRequestRules : AbstractValidator<NestRequest>
{
    public NestRequestRules() => Include(new NestProblemRequestRules());
}
