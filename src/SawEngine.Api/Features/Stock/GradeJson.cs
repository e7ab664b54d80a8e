using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Stock;

/// <summary>A grade of the caller's own, by the catalog's grade that it is like, or by its group. What is not stated, cautions included, is taken over from there.</summary>
public sealed record GradeJson
{
    /// <summary>Id of the grade, unique. It comes before a catalog designation of the same name.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string GradeId { get; init; }

    /// <summary>Density in kg/m3. It has no default, since it decides masses and lifting.</summary>
    [Range(100, 30000)]
    public required decimal DensityKgPerM3 { get; init; }

    /// <summary>Designation of the catalog's grade that it is like; given where group is not.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? LikeGrade { get; init; }

    /// <summary>Group of materials, one of the catalog's; given where likeGrade is not. The group's slowest grade then counts.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Group { get; init; }

    /// <summary>Condition of supply.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Condition { get; init; }

    /// <summary>Brinell hardness.</summary>
    [Range(1, 1000)]
    public decimal? HardnessHb { get; init; }

    /// <summary>Blade speed at 102 mm (4 in) width of cut, bimetal, with coolant, in m/min.</summary>
    [Range(1, 10000)]
    public decimal? BladeSpeedMPerMin { get; init; }

    /// <summary>Cutting rate at that speed in a solid 50 to 150 mm across, in cm2/min.</summary>
    [Range(0.01, 10000)]
    public decimal? CuttingRateCm2PerMin { get; init; }

    /// <summary>Power per material removed, sharp tool, thick chip, in kW per cm3/min.</summary>
    [Range(0.0001, 1)]
    public decimal? UnitPowerKwPerCm3PerMin { get; init; }

    /// <summary>Area that a bimetal blade cuts in its life in m2.</summary>
    [Range(0.001, 100000)]
    public decimal? BladeLifeM2 { get; init; }
}
