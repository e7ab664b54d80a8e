using SawEngine.Core.Cautions;
using SawEngine.Core.Nesting;
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
    /// of <see cref="BundleFit"/>, of <see cref="ObstacleCodes"/>, <see cref="UnplacedReason.PieceTooShort"/> and <see cref="UnplacedReason.PieceTooLong"/>, and
    /// <see cref="UnscheduledReason.CutExceedsBladeLife"/>, since no cut is begun that its blade cannot finish.
    /// </summary>
    public static CutComparison Of(WantedCut wanted, IEnumerable<Saw> saws) =>
        Of(wanted, saws.Select(saw => (saw, wanted.BladeId)));

    /// <summary>The cut on each of the saws with each of its blades. What goes for all blades of a saw is said once.</summary>
    public static CutComparison OverBlades(WantedCut wanted, IEnumerable<Saw> saws)
    {
        var all = Of(wanted, saws.SelectMany(saw => saw.Blades, (saw, blade) => (saw, (string?)blade.BladeId)));
        return all with { Refused = [.. all.Refused.Select(refusal => IsOfSaw(refusal) ? refusal with { BladeId = null } : refusal).Distinct()] };
    }

    private static bool IsOfSaw(CutRefusal refusal) => refusal.Obstacle.Code is SawFit.Capacity or SawFit.CompoundMiter or SawFit.MiterPlane or SawFit.MiterRange
        or BundleFit.NoHoldDown or BundleFit.SectionNotBundled or BundleFit.TooLarge or BundleFit.TooManyBars or UnplacedReason.PieceTooShort or UnplacedReason.PieceTooLong or ObstacleCodes.NoMaterial;

    private static CutComparison Of(WantedCut wanted, IEnumerable<(Saw Saw, string? BladeId)> candidates)
    {
        var possible = new List<CutOnSaw>();
        var refused = new List<CutRefusal>();
        foreach (var (saw, bladeId) in candidates)
        {
            var result = LengthObstacle(wanted, saw) is { } length ? BladeChoiceResult.None(length.Code, length.Detail) : ResultOf(wanted, saw, bladeId);
            if (result.Obstacle is { } obstacle)
                refused.Add(new(saw.SawId, obstacle, bladeId));
            else if (result.Choice!.Cuts[0].CutsPerBlade == 0)
                refused.Add(new(saw.SawId, BladeLife.TooShort(result.Choice.Blade), bladeId));
            else
                possible.Add(new(wanted, saw, result.Choice, [.. CautionRules.ForSaw(saw), .. CautionRules.ForGrade(wanted.Grade, saw), .. CautionRules.ForBundle(wanted.Bundle)]));
        }
        return new([.. possible.OrderBy(cut => cut.Data.CutSeconds).ThenBy(cut => cut.Saw.SawId, StringComparer.Ordinal).ThenBy(cut => cut.Choice.Blade.BladeId, StringComparer.Ordinal)], refused);
    }

    private static CutObstacle? LengthObstacle(WantedCut wanted, Saw saw) => wanted.AimedLength switch
    {
        { } length when length < saw.ShortestPiece => new(UnplacedReason.PieceTooShort, $"Saw {saw.SawId} cuts no piece so short."),
        { } length when length > saw.LongestPiece => new(UnplacedReason.PieceTooLong, $"The outfeed of saw {saw.SawId} takes no piece so long."),
        _ => null,
    };

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
