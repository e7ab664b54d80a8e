namespace SawEngine.Solvers.Scheduling;

/// <summary>Moves single jobs and exchanges pairs until a whole pass helps no more or the work is spent.</summary>
internal static class Descent
{
    public static void Run(PlanMoves moves)
    {
        while (Pass(moves))
        {
            // Each pass leaves a better plan.
        }
    }

    private static bool Pass(PlanMoves moves)
    {
        var improved = false;
        for (var job = 0; job < moves.Jobs && !moves.Stopped; job++)
            improved |= moves.MoveToBestPlace(job);
        for (var job = 0; job < moves.Jobs && !moves.Stopped; job++)
            for (var other = job + 1; other < moves.Jobs && !moves.Stopped; other++)
                improved |= moves.Exchange(job, other);
        return improved;
    }
}
