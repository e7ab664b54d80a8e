using FluentValidation;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of a section of the request's own: each shape has its own dimensions, and they must make a section.</summary>
public sealed class SectionRules : AbstractValidator<SectionJson>
{
    public SectionRules()
    {
        RuleFor(section => section).Custom((section, context) =>
        {
            if (section.ToDimensions(context.Materials().Scale) is not { } dimensions || Section.Create(dimensions, out var faults) is not null)
                return;
            foreach (var fault in faults)
                context.Fault(dimensions.Gives(fault.Member) ? fault.Member : "", fault.Code, fault.Detail);
        });
    }
}
