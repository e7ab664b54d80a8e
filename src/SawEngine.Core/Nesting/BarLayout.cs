using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>One bar with its ordered cuts, or several equal bars cut alike. <c>Trim + pieces + KerfTotal + Remainder = bar</c>, exactly, each piece by its <see cref="Cut.Centerline"/>.</summary>
public sealed record BarLayout
{
    /// <summary>The stock item that the bar is of.</summary>
    public required StockItem Stock { get; init; }

    /// <summary>How many bars are cut alike.</summary>
    public int Repeat { get; init; } = 1;

    /// <summary>How many of them are cut together; the last of them in a smaller bundle where the repeat is no multiple.</summary>
    public CutBundle Bundle { get; init; } = CutBundle.Single;

    /// <summary>How many times the cuts are made: repeat over bars of a bundle, rounded up.</summary>
    public int Cycles => (Repeat + Bundle.Bars - 1) / Bundle.Bars;

    /// <summary>The pieces in the order in which they are cut.</summary>
    public required IReadOnlyList<Cut> Cuts { get; init; }

    /// <summary>What is cut off the raw start, kerf included.</summary>
    public required Length Trim { get; init; }

    /// <summary>Cost of bringing one bar to another plant, where any of its pieces is for one; in millionths of the objective's unit.</summary>
    public long TransferCostMicros { get; init; }

    /// <summary>
    /// All that is lost on the bar's centerline before, between and behind the pieces: kerfs, wedges and slices beside miters, the steps that computed lengths
    /// are rounded by, and behind a mitered last face what lies between the centerline and the remainder's short side.
    /// </summary>
    public required Length KerfTotal { get; init; }

    /// <summary>What is left, by its short side: what is inclined beyond is of no use before it is cut square.</summary>
    public required Remainder Remainder { get; init; }
}
