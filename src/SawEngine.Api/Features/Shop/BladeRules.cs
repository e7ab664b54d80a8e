using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a blade that bounds on its members cannot state.</summary>
public sealed class BladeRules : AbstractValidator<BladeJson>
{
    public BladeRules()
    {
        RuleFor(blade => blade.Kerf)
            .Must((blade, kerf) => kerf >= blade.Thickness)
            .WithFault(FaultCode.KerfBelowThickness, "A blade cuts a kerf at least as wide as it is thick.");
        RuleFor(blade => blade.TeethPerInch)
            .Must(teeth => teeth.Count < 2 || teeth[0] <= teeth[1])
            .WithFault(FaultCode.TeethNotAscending, "Name the coarsest teeth first: [5, 8], not [8, 5].");
    }
}
