using SawEngine.Core.Grades;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.CuttingData;

/// <summary>Area that a new blade cuts in a grade.</summary>
internal static class BladeLife
{
    /// <summary>Life against bimetal by tooth material: carbide 2 to 6 times on hard alloys; carbon steel without any number. Both from memory.</summary>
    public const decimal CarbideFactor = 2m;
    public const decimal CarbonSteelFactor = 0.5m;

    public static Sourced<decimal> Of(Grade grade, Blade blade)
    {
        if (blade.LifeAreaSquareMeters is { } stated)
            return new(stated, "request", Confidence.Caller);
        var life = grade.BladeLifeSquareMeters;
        return blade.ToothMaterial switch
        {
            ToothMaterial.Carbide => new(life.Value * CarbideFactor, life.Source + "; twice with carbide", Confidence.FromMemory),
            ToothMaterial.CarbonSteel => new(life.Value * CarbonSteelFactor, life.Source + "; half with carbon steel", Confidence.FromMemory),
            _ => life,
        };
    }

    /// <summary>A new blade does not last for one cut.</summary>
    public static CutObstacle TooShort(Blade blade) => new(UnscheduledReason.CutExceedsBladeLife, $"One cut wears out more than a new blade {blade.BladeId}.");
}
