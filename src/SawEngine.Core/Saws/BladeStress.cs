using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>Stress of a band bent over a wheel: E t/D, as for a flat metal belt (Shigley, quoted by a secondary source).</summary>
public static class BladeStress
{
    /// <summary>Modulus of elasticity of blade steel in megapascals (205 to 210 GPa in handbooks, from memory).</summary>
    public const decimal ModulusMegapascals = 207_000m;

    /// <summary>Wheel diameter over thickness below which a band fails early (rule of thumb, from memory).</summary>
    public const decimal SmallestDiameterRatio = 300m;

    /// <summary>Bending stress in megapascals of a narrow strip, E t/D. The diameter must be positive.</summary>
    public static decimal BendingMegapascals(Length thickness, Length wheelDiameter) =>
        ModulusMegapascals * thickness.Nanometers / wheelDiameter.Nanometers;

    /// <summary>Bending stress in megapascals of a strip so wide that it cannot narrow, E t/((1 - nu²) D). The diameter must be positive.</summary>
    public static decimal WideBendingMegapascals(Length thickness, Length wheelDiameter, decimal poissonRatio) =>
        BendingMegapascals(thickness, wheelDiameter) / (1m - poissonRatio * poissonRatio);

    /// <summary>Whether the band is too thick for the wheel.</summary>
    public static bool IsThickForWheel(Length thickness, Length wheelDiameter) =>
        thickness.Nanometers * SmallestDiameterRatio > wheelDiameter.Nanometers;
}
