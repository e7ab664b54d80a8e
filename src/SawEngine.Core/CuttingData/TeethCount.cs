using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>Teeth of a blade in the work of a profile: width times teeth per inch over 25.4 mm.</summary>
internal readonly record struct TeethCount(double Min, double Mean, double Max, double Deciding)
{
    public const double MillimetersPerInch = 25.4;

    public static TeethCount Of(CutProfile profile, Blade blade)
    {
        var coarsest = (double)blade.CoarsestTeethPerInch / MillimetersPerInch;
        var mean = (double)blade.MeanTeethPerInch / MillimetersPerInch;
        var finest = (double)blade.FinestTeethPerInch / MillimetersPerInch;
        // A solid's shortest runs are where the blade enters and leaves; its mean width decides.
        var deciding = profile.IsSolid ? profile.MeanWidth * mean : profile.ShortestRun * coarsest;
        return new(profile.ShortestRun * coarsest, profile.TeethWidth * mean, profile.LongestRun * finest, deciding);
    }

    public TeethInWork ToTeethInWork() => new(Rounded.To(Min, 3), Rounded.To(Mean, 3), Rounded.To(Max, 3));
}
