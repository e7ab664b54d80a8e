using SawEngine.Core.Accuracy;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>
/// How far the blade leads out of square: in proportion to the blade feed, and to its wear, up to the worn factor at the end of its life. A model of our own;
/// the saw's figure at full feed is the shop's to measure.
/// </summary>
/// <param name="FullFeedMillimeters">Out of square over the blade's way at full feed, in mm.</param>
internal readonly record struct BladeLead(double FullFeedMillimeters)
{
    public static BladeLead Of(CutProfile profile, Saw saw, Blade blade, CuttingParameters parameters)
    {
        var wear = 1 + ((double)parameters.WornSquarenessFactor - 1) * (1 - (double)blade.RemainingLife);
        return new((double)saw.Accuracy.Squareness * wear * profile.HeadTravel);
    }

    /// <summary>The share of the full feed at which an ordered squareness is held; 1 where none is.</summary>
    public double FeedShareFor(Length? squareness) =>
        squareness is { } ordered ? Math.Min(1, ordered.ApproximateMillimeters / Math.Max(FullFeedMillimeters, double.Epsilon)) : 1;

    /// <summary>Out of square at a feed, rounded to 1.27 µm (0.00005 in), half to even: less where the feed is held back, as far as it is.</summary>
    public Length OutOfSquare(BladeFeed feed, CutProfile profile, double minutes)
    {
        var fullMinutes = (feed with { Share = 1 }).Through(profile).Minutes;
        return LengthAccuracy.ToGrid(FullFeedMillimeters * fullMinutes / minutes * 1_000_000);
    }
}
