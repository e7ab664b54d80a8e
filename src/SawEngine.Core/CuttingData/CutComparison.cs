using SawEngine.Core.Cautions;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>One cut on several saws: how each of them makes it, and why the others do not.</summary>
/// <param name="Possible">The saws that can make the cut, the fastest first; equally fast ones by id.</param>
/// <param name="Refused">Why the others cannot, in the order of the saws.</param>
public sealed record CutComparison(IReadOnlyList<CutOnSaw> Possible, IReadOnlyList<CutRefusal> Refused)
{
    /// <summary>
    /// The cut on each of the saws, on each with its best blade, or with the one that is named. Codes of refusals are those of <see cref="SawFit"/>,
    /// of <see cref="BundleFit"/>, of <see cref="ObstacleCodes"/>, and <see cref="UnscheduledReason.CutExceedsBladeLife"/>, since no cut is begun that its blade cannot finish.
    /// </summary>
    /// <param name="section">The section as the bar comes.</param>
    /// <param name="grade">The grade.</param>
    /// <param name="face">The face that the cut makes.</param>
    /// <param name="saws">The saws to compare.</param>
    /// <param name="bladeId">The blade to cut with; null for the best of each saw.</param>
    /// <param name="bundle">The bars that are cut together; null for one.</param>
    public static CutComparison Of(Section section, Grade grade, EndCut face, IEnumerable<Saw> saws, string? bladeId = null, CutBundle? bundle = null)
    {
        var possible = new List<CutOnSaw>();
        var refused = new List<CutRefusal>();
        var together = bundle ?? CutBundle.Single;
        foreach (var saw in saws)
        {
            var result = ResultOf(section, grade, face, saw, bladeId, together);
            if (result.Obstacle is { } obstacle)
                refused.Add(new(saw.SawId, obstacle));
            else if (result.Choice!.Cuts[0].CutsPerBlade == 0)
                refused.Add(new(saw.SawId, new(UnscheduledReason.CutExceedsBladeLife, $"One cut wears out more than a new blade {result.Choice.Blade.BladeId}.")));
            else
                possible.Add(new(saw, result.Choice, [.. CautionRules.ForSaw(saw), .. CautionRules.ForGrade(grade, saw), .. CautionRules.ForBundle(together)]));
        }
        return new([.. possible.OrderBy(cut => cut.Data.CutSeconds).ThenBy(cut => cut.Saw.SawId, StringComparer.Ordinal)], refused);
    }

    private static BladeChoiceResult ResultOf(Section section, Grade grade, EndCut face, Saw saw, string? bladeId, CutBundle bundle)
    {
        if (bladeId is null)
            return BladeChoice.Choose(section, grade, saw, [face], bundle);
        var blade = saw.Blades.FirstOrDefault(candidate => string.Equals(candidate.BladeId, bladeId, StringComparison.Ordinal));
        return blade is null
            ? BladeChoiceResult.None(ObstacleCodes.BladeNotOnSaw, $"Blade {bladeId} is none of saw {saw.SawId}'s.")
            : BladeChoice.Choose(section, grade, saw with { Blades = [blade] }, [face], bundle);
    }
}
