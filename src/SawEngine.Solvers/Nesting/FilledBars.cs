namespace SawEngine.Solvers.Nesting;

/// <summary>Filled bars, each layout on the cheapest stock that takes it, and the pieces placed by type and by rank, the most urgent first.</summary>
internal sealed record FilledBars(NestModel Model, IReadOnlyList<OpenBar> Bars, IReadOnlyList<long> Placed, IReadOnlyList<long> Pieces, decimal Cost)
{
    /// <summary>Null where filling was canceled.</summary>
    public static FilledBars? Of(NestModel model, IReadOnlyList<OpenBar>? filled, SearchMeter meter)
    {
        if (filled is null)
            return null;
        var bars = CheaperStock.Move(model, filled, meter);
        var placed = new long[model.Types.Length];
        foreach (var bar in bars)
        {
            for (var run = bar.Last; run is not null; run = run.Before)
                placed[run.Type] += (long)run.Count * bar.Bars;
        }
        return new(model, bars, placed, model.Ranked(placed), bars.Sum(bar => (decimal)bar.NetCost(model) * bar.Bars));
    }

    /// <summary>More pieces in the first rank in which the two differ, or as many in all at less cost.</summary>
    public bool IsBetterThan(FilledBars? other)
    {
        if (other is null)
            return true;
        foreach (var (pieces, others) in Pieces.Zip(other.Pieces))
        {
            if (pieces != others)
                return pieces > others;
        }
        return Cost < other.Cost;
    }
}
