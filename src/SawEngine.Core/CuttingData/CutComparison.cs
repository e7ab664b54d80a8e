using SawEngine.Core.Cautions;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.CuttingData;

/// <summary>One cut on several saws: how each of them makes it, and why the others do not.</summary>
/// <param name="Possible">The saws, or saws and blades, that can make the cut, the fastest first; equally fast ones by saw and blade.</param>
/// <param name="Refused">Why the others cannot, in the order of the saws and their blades.</param>
public sealed record CutComparison(IReadOnlyList<CutOnSaw> Possible, IReadOnlyList<CutRefusal> Refused)
{
    /// <summary>
    /// The cut on each of the saws, on each with its best blade, or with the one that is named. Codes of refusals are those of <see cref="SawFit"/>,
    /// of <see cref="BundleFit"/>, of <see cref="ObstacleCodes"/>, and <see cref="UnscheduledReason.CutExceedsBladeLife"/>, since no cut is begun that its blade cannot finish.
    /// </summary>
    public static CutComparison Of(WantedCut wanted, IEnumerable<Saw> saws) =>
        Of(wanted, saws.Select(saw => (saw, wanted.BladeId)));

    /// <summary>The cut on each of the saws with each of its blades.</summary>
    public static CutComparison OverBlades(WantedCut wanted, IEnumerable<Saw> saws) =>
        Of(wanted, saws.SelectMany(saw => saw.Blades, (saw, blade) => (saw, (string?)blade.BladeId)));

    private static CutComparison Of(WantedCut wanted, IEnumerable<(Saw Saw, string? BladeId)> candidates)
    {
        var possible = new List<CutOnSaw>();
        var refused = new List<CutRefusal>();
        foreach (var (saw, bladeId) in candidates)
        {
            var result = ResultOf(wanted, saw, bladeId);
            if (result.Obstacle is { } obstacle)
                refused.Add(new(saw.SawId, obstacle, bladeId));
            else if (result.Choice!.Cuts[0].CutsPerBlade == 0)
                refused.Add(new(saw.SawId, new(UnscheduledReason.CutExceedsBladeLife, $"One cut wears out more than a new blade {result.Choice.Blade.BladeId}."), bladeId));
            else
                possible.Add(new(wanted, saw, result.Choice, [.. CautionRules.ForSaw(saw), .. CautionRules.ForGrade(wanted.Grade, saw), .. CautionRules.ForBundle(wanted.Bundle)]));
        }
        return new([.. possible.OrderBy(cut => cut.Data.CutSeconds).ThenBy(cut => cut.Saw.SawId, StringComparer.Ordinal).ThenBy(cut => cut.Choice.Blade.BladeId, StringComparer.Ordinal)], refused);
    }

    private static BladeChoiceResult ResultOf(WantedCut wanted, Saw saw, string? bladeId)
    {
        if (bladeId is null)
            return Choose(saw);
        var blade = saw.Blades.FirstOrDefault(candidate => string.Equals(candidate.BladeId, bladeId, StringComparison.Ordinal));
        return blade is null
            ? BladeChoiceResult.None(ObstacleCodes.BladeNotOnSaw, $"Blade {bladeId} is none of saw {saw.SawId}'s.")
            : Choose(saw with { Blades = [blade] });

        BladeChoiceResult Choose(Saw with) =>
            BladeChoice.Choose(wanted.Section, wanted.Grade, with, [wanted.Face], wanted.Bundle, squareness: wanted.Squareness);
    }
}
