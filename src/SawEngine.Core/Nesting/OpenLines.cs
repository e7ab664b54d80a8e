using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Order lines that are begun and not finished while layouts are cut one after the other: pallets that stand at the saw (open stacks). A line is open from the first to the last layout
/// that holds a piece of it, both included.
/// </summary>
public static class OpenLines
{
    /// <summary>Code of the warning that more lines are open at once than was asked for.</summary>
    public const string LimitExceeded = "open_lines_limit_exceeded";

    /// <summary>The greatest number of lines open while any one of the layouts is cut, in the order given; 0 without layouts.</summary>
    public static int Most(IReadOnlyList<BarLayout> layouts)
    {
        var last = new Dictionary<PieceRef, int>();
        var opened = new int[layouts.Count];
        for (var place = 0; place < layouts.Count; place++)
        {
            foreach (var cut in layouts[place].Cuts)
            {
                opened[place] += last.ContainsKey(cut.Piece) ? 0 : 1;
                last[cut.Piece] = place;
            }
        }
        var closed = new int[layouts.Count];
        foreach (var place in last.Values)
            closed[place]++;
        var (open, most) = (0, 0);
        for (var place = 0; place < layouts.Count; place++)
        {
            open += opened[place];
            most = Math.Max(most, open);
            open -= closed[place];
        }
        return most;
    }
}
