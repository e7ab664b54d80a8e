using SawEngine.Core.Accuracy;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>
/// How far the blade leads out of square: in proportion to the blade feed against the full one, which grade and teeth allow, and to its wear, up to the worn factor
/// at the end of its life. A model of our own; the saw's figure at full feed is the shop's to measure.
/// </summary>
/// <param name="FullFeedMillimeters">Out of square over the blade's way at full feed, in mm.</param>
internal readonly record struct BladeLead(double FullFeedMillimeters)
{
    public static BladeLead Of(CutProfile profile, Saw saw, Blade blade, CuttingParameters parameters)
    {
        var wear = 1 + ((double)parameters.WornSquarenessFactor - 1) * (1 - (double)blade.RemainingLife);
        return new((double)saw.Accuracy.Squareness * wear * profile.HeadTravel);
    }

    /// <summary>The share of the full feed at which an ordered squareness is held, on the safe side of the grid of errors; 1 where none is ordered.</summary>
    public double FeedShareFor(Length? squareness) =>
        squareness is { } ordered ? Math.Min(1, LengthAccuracy.DownToGrid(ordered).ApproximateMillimeters / Math.Max(FullFeedMillimeters, double.Epsilon)) : 1;

    /// <summary>Out of square at a share of the full feed, rounded to 1.27 µm (0.00005 in), half to even.</summary>
    public Length OutOfSquare(double shareOfFullFeed) => LengthAccuracy.ToGrid(FullFeedMillimeters * shareOfFullFeed * 1_000_000);
}
