using SawEngine.Core.Quantities;

namespace SawEngine.Core.Grades;

/// <summary>A grade that the request states itself. What it leaves out is taken over from a catalog grade or from its group; one that states all values needs neither.</summary>
public sealed record CallerGrade
{
    /// <summary>The caller's designation.</summary>
    public required string Designation { get; init; }

    /// <summary>Density; it has no default, since it decides masses and lifting.</summary>
    public required Density Density { get; init; }

    /// <summary>Catalog designation of the grade that it is like; null where only the group is known, or all values are stated.</summary>
    public string? LikeGrade { get; init; }

    /// <summary>Group of materials, of the catalog or one of its chip groups; null where <see cref="LikeGrade"/> says it, or its chips are kept apart from all others.</summary>
    public string? Group { get; init; }

    /// <summary>Condition of supply; null for that of the like grade.</summary>
    public string? Condition { get; init; }

    /// <summary>Brinell hardness; null for that of the like grade.</summary>
    public decimal? HardnessHb { get; init; }

    /// <summary>Blade speed at 102 mm width of cut, bimetal, with coolant; null for that of the like grade.</summary>
    public Speed? ReferenceBladeSpeed { get; init; }

    /// <summary>Cutting rate at the reference blade speed; null for that of the like grade, in proportion to the speed.</summary>
    public CuttingRate? ReferenceCuttingRate { get; init; }

    /// <summary>Power per material removed in kilowatts per cubic centimeter per minute; null for that of the like grade.</summary>
    public decimal? UnitPowerKilowattsPerCm3PerMinute { get; init; }

    /// <summary>Area that a bimetal blade cuts in its life, in square meters; null for that of the like grade.</summary>
    public decimal? BladeLifeSquareMeters { get; init; }

    /// <summary>Whether it hardens under a rubbing tooth; null for as the like grade does, or not.</summary>
    public bool? WorkHardening { get; init; }

    /// <summary>Whether it may be cut with coolant.</summary>
    public CoolantUse Coolant { get; init; }

    /// <summary>Whether it states every value that cutting it needs.</summary>
    public bool IsComplete =>
        (HardnessHb, ReferenceBladeSpeed, ReferenceCuttingRate, UnitPowerKilowattsPerCm3PerMinute, BladeLifeSquareMeters) is ({ }, { }, { }, { }, { });
}
