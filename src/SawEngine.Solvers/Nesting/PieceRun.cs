namespace SawEngine.Solvers.Nesting;

/// <summary>Equal pieces in a row on a bar, behind those before them.</summary>
/// <param name="Before">The run before; null for the first.</param>
/// <param name="Type">Index of their type.</param>
/// <param name="Count">How many they are.</param>
/// <param name="Way">The way in which the first, third and so on lie.</param>
/// <param name="OtherWay">The way in which those between them lie.</param>
internal sealed record PieceRun(PieceRun? Before, int Type, int Count, int Way, int OtherWay)
{
    /// <summary>The way in which a piece of the run lies.</summary>
    public int WayOf(int piece) => piece % 2 == 0 ? Way : OtherWay;

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
