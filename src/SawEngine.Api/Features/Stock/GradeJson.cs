using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.Stock;

/// <summary>A grade of the caller's own, by the catalog's grade that it is like, or by its group: what is not stated, cautions included, is taken over from there. Or by
/// itself, as plastics, graphite, ceramics, wood and unknown alloys are: then it states hardnessHb, bladeSpeedMPerMin, cuttingRateCm2PerMin, unitPowerKwPerCm3PerMin and bladeLifeM2.</summary>
public sealed record GradeJson
{
    /// <summary>Id of the grade, unique. It comes before a catalog designation of the same name.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string GradeId { get; init; }

    /// <summary>Density in kg/m3. It has no default, since it decides masses and lifting.</summary>
    [Range(100, 30000)]
    public required decimal DensityKgPerM3 { get; init; }

    /// <summary>Designation of the catalog's grade that it is like; not beside group.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? LikeGrade { get; init; }

    /// <summary>Group of materials, one of the catalog's, whose slowest grade then counts; or ceramic, composite, graphite, plastic or wood, of which the catalog has none.
    /// Chips of different groups are kept apart; those of a grade that states everything and no group, from all others.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Group { get; init; }

    /// <summary>Condition of supply.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Condition { get; init; }

    /// <summary>Brinell hardness; of what is not tested so, what comes nearest.</summary>
    [Range(1, 1000)]
    public decimal? HardnessHb { get; init; }

    /// <summary>Blade speed at 102 mm (4 in) width of cut, bimetal, with coolant, in m/min; dry where `coolant` is notAllowed.</summary>
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

    /// <summary>Whether it hardens under a rubbing tooth, so that the load per tooth has a lower limit; as the grade that it is like where absent, else not.</summary>
    public bool? WorkHardening { get; init; }

    /// <summary>Whether it may be cut with coolant; where it may not, its cuts on a saw with coolant carry a caution.</summary>
    public CoolantUse Coolant { get; init; } = CoolantUse.Allowed;
}
