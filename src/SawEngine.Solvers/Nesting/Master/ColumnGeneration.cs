using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Master;

/// <summary>Column generation (Gilmore and Gomory 1961) over all kinds of bars at once: each round adds the few layouts of least reduced cost.</summary>
internal static class ColumnGeneration
{
    private const int MostColumnsPerRound = 20;

    /// <summary>A reduced cost counts where it is more than this share of the bar's cost.</summary>
    private const double LeastGain = 1e-9;

    /// <summary>Solves and adds layouts for a number of rounds, or until there is none to add; false where stopped or the program has no solution.</summary>
    public static bool Run(SearchPart part, MasterProgram master, Pricer pricer, int[] wanted, long[] available, int mostRounds, SearchMeter meter)
    {
        for (var round = 0; round < mostRounds; round++)
        {
            if (meter.IsStopped || !master.Solve())
                return false;
            pricer.Price(master.Duals, wanted, available);
            if (AddBest(part, master, pricer, master.BarDuals) == 0)
                return true;
        }
        return !meter.IsStopped && master.Solve();
    }

    /// <summary>Adds the best layouts that the pricer found; gives back how many. The bars' duals are those that the pricer's belong to.</summary>
    public static int AddBest(SearchPart part, MasterProgram master, Pricer pricer, double[] barDuals)
    {
        var added = 0;
        var gains = Enumerable.Range(0, part.Bars.Count)
            .Select(bars => (Bars: bars, Gain: pricer.Gain(bars) + barDuals[bars]))
            .Where(best => best.Gain > Least(part, best.Bars))
            .OrderByDescending(best => best.Gain);
        foreach (var (bars, _) in gains)
        {
            if (pricer.ColumnOf(bars) is not { } column || column.Loss(master.Duals) - master.BarDuals[bars] > -Least(part, bars))
                continue;
            if (master.Add(column) && ++added == MostColumnsPerRound)
                break;
        }
        return added;
    }

    private static double Least(SearchPart part, int bars) => LeastGain * Math.Max(1, Math.Abs(part.Bars[bars].CostMicros));
}
