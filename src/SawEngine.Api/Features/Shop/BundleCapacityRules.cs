using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a bundle capacity that bounds on its members cannot state.</summary>
public sealed class BundleCapacityRules : AbstractValidator<BundleCapacityJson>
{
    public BundleCapacityRules()
    {
        RuleFor(bundle => bundle.HoldDown)
            .Must((bundle, holdDown) => holdDown != false || bundle.MostHigh == 1)
            .WithFault(FaultCode.HoldDownRequired, "Bars on top of one another need a hold-down: state `mostHigh` 1 where there is none.");
    }
}
