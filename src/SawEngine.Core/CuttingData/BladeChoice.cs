using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>
/// The blade of a saw for a section and grade, and the way the section lies. By mean teeth in the work (area over travel): 6 to 12 in solids, 3 to 24 in all
/// others, the coarsest blade that fits; else the one nearest to that, with a warning, as long as the hard floor of teeth is kept. Of blades of one pitch the
/// faster; of equally fast ones the mounted one, then the most worn for hollow and structural sections, which are hard on good teeth, and the least worn for solids. Of the ways to lie that the cuts allow, the one with the better teeth, then the faster.
/// </summary>
public sealed record BladeChoice
{
    /// <summary>The blade.</summary>
    public required Blade Blade { get; init; }

    /// <summary>How the section lies.</summary>
    public required Lay Lay { get; init; }

    /// <summary>Cutting data of each of the cuts, in their order.</summary>
    public required IReadOnlyList<CutData> Cuts { get; init; }

    /// <summary>Why each other blade of the saw was not chosen, in the saw's order.</summary>
    public required IReadOnlyList<RejectedBlade> Rejected { get; init; }

    /// <summary>
    /// The best blade of a saw for all the cuts of a bar (at least one); of the default blades where the saw lists none.
    /// A result without choice says why.
    /// </summary>
    public static BladeChoiceResult Choose(Section section, Grade grade, Saw saw, IReadOnlyList<EndCut> cuts, CuttingParameters? parameters = null) =>
        Choose(section, grade, saw, cuts, CutBundle.Single, parameters);

    /// <summary>The same for bars that are cut together, and where a squareness is ordered.</summary>
    public static BladeChoiceResult Choose(Section section, Grade grade, Saw saw, IReadOnlyList<EndCut> cuts, CutBundle bundle, CuttingParameters? parameters = null, Length? squareness = null)
    {
        parameters ??= CuttingParameters.Default;
        var choices = LaysFor(section, cuts).Select(lay => LayChoice.Choose(lay, section, grade, saw, cuts, bundle, parameters, squareness)).ToList();
        return choices.Where(result => result.Choice is not null).MinBy(result => (result.Choice!.TeethRank, result.Choice.Seconds))
            ?? choices.Find(result => result.Obstacle!.Code != SawFit.MiterPlane)
            ?? choices[0];
    }

    /// <summary>0 with the wanted teeth, 1 with allowed ones, 2 with others.</summary>
    internal int TeethRank { get; init; }

    /// <summary>Sum of the cut times, by which ways to lie are compared.</summary>
    internal decimal Seconds => Cuts.Sum(cut => cut.CutSeconds);

    /// <summary>Half a turn matters to the hand of a miter only, a quarter to all but rounds.</summary>
    internal static IEnumerable<Lay> LaysFor(Section section, IReadOnlyList<EndCut> cuts)
    {
        var lays = Lay.AllOf(section);
        return cuts.Any(cut => !cut.IsSquare) ? lays : lays.Take(section.IsRound || !section.CanTurn ? 1 : 2);
    }
}
