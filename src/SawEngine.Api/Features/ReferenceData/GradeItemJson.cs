using System.ComponentModel.DataAnnotations;
using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>A material in a condition, with what cutting it needs to know.</summary>
public sealed record GradeItemJson
{
    /// <summary>Designation, unique.</summary>
    public required string Designation { get; init; }

    /// <summary>Other designations by which it is found.</summary>
    public required IReadOnlyList<string> OtherDesignations { get; init; }

    /// <summary>Group of materials; chips of different groups are kept apart.</summary>
    public required string Group { get; init; }

    /// <summary>Condition of supply.</summary>
    public required string Condition { get; init; }

    /// <summary>Lowest Brinell hardness of the condition.</summary>
    [Range(0, 1000)]
    public required decimal LowestHardnessHb { get; init; }

    /// <summary>Highest Brinell hardness of the condition.</summary>
    [Range(0, 1000)]
    public required decimal HighestHardnessHb { get; init; }

    /// <summary>Density in kg/m3.</summary>
    public required SourcedValueJson DensityKgPerM3 { get; init; }

    /// <summary>Blade speed at 102 mm (4 in) width of cut, bimetal, with coolant, in m/min.</summary>
    public required SourcedValueJson BladeSpeedMPerMin { get; init; }

    /// <summary>Cutting rate at that speed in a solid 50 to 150 mm across, in cm2/min.</summary>
    public required SourcedValueJson CuttingRateCm2PerMin { get; init; }

    /// <summary>Power per material removed, sharp tool, thick chip, in kW per cm3/min.</summary>
    public required SourcedValueJson UnitPowerKwPerCm3PerMin { get; init; }

    /// <summary>Area that a bimetal blade cuts in its life in m2.</summary>
    public required SourcedValueJson BladeLifeM2 { get; init; }

    /// <summary>Whether it hardens under a rubbing tooth, so that the load per tooth has a lower limit.</summary>
    public required bool WorkHardening { get; init; }

    /// <summary>Codes of the cautions that come with it.</summary>
    public required IReadOnlyList<string> CautionCodes { get; init; }

    /// <summary>Grades that the designation asked for could mean too; absent where it names this one alone.</summary>
    public IReadOnlyList<string>? Alternatives { get; init; }

    /// <summary>A grade of the catalog or of the caller.</summary>
    public static GradeItemJson Of(Grade grade) => new()
    {
        Designation = grade.Designation,
        OtherDesignations = [.. grade.Designations.Where(designation => designation != grade.Designation)],
        Group = grade.Group,
        Condition = grade.Condition,
        LowestHardnessHb = grade.LowestHardnessHb,
        HighestHardnessHb = grade.HighestHardnessHb,
        DensityKgPerM3 = SourcedValueJson.Of(grade.Density, density => density.KilogramsPerCubicMeter),
        BladeSpeedMPerMin = SourcedValueJson.Of(grade.ReferenceBladeSpeed, speed => speed.MetersPerMinute),
        CuttingRateCm2PerMin = SourcedValueJson.Of(grade.ReferenceCuttingRate, rate => rate.SquareCentimetersPerMinute),
        UnitPowerKwPerCm3PerMin = SourcedValueJson.Of(grade.UnitPowerKilowattsPerCm3PerMinute, power => power),
        BladeLifeM2 = SourcedValueJson.Of(grade.BladeLifeSquareMeters, life => life),
        WorkHardening = grade.WorkHardening,
        CautionCodes = grade.CautionCodes,
    };
}
