using System.Collections.Frozen;
using SawEngine.Core.Grades;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>Blade speed of a cut in m/min: the grade's, corrected and clipped to the saw's range.</summary>
/// <param name="Wanted">By grade, width of cut, teeth and coolant.</param>
/// <param name="Reached">Within the saw's range.</param>
/// <param name="Factors">Factors from the grade's reference to the speed that is reached.</param>
internal sealed record BladeSpeed(double Wanted, double Reached, IReadOnlyList<AppliedFactor> Factors)
{
    private const string Handbook = "Machinery's Handbook, 31st ed., p. 1245";

    private static readonly FrozenSet<string> CarbideGroups =
        FrozenSet.ToFrozenSet(["iron-base superalloy", "nickel alloy", "titanium", "tool steel", "zirconium"], StringComparer.Ordinal);

    public bool IsClippedDown => Wanted > Reached;

    public bool IsClippedUp => Wanted < Reached;

    /// <summary>The speed that counts for the cutting rate: a saw that is too fast for the grade does not cut it faster.</summary>
    public double ForRate => Math.Min(Wanted, Reached);

    public static BladeSpeed Of(CutProfile profile, Grade grade, Saw saw, Blade blade, CuttingParameters parameters)
    {
        List<AppliedFactor> factors = [.. SpeedFactors(profile, grade, saw, blade, parameters)];
        var wanted = (double)grade.ReferenceBladeSpeed.Value.MetersPerMinute;
        foreach (var factor in factors)
            wanted *= (double)factor.Value;
        var reached = Math.Max((double)saw.SlowestBladeSpeed.MetersPerMinute, Math.Min(wanted, (double)saw.FastestBladeSpeed.MetersPerMinute));
        if (wanted > reached)
            factors.Add(new("saw_speed_range", Rounded.To(reached / wanted, 4), "the saw's fastest blade speed", Confidence.Computed));
        return new(wanted, reached, factors);
    }

    private static IEnumerable<AppliedFactor> SpeedFactors(CutProfile profile, Grade grade, Saw saw, Blade blade, CuttingParameters parameters)
    {
        // Rounded before use, so that the listed factors multiply to the speed.
        yield return new("width_of_cut", Rounded.To(WidthCorrection.At(profile.WidthOfCut), 4), WidthCorrection.Source, Confidence.Secondary);
        if (blade.ToothMaterial == ToothMaterial.CarbonSteel)
            yield return new("carbon_steel_teeth", parameters.CarbonSteelFactor, Handbook + ", reduce 50 %", Confidence.Secondary);
        if (blade.ToothMaterial == ToothMaterial.Carbide && CarbideGroups.Contains(grade.Group))
            yield return new("carbide_teeth", parameters.CarbideFactor, "1.3 to 2 in hard alloys on a rigid saw; from memory", Confidence.FromMemory);
        if (!saw.Coolant && grade.Coolant != CoolantUse.NotAllowed)
            yield return new("dry", parameters.DryFactor, Handbook + ", reduce 30 to 50 %", Confidence.Secondary);
    }
}
