using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Times;

/// <summary>One cycle of the saw: index, clamp, swivel where the angle changes, approach, cut, retract, and unloading what came off.</summary>
public static class CutCycle
{
    /// <summary>The parts of one cycle.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="angleBefore">Where the saw stands from the cycle before.</param>
    public static TimeParts Of(Saw saw, PlannedCut cut, Angle angleBefore) => TimeParts.Zero with
    {
        Index = Strokes(cut.Feed, saw.BarFeedStroke) * saw.Times.IndexSecondsPerStroke,
        Clamp = saw.Times.ClampSecondsPerCut,
        Swivel = cut.Swivel == angleBefore ? 0m : saw.Times.SwivelSeconds,
        Approach = saw.Times.ApproachSecondsPerCut,
        Cut = cut.CutSeconds,
        Unload = cut.Pieces * saw.Times.UnloadSecondsPerPiece,
    };

    /// <summary>Strokes of the bar feed for a move, ceil(feed/stroke); none for no move. The stroke must be positive.</summary>
    public static long Strokes(Length feed, Length stroke)
    {
        if (feed <= Length.Zero)
            return 0;
        var whole = feed.Nanometers / stroke.Nanometers;
        return feed.Nanometers % stroke.Nanometers == 0 ? whole : whole + 1;
    }
}
