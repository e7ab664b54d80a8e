using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of a section of the request's own: each shape has its own dimensions, and they must make a section.</summary>
public sealed class SectionRules : AbstractValidator<SectionJson>
{
    public SectionRules()
    {
        RuleFor(section => section.Outline).Custom((outline, context) =>
        {
            for (var i = 0; i < (outline?.Count ?? 0); i++)
            {
                Check(outline![i].X, $"[{i}].X", context);
                Check(outline[i].Y, $"[{i}].Y", context);
            }
        });
        RuleFor(section => section).Custom((section, context) =>
        {
            if (section.ToDimensions(context.Materials().Scale) is not { } dimensions || OutlineSection.Create(dimensions, out var faults) is not null)
                return;
            foreach (var fault in faults)
                context.Fault(dimensions.Gives(fault.Member) ? fault.Member : "", fault.Code, fault.Detail);
        });
    }

    private static void Check(decimal coordinate, string path, ValidationContext<SectionJson> context)
    {
        var unit = context.Materials().Scale.Unit;
        if (!LengthScale.IsOnGrid(coordinate, unit))
            context.Fault(path, FaultCode.TooFine, $"Must be a multiple of {LengthScale.Grid(unit)}.");
    }
}
