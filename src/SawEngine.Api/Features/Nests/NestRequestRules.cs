using FluentValidation;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Features.Nests;

/// <summary>Rules of a request for a nest: those of its pieces and stock.</summary>
public sealed class NestRequestRules : AbstractValidator<NestRequest>
{
    public NestRequestRules(Catalogs catalogs) => Include(new NestProblemRequestRules(catalogs));
}
