using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of a grade of the request's own: the catalog must know what it is like.</summary>
public sealed class GradeRules : AbstractValidator<GradeJson>
{
    public GradeRules()
    {
        RuleFor(grade => grade)
            .Must(grade => grade.LikeGrade is null != grade.Group is null)
            .WithFault(FaultCode.LikeGradeOrGroup, "State either `likeGrade` or `group`: what the grade leaves open is taken from there.");
        RuleFor(grade => grade.LikeGrade).Custom((name, context) =>
        {
            if (name is not null && GradeCatalog.Standard.Find(name) is null)
                context.Fault("", FaultCode.UnknownGrade, $"{Quoted.Text(name)} is not a designation of the catalog.{context.Materials().NearestGrades(name)}");
        });
        RuleFor(grade => grade.Group).Custom((name, context) =>
        {
            if (name is not null && !GradeCatalog.Standard.Groups.Contains(name, StringComparer.OrdinalIgnoreCase))
                context.Fault("", FaultCode.UnknownGroup, $"{Quoted.Text(name)} is not a group of the catalog.{NearestName.Question(name, GradeCatalog.Standard.Groups)}");
        });
    }
}
