using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a remnant rule that bounds on its members cannot state.</summary>
public sealed class RemnantRulesRules : AbstractValidator<RemnantRulesJson>
{
    public RemnantRulesRules()
    {
        RuleFor(remnants => remnants.Classes).Custom((classes, context) =>
        {
            var before = context.InstanceToValidate.KeepFrom;
            for (var i = 0; i < classes.Count; i++)
            {
                if (classes[i].From <= before)
                    context.Fault($"[{i}].{nameof(RemnantClassJson.From)}", FaultCode.ClassesNotAscending, "A class begins at a greater length than the one before it, the first above `keepFrom`.");
                before = classes[i].From;
            }
        });
    }
}
