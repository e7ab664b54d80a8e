using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a blade that bounds on its members cannot state.</summary>
public sealed class BladeRules : AbstractValidator<BladeJson>
{
    private const decimal CoarsestTeethPerInch = 0.1m;
    private const decimal FinestTeethPerInch = 50m;

    public BladeRules()
    {
        RuleFor(blade => blade.Kerf)
            .Must((blade, kerf) => kerf >= blade.Thickness)
            .WithFault(FaultCode.KerfBelowThickness, "A blade cuts a kerf at least as wide as it is thick.");
        RuleForEach(blade => blade.TeethPerInch)
            .Must(teeth => teeth >= CoarsestTeethPerInch)
            .WithFault(FaultCode.TooSmall, "Must be at least 0.1 teeth per inch.")
            .Must(teeth => teeth <= FinestTeethPerInch)
            .WithFault(FaultCode.TooLarge, "Must be at most 50 teeth per inch.");
        RuleFor(blade => blade.TeethPerInch)
            .Must(teeth => teeth.Count < 2 || teeth[0] <= teeth[1])
            .WithFault(FaultCode.TeethNotAscending, "Name the coarsest teeth first: [5, 8], not [8, 5].");
    }
}
