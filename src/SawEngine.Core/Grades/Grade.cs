using SawEngine.Core.Quantities;

namespace SawEngine.Core.Grades;

/// <summary>A material in a condition, with what cutting it needs to know. Two grades are the same where their designations are.</summary>
public sealed record Grade
{
    /// <summary>The designation by which the catalog lists it, unique.</summary>
    public required string Designation { get; init; }

    /// <summary>All designations by which it is found: EN number and name, AISI, ASTM, UNS.</summary>
    public required IReadOnlyList<string> Designations { get; init; }

    /// <summary>Group of materials; chips of different groups are kept apart.</summary>
    public required string Group { get; init; }

    /// <summary>Condition of supply.</summary>
    public required string Condition { get; init; }

    /// <summary>Lowest Brinell hardness of the condition.</summary>
    public required decimal LowestHardnessHb { get; init; }

    /// <summary>Highest Brinell hardness of the condition.</summary>
    public required decimal HighestHardnessHb { get; init; }

    /// <summary>Density.</summary>
    public required Sourced<Density> Density { get; init; }

    /// <summary>Blade speed at 102 mm (4 in) width of cut, bimetal, with coolant; dry of a grade that may not be cut with it.</summary>
    public required Sourced<Speed> ReferenceBladeSpeed { get; init; }

    /// <summary>Cutting rate at the reference blade speed, in a solid 50 to 150 mm across.</summary>
    public required Sourced<CuttingRate> ReferenceCuttingRate { get; init; }

    /// <summary>Power per material removed, sharp tool, thick chip, in kilowatts per cubic centimeter per minute.</summary>
    public required Sourced<decimal> UnitPowerKilowattsPerCm3PerMinute { get; init; }

    /// <summary>The same by hardness, for steels of a published table; null for others.</summary>
    public UnitPowerByHardness? UnitPowerByHardness { get; init; }

    /// <summary>Area that a bimetal blade cuts in its life, in square meters.</summary>
    public required Sourced<decimal> BladeLifeSquareMeters { get; init; }

    /// <summary>Whether it hardens under a rubbing tooth, so that the load per tooth has a lower limit.</summary>
    public bool WorkHardening { get; init; }

    /// <summary>Whether it may be cut with coolant.</summary>
    public CoolantUse Coolant { get; init; }

    /// <summary>Codes of the cautions that come with the grade, in order.</summary>
    public IReadOnlyList<string> CautionCodes { get; init; } = [];

    /// <inheritdoc/>
    public bool Equals(Grade? other) => other is not null && string.Equals(Designation, other.Designation, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);
}
