using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Times;

/// <summary>One cycle of the saw: index, clamp, swivel and tilt where the angles change, approach, cut, retract, and unloading what came off.</summary>
public static class CutCycle
{
    /// <summary>The parts of one cycle.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="before">The face that the saw stands for from the cycle before.</param>
    public static TimeParts Of(Saw saw, PlannedCut cut, EndCut before) => TimeParts.Zero with
    {
        Index = Index(saw, cut.Feed),
        Clamp = saw.Times.ClampSecondsPerCut,
        Swivel = AnglesChanged(before, cut.Face) * saw.Times.SwivelSeconds,
        Approach = saw.Times.ApproachSecondsPerCut + saw.Times.RetractSecondsPerCut,
        Cut = cut.CutSeconds,
        Unload = cut.Pieces * saw.Times.UnloadSecondsPerPiece,
    };

    private static decimal Index(Saw saw, Length feed)
    {
        var moving = Strokes(feed, saw.BarFeedStroke) * saw.Times.IndexSecondsPerStroke;
        return saw.Times.IndexesWhileRetracting ? Math.Max(0m, moving - saw.Times.RetractSecondsPerCut) : moving;
    }

    /// <summary>Swivel and tilt are set one after the other.</summary>
    private static int AnglesChanged(EndCut before, EndCut face) =>
        (before.WidthAngle == face.WidthAngle ? 0 : 1) + (before.HeightAngle == face.HeightAngle ? 0 : 1);

    /// <summary>Strokes of the bar feed for a move, ceil(feed/stroke); none for no move. The stroke must be positive.</summary>
    public static long Strokes(Length feed, Length stroke)
    {
        if (feed <= Length.Zero)
            return 0;
        var whole = feed.Nanometers / stroke.Nanometers;
        return feed.Nanometers % stroke.Nanometers == 0 ? whole : whole + 1;
    }
}
