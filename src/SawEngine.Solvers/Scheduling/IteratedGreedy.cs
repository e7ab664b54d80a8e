namespace SawEngine.Solvers.Scheduling;

/// <summary>Takes a few jobs out and puts each back where it is best, again and again; keeps what is not worse (Ruiz and Stuetzle 2007).</summary>
internal static class IteratedGreedy
{
    private const int TakenOut = 4; // the number of Ruiz and Stuetzle (from memory)
    private const int Seed = 1;

    /// <summary>The best plan found.</summary>
    public static SawPlan Run(PlanMoves moves, int rounds)
    {
        var random = new Random(Seed);
        var (best, bestScore) = (new SawPlan(moves.Plan), moves.Score);
        var order = Enumerable.Range(0, moves.Jobs).ToArray();
        for (var round = 0; round < rounds && !moves.Stopped; round++)
        {
            var taken = Draw(order, random);
            if (moves.TakeOut(taken))
                foreach (var job in taken)
                    moves.MoveToBestPlace(job);
            if (moves.Score.CompareTo(bestScore) > 0)
                moves.Restore(best);
            else
                (best, bestScore) = (new(moves.Plan), moves.Score);
        }
        return best;
    }

    private static int[] Draw(int[] order, Random random)
    {
        var count = Math.Min(TakenOut, order.Length);
        for (var i = 0; i < count; i++)
        {
            var j = random.Next(i, order.Length);
            (order[i], order[j]) = (order[j], order[i]);
        }
        return order[..count];
    }
}
