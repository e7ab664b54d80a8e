using SawEngine.Benchmarks.Quality;

namespace SawEngine.Benchmarks.Peers;

/// <summary>
/// The graph of Valerio de Carvalho (1999): nodes are positions on a bar, arcs are pieces, longest first, each at most as often in a row as it is wanted;
/// only positions that pieces can reach are nodes.
/// </summary>
internal sealed class ArcFlowGraph
{
    private ArcFlowGraph(List<Arc> arcs, bool[] reached, List<(int Bar, int End)> ends)
    {
        Arcs = arcs;
        Ends = ends;
        Nodes = [.. Enumerable.Range(0, reached.Length).Where(position => reached[position])];
    }

    /// <summary>The arcs of pieces.</summary>
    public IReadOnlyList<Arc> Arcs { get; }

    /// <summary>Positions that are reached, ascending.</summary>
    public IReadOnlyList<int> Nodes { get; }

    /// <summary>The last node of each bar that can give a piece.</summary>
    public IReadOnlyList<(int Bar, int End)> Ends { get; }

    /// <summary>The graph of a problem; null where it has more arcs than the cap.</summary>
    public static ArcFlowGraph? Of(BarProblem problem, int mostArcs)
    {
        var unit = problem.Pieces.Aggregate(0L, (divisor, piece) => Divisor(divisor, piece.Length + problem.Kerf));
        var longest = (problem.Bars.Max(bar => bar.Length) - problem.Tail) / unit;
        if (longest > mostArcs)
            return null;
        var reached = new bool[longest + 1];
        reached[0] = true;
        var arcs = new List<Arc>();
        foreach (var (piece, place) in problem.Pieces.Select((piece, place) => (piece, place)).OrderByDescending(one => one.piece.Length))
        {
            if (!AddArcs(arcs, reached, place, (int)((piece.Length + problem.Kerf) / unit), piece.Demand, mostArcs))
                return null;
        }
        var ends = problem.Bars.Select((bar, place) => (Bar: place, End: LastReached(reached, (bar.Length - problem.Tail) / unit))).Where(end => end.End > 0);
        return new(arcs, reached, [.. ends]);
    }

    private static bool AddArcs(List<Arc> arcs, bool[] reached, int piece, int length, int demand, int mostArcs)
    {
        // How many of this piece stand in a row before a position; none where longer pieces reach it.
        var inRow = new int[reached.Length];
        for (var from = 0; from + length < reached.Length; from++)
        {
            if (!reached[from] || inRow[from] == demand)
                continue;
            if (arcs.Count == mostArcs)
                return false;
            arcs.Add(new(piece, from, from + length));
            if (!reached[from + length])
            {
                reached[from + length] = true;
                inRow[from + length] = inRow[from] + 1;
            }
        }
        return true;
    }

    private static int LastReached(bool[] reached, long room)
    {
        var end = (int)Math.Max(0, room);
        while (!reached[end])
            end--;
        return end;
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);

    /// <summary>A piece between two positions.</summary>
    internal readonly record struct Arc(int Piece, int From, int To);
}
