using System.Globalization;
using SawEngine.Core.Cautions;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core;

/// <summary>Numbers behind answers that no request states: they belong neither to a grade or saw nor to the parameters of cutting.</summary>
public static class FixedValues
{
    private const string Memory = "from memory";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DefaultValue> Items { get; } =
    [
        .. WidthCorrection.Points.Select(point => new DefaultValue(
            string.Create(CultureInfo.InvariantCulture, $"blade speed at {point.Inches} in width of cut, of that at 4 in"), (decimal)point.Factor, "", WidthCorrection.Source, Confidence.Secondary)),
        new("blade life with carbide teeth, of that of bimetal", BladeLife.CarbideFactor, "", "2 to 6 times on hard alloys; " + Memory, Confidence.FromMemory),
        new("blade life with carbon steel teeth, of that of bimetal", BladeLife.CarbonSteelFactor, "", Memory, Confidence.FromMemory),
        new("modulus of elasticity of blade steel", BladeStress.ModulusMegapascals, "MPa", "205 to 210 GPa in handbooks; " + Memory, Confidence.FromMemory),
        new("wheel diameter over thickness of the blade below which it is cautioned", BladeStress.SmallestDiameterRatio, "", "rule of thumb; " + Memory, Confidence.FromMemory),
        new("hardness from which a caller's harder grade is slowed", GradeFromCaller.SoftBrinell, "HB", Memory, Confidence.FromMemory),
        new("loss of speed and rate for each HB above it", GradeFromCaller.LossPerBrinell, "", "about 4 % for 10 HB; " + Memory, Confidence.FromMemory),
        new("least that is left of speed and rate", GradeFromCaller.LeastHardnessFactor, "", Memory, Confidence.FromMemory),
        new("area that contact widths may add up to beside the stated one, as a share of it", ProfileSection.AreaTolerance, "", "own choice", Confidence.FromMemory),
        new("mass from which two persons lift", LiftLimits.Default.TwoPersons.Kilograms, "kg", "load constant of the NIOSH lifting equation", Confidence.Published),
        new("mass from which a crane lifts", LiftLimits.Default.Crane.Kilograms, "kg", "common practice, no source", Confidence.CommonPractice),
    ];
}
