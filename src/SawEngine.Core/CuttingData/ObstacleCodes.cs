namespace SawEngine.Core.CuttingData;

/// <summary>Codes of what stands in the way of a cut, apart from those of <see cref="Saws.SawFit"/>.</summary>
public static class ObstacleCodes
{
    /// <summary>The section has no area.</summary>
    public const string NoMaterial = "section_without_area";

    /// <summary>The blade is too coarse: not even the hard floor of teeth is in the work.</summary>
    public const string TooFewTeeth = "too_few_teeth";

    /// <summary>The motor cannot give the lightest load per tooth of a work-hardening grade.</summary>
    public const string NotEnoughPower = "not_enough_power";

    /// <summary>The cut would run for weeks.</summary>
    public const string TakesTooLong = "cut_takes_too_long";

    /// <summary>No blade of the saw has enough teeth in the work and all else it needs.</summary>
    public const string NoBlade = "no_blade_fits";

    /// <summary>The blade that is asked for is none of the saw's.</summary>
    public const string BladeNotOnSaw = "blade_not_on_saw";
}
