using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules for the names of sections and grades. They need the materials of the request, which its own rules put beside them.</summary>
public static class MaterialRules
{
    private const string Key = "materials";

    /// <summary>Puts the materials of the request beside its rules.</summary>
    public static void SetMaterials(this IValidationContext context, Materials materials) => context.RootContextData[Key] = materials;

    /// <summary>The materials of the request.</summary>
    public static Materials Materials(this IValidationContext context) => (Materials)context.RootContextData[Key];

    /// <summary>The name stands for a section of the request's own or of the catalog.</summary>
    public static void IsKnownSection<T>(this IRuleBuilderInitial<T, string> rule) => rule.Custom((name, context) =>
    {
        if (!context.Materials().KnowsSection(name))
            context.Fault("", FaultCode.UnknownSection, $"{Quoted.Text(name)} is neither a section of this request nor of the catalog.{context.Materials().NearestSections(name)}");
    });

    /// <summary>The name stands for a grade of the request's own or of the catalog.</summary>
    public static void IsKnownGrade<T>(this IRuleBuilder<T, string> rule) => rule.Custom((name, context) =>
    {
        if (!context.Materials().KnowsGrade(name))
            context.Fault("", FaultCode.UnknownGrade, $"{Quoted.Text(name)} is neither a grade of this request nor of the catalog.{context.Materials().NearestGrades(name)}");
    });
}
