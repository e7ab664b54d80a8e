using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>The best blade for one way that the section lies.</summary>
internal static class LayChoice
{
    public static BladeChoiceResult Choose(
        Lay lay, Section section, Grade grade, Saw saw, IReadOnlyList<EndCut> cuts, CutBundle bundle, CuttingParameters parameters, Length? squareness = null)
    {
        if (section.Area.SquareMillimeters <= 0 || section.Height <= Length.Zero || section.Width <= Length.Zero)
            return BladeChoiceResult.None(ObstacleCodes.NoMaterial, $"Section {section.Designation} has no area.");
        var laid = lay.Of(section);
        var laidCuts = cuts.Select(lay.Of).ToArray();
        foreach (var cut in laidCuts)
        {
            if (SawFit.Obstacle(saw, laid, cut) is { } obstacle)
                return BladeChoiceResult.None(obstacle, $"Saw {saw.SawId} does not make all cuts through section {section.Designation}.");
            if (BundleFit.Obstacle(saw, laid, cut, bundle) is { } inBundle)
                return BladeChoiceResult.None(inBundle, $"Saw {saw.SawId} does not cut section {section.Designation} {bundle.Wide} wide and {bundle.High} high.");
        }

        var profiles = laidCuts.Distinct().ToDictionary(cut => cut, cut => CutProfile.Of(laid, cut, bundle, parameters, saw.Cant));
        var narrowest = profiles[laidCuts.MinBy(cut => cut.AlongBar)];
        var ranked = BladesOf(saw).Select(blade => RankedBlade.Of(blade, narrowest, parameters)).ToArray();
        return Best(ranked, blade => DataOf(blade, laidCuts, profiles, grade, saw, parameters, squareness), lay, blade => Order(blade, saw, laid), squareness is not null);
    }

    /// <summary>Equally fast blades: the mounted one first, then worn ones for what is hard on good teeth, and good ones for solids; last those at their end.</summary>
    private static (bool IsAtEnd, bool IsShelved, decimal Condition) Order(Blade blade, Saw saw, Section section) =>
        (blade.RemainingLife <= 0m, !string.Equals(blade.BladeId, saw.MountedBladeId, StringComparison.Ordinal), section.IsSolid ? -blade.RemainingLife : blade.RemainingLife);

    /// <summary>
    /// Tries the blades rank by rank; of one rank the fastest is taken. Where a squareness is ordered, all pitches of a class are one rank: the fastest is the one
    /// that holds it best. A blade that does not last for one cut is taken where no other can make it.
    /// </summary>
    private static BladeChoiceResult Best(RankedBlade[] blades, Func<Blade, (CutData[]? Cuts, CutObstacle? Obstacle)> dataOf, Lay lay, Func<Blade, (bool, bool, decimal)> orderOf, bool isSquare)
    {
        var obstacles = new Dictionary<RankedBlade, CutObstacle>();
        (RankedBlade Blade, CutData[] Cuts)? tooShort = null;
        foreach (var rank in blades.GroupBy(blade => isSquare ? (blade.Rank.Class, 0) : blade.Rank).OrderBy(group => group.Key))
        {
            (RankedBlade Blade, CutData[] Cuts, decimal Seconds)? best = null;
            foreach (var blade in rank.OrderBy(blade => orderOf(blade.Blade)).ThenBy(blade => blade.Rank.Key).ThenBy(blade => blade.Blade.BladeId, StringComparer.Ordinal))
            {
                var (cuts, obstacle) = dataOf(blade.Blade);
                if (cuts is null)
                    obstacles[blade] = obstacle!;
                else if (Array.Exists(cuts, cut => cut.CutsPerBlade == 0))
                    (tooShort, obstacles[blade]) = (tooShort ?? (blade, cuts), BladeLife.TooShort(blade.Blade));
                else if (best is not { } soFar || cuts.Sum(cut => cut.CutSeconds) < soFar.Seconds)
                    best = (blade, cuts, cuts.Sum(cut => cut.CutSeconds));
            }

            if (best is { } found)
                return BladeChoiceResult.Of(ChoiceOf(found.Blade, found.Cuts, lay, blades, obstacles));
        }

        return tooShort is { } one ? BladeChoiceResult.Of(ChoiceOf(one.Blade, one.Cuts, lay, blades, obstacles)) : None(blades, obstacles);
    }

    private static BladeChoice ChoiceOf(
        RankedBlade chosen, CutData[] cuts, Lay lay, RankedBlade[] blades, Dictionary<RankedBlade, CutObstacle> obstacles) => new()
        {
            Blade = chosen.Blade,
            Lay = lay,
            TeethRank = chosen.Rank.Class,
            Cuts = cuts,
            Rejected = [.. blades.Where(blade => blade != chosen).Select(blade => blade.RejectedFor(chosen, obstacles.GetValueOrDefault(blade)))],
        };

    /// <summary>The obstacle that all blades share, else that no blade fits.</summary>
    private static BladeChoiceResult None(RankedBlade[] blades, Dictionary<RankedBlade, CutObstacle> obstacles)
    {
        var codes = obstacles.Values.Select(obstacle => obstacle.Code).Distinct(StringComparer.Ordinal).ToArray();
        return codes.Length == 1 && (codes[0] != ObstacleCodes.TooFewTeeth || blades.Length == 1)
            ? BladeChoiceResult.None(codes[0], obstacles[blades[0]].Detail)
            : BladeChoiceResult.None(ObstacleCodes.NoBlade, "No blade of the saw has enough teeth in the work.");
    }

    private static (CutData[]? Cuts, CutObstacle? Obstacle) DataOf(
        Blade blade, EndCut[] cuts, Dictionary<EndCut, CutProfile> profiles, Grade grade, Saw saw, CuttingParameters parameters, Length? squareness)
    {
        var results = profiles.ToDictionary(
            pair => pair.Key,
            pair => CuttingDataCalculator.For(pair.Value, grade, saw, blade, parameters, squareness));
        foreach (var cut in cuts)
        {
            if (results[cut].Obstacle is { } obstacle)
                return (null, obstacle);
        }

        return ([.. cuts.Select(cut => results[cut].Data!)], null);
    }

    private static IReadOnlyList<Blade> BladesOf(Saw saw) => saw.Blades.Count > 0 ? saw.Blades : DefaultBlades.For(saw.Capacity);
}
