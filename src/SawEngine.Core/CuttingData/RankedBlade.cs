using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>A blade with how well its teeth suit a profile.</summary>
/// <param name="Blade">The blade.</param>
/// <param name="MeanTeeth">Mean teeth in the work.</param>
/// <param name="Fewest">Fewest mean teeth wanted for the kind of section.</param>
/// <param name="Most">Most mean teeth wanted.</param>
/// <param name="Rank">Lower is better: wanted teeth by pitch, coarsest first; then the allowed ones, then all others, by distance.</param>
internal sealed record RankedBlade(Blade Blade, double MeanTeeth, double Fewest, double Most, (int Class, double Key) Rank)
{
    public static RankedBlade Of(Blade blade, CutProfile profile, CuttingParameters parameters)
    {
        var mean = TeethCount.Of(profile, blade).Mean;
        var allowed = ((double)parameters.FewestMeanTeeth, (double)parameters.MostMeanTeeth);
        var wanted = profile.IsSolid ? ((double)parameters.FewestWantedTeeth, (double)parameters.MostWantedTeeth) : allowed;
        return new(blade, mean, wanted.Item1, wanted.Item2, RankOf(blade, mean, wanted, allowed));
    }

    /// <summary>Why this blade was passed over for the chosen one.</summary>
    public RejectedBlade RejectedFor(RankedBlade chosen, CutObstacle? obstacle)
    {
        if (obstacle is not null)
            return new(Blade.BladeId, obstacle.Code, obstacle.Detail);
        if (MeanTeeth < Fewest)
            return new(Blade.BladeId, RejectionCodes.FewerThanWantedTeeth, Text.Of($"{MeanTeeth:0.0} mean teeth in the work, {Fewest:0} wanted."));
        if (MeanTeeth > Most)
            return new(Blade.BladeId, RejectionCodes.MoreThanWantedTeeth, Text.Of($"{MeanTeeth:0.0} mean teeth in the work, at most {Most:0} wanted."));
        return Blade.MeanTeethPerInch > chosen.Blade.MeanTeethPerInch
            ? new(Blade.BladeId, RejectionCodes.CoarserBladeFits, $"Blade {chosen.Blade.BladeId} is coarser and has enough teeth in the work.")
            : new(Blade.BladeId, RejectionCodes.Slower, $"Blade {chosen.Blade.BladeId} of the same pitch cuts no slower.");
    }

    private static (int Class, double Key) RankOf(Blade blade, double mean, (double, double) wanted, (double, double) allowed)
    {
        if (Distance(mean, wanted) <= 1)
            return (0, (double)blade.MeanTeethPerInch);
        return Distance(mean, allowed) <= 1 ? (1, Distance(mean, wanted)) : (2, Distance(mean, allowed));
    }

    /// <summary>How many times the mean is outside a range; at most 1 inside.</summary>
    private static double Distance(double mean, (double Fewest, double Most) range) => Math.Max(range.Fewest / mean, mean / range.Most);
}
