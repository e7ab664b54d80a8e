using SawEngine.Benchmarks.Quality;

namespace SawEngine.Benchmarks.Peers;

/// <summary>Holds a peer's nest against the problem by plain counting: lengths, supplies, demands.</summary>
internal static class PeerNestCheck
{
    /// <summary>What is wrong with a nest; empty where all is right.</summary>
    public static IEnumerable<string> Faults(BarProblem problem, PeerNest nest)
    {
        foreach (var pattern in nest.Patterns)
        {
            var needed = pattern.Pieces.Sum(piece => problem.Pieces[piece].Length + problem.Kerf) + problem.Tail;
            if (needed > problem.Bars[pattern.Bar].Length || pattern.Repeat < 1)
                yield return $"{needed} nm, {pattern.Repeat} times, on bar {pattern.Bar} of {problem.Bars[pattern.Bar].Length} nm";
        }
        for (var bar = 0; bar < problem.Bars.Count; bar++)
        {
            var used = nest.Patterns.Where(pattern => pattern.Bar == bar).Sum(pattern => pattern.Repeat);
            if (used > problem.Bars[bar].Available)
                yield return $"{used} of bar {bar}, {problem.Bars[bar].Available} are there";
        }
        for (var piece = 0; piece < problem.Pieces.Count; piece++)
        {
            var cut = nest.Patterns.Sum(pattern => pattern.Repeat * pattern.Pieces.Count(one => one == piece));
            if (cut != problem.Pieces[piece].Demand)
                yield return $"{cut} of piece {piece}, {problem.Pieces[piece].Demand} are wanted";
        }
    }

    /// <summary>Cost of all bars.</summary>
    public static long CostMicros(BarProblem problem, PeerNest nest) => nest.Patterns.Sum(pattern => problem.Bars[pattern.Bar].CostMicros * pattern.Repeat);
}
