using SawEngine.Core.Orders;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Times;

/// <summary>Time of one bar, or of a cut bundle: load its bars, cut them cycle by cycle, handle their remainders.</summary>
public sealed record BarTime
{
    private BarTime(TimeParts load, IReadOnlyList<TimeParts> cycles, TimeParts remainder)
    {
        Load = load;
        Cycles = cycles;
        Remainder = remainder;
        Parts = cycles.Aggregate(load + remainder, (sum, cycle) => sum + cycle);
    }

    /// <summary>Before the first cut.</summary>
    public TimeParts Load { get; }

    /// <summary>Each cut, trim cuts included, in order.</summary>
    public IReadOnlyList<TimeParts> Cycles { get; }

    /// <summary>After the last cut.</summary>
    public TimeParts Remainder { get; }

    /// <summary>All of it.</summary>
    public TimeParts Parts { get; }

    /// <summary>Time of a bar.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="cuts">Its cuts in order, trim cuts included.</param>
    /// <param name="hasRemainder">Whether something is left to rack or bin.</param>
    /// <param name="before">The face that the saw stands for from the bar before.</param>
    /// <param name="bars">Bars that are cut together; each is loaded, and its remainder handled, by itself.</param>
    public static BarTime Of(Saw saw, IReadOnlyList<PlannedCut> cuts, bool hasRemainder, EndCut before, int bars = 1)
    {
        var cycles = new List<TimeParts>(cuts.Count);
        foreach (var cut in cuts)
        {
            cycles.Add(CutCycle.Of(saw, cut, before));
            before = cut.Face;
        }

        var load = TimeParts.Zero with { Load = saw.Times.LoadSecondsPerBar * bars };
        var remainder = TimeParts.Zero with { Remainder = hasRemainder ? saw.Times.RemainderSecondsPerBar * bars : 0m };
        return new(load, cycles, remainder);
    }
}
