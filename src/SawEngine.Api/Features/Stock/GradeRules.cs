using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of a grade of the request's own: the catalog must know what it is like, or it states everything itself.</summary>
public sealed class GradeRules : AbstractValidator<GradeJson>
{
    public GradeRules()
    {
        RuleFor(grade => grade)
            .Must(grade => grade.LikeGrade is null || grade.Group is null)
            .WithFault(FaultCode.LikeGradeOrGroup, "State either `likeGrade` or `group`: what the grade leaves open is taken from there.");
        RuleFor(grade => grade).Custom((grade, context) =>
        {
            if (grade.LikeGrade is not null || (grade.Group is not null && !IsChipGroup(grade.Group)))
                return;
            foreach (var (member, value) in Needed(grade))
            {
                if (value is null)
                    context.Fault("", FaultCode.ValueRequired, $"State `{member}`: a grade that is like none of the catalog's (`likeGrade`), nor of a group of its grades, states all values itself.");
            }
        });
        RuleFor(grade => grade.LikeGrade).Custom((name, context) =>
        {
            if (name is not null && GradeCatalog.Standard.Find(name) is null)
                context.Fault("", FaultCode.UnknownGrade, $"{Quoted.Text(name)} is not a designation of the catalog.{context.Materials().NearestGrades(name)}");
        });
        RuleFor(grade => grade.Group).Custom((name, context) =>
        {
            if (name is not null && !AllGroups.Contains(name, StringComparer.OrdinalIgnoreCase))
                context.Fault("", FaultCode.UnknownGroup, $"{Quoted.Text(name)} is not a group of the catalog.{NearestName.Question(name, AllGroups)}");
        });
    }

    private static IReadOnlyList<string> AllGroups { get; } = [.. GradeCatalog.Standard.Groups, .. GradeCatalog.Standard.ChipGroups.Select(group => group.Group)];

    private static bool IsChipGroup(string name) => GradeCatalog.Standard.ChipGroups.Any(group => string.Equals(group.Group, name, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<(string Member, decimal? Value)> Needed(GradeJson grade) =>
    [
        ("hardnessHb", grade.HardnessHb), ("bladeSpeedMPerMin", grade.BladeSpeedMPerMin), ("cuttingRateCm2PerMin", grade.CuttingRateCm2PerMin),
        ("unitPowerKwPerCm3PerMin", grade.UnitPowerKwPerCm3PerMin), ("bladeLifeM2", grade.BladeLifeM2),
    ];
}
