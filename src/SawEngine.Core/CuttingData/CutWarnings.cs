using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>What should be known about a cut that can be done.</summary>
internal static class CutWarnings
{
    public static IEnumerable<CutWarning> Of(
        CutProfile profile, TeethCount teeth, BladeSpeed speed, BladeFeed feed, Saw saw, Blade blade, CuttingParameters parameters, bool isSquare)
    {
        if (!profile.IsSolid && teeth.Min < (double)parameters.FewestFullyLoadedTeeth)
            yield return new("few_teeth_in_shortest_run", Text.Of($"In the shortest run ({profile.ShortestRun:0.0} mm) {teeth.Min:0.0} teeth of blade {blade.BladeId} are in the work; the blade feed is reduced there."));
        if (teeth.Mean < (double)parameters.FewestMeanTeeth || teeth.Mean > (double)parameters.MostMeanTeeth)
            yield return new("teeth_outside_range", Text.Of($"{teeth.Mean:0.0} mean teeth of blade {blade.BladeId} are in the work; {parameters.FewestMeanTeeth:0} to {parameters.MostMeanTeeth:0} are usual."));
        if (speed.IsClippedUp)
            yield return new("blade_speed_above_grade", Text.Of($"The saw's slowest blade speed of {speed.Reached:0.0} m/min is above the {speed.Wanted:0.0} m/min of the grade; the blade wears faster."));
        if (!feed.KeepsLeast(profile))
            yield return new("tooth_load_below_minimum", Text.Of($"In runs up to {profile.LongestRun:0} mm blade {blade.BladeId} cannot load each tooth with {feed.Load.Smallest * 1000:0} µm; the grade may harden under the teeth."));
        if (!isSquare)
            yield return new("squareness_not_held", "The lightest load per tooth of the grade does not leave the blade feed that the ordered squareness needs; another saw, a better blade or machining the face would hold it.");
        if (saw.WheelDiameter is { } diameter && BladeStress.IsThickForWheel(blade.Thickness, diameter))
            yield return new("blade_thick_for_wheel", Text.Of($"Blade {blade.BladeId} is bent at {BladeStress.BendingMegapascals(blade.Thickness, diameter):0} MPa over a wheel of {diameter.Millimeters:0.#} mm; it may fail early."));
    }
}
