namespace SawEngine.Solvers.Nesting;

/// <summary>Equal pieces in a row on a bar, behind those before them.</summary>
internal sealed record PieceRun(PieceRun? Before, int Type, int Count)
{
    /// <summary>The runs in the order in which they lie on the bar.</summary>
    public static List<PieceRun> InOrder(PieceRun? last)
    {
        var runs = new List<PieceRun>();
        for (var run = last; run is not null; run = run.Before)
            runs.Add(run);
        runs.Reverse();
        return runs;
    }
}
