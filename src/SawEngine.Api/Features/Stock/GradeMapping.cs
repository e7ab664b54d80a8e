using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.Stock;

/// <summary>Grades of the request's own from wire to trade.</summary>
public static class GradeMapping
{
    /// <summary>The grade; null where the catalog knows neither the grade that it is like nor its group, and it does not state everything itself.</summary>
    public static Grade? ToGrade(this GradeJson grade) => GradeCatalog.Standard.FromCaller(new()
    {
        Designation = grade.GradeId,
        Density = new(grade.DensityKgPerM3),
        LikeGrade = grade.LikeGrade,
        Group = grade.Group,
        Condition = grade.Condition,
        HardnessHb = grade.HardnessHb,
        ReferenceBladeSpeed = grade.BladeSpeedMPerMin is { } speed ? new(speed) : null,
        ReferenceCuttingRate = grade.CuttingRateCm2PerMin is { } rate ? new(rate) : null,
        UnitPowerKilowattsPerCm3PerMinute = grade.UnitPowerKwPerCm3PerMin,
        BladeLifeSquareMeters = grade.BladeLifeM2,
        WorkHardening = grade.WorkHardening,
        Coolant = grade.Coolant,
    });
}
