namespace SawEngine.Solvers.Nesting;

/// <summary>Filled bars, each layout on the cheapest stock that takes it.</summary>
internal sealed record FilledBars(NestModel Model, IReadOnlyList<OpenBar> Bars, long Pieces, decimal Cost)
{
    /// <summary>Null where filling was canceled.</summary>
    public static FilledBars? Of(NestModel model, IReadOnlyList<OpenBar>? filled)
    {
        if (filled is null)
            return null;
        var bars = CheaperStock.Move(model, filled);
        var pieces = 0L;
        foreach (var bar in bars)
        {
            for (var run = bar.Last; run is not null; run = run.Before)
                pieces += (long)run.Count * bar.Bars;
        }
        return new(model, bars, pieces, bars.Sum(bar => (decimal)bar.NetCost(model) * bar.Bars));
    }

    /// <summary>More pieces, or as many at less cost.</summary>
    public bool IsBetterThan(FilledBars? other) => other is null || Pieces > other.Pieces || (Pieces == other.Pieces && Cost < other.Cost);
}
