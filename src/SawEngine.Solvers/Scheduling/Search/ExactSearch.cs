namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Every assignment and sequence of a few jobs: subsets by saw, then their best partition among the saws.</summary>
internal static class ExactSearch
{
    public const int MostJobs = 12;

    /// <summary>Whether the least cost can be found: few jobs, exact times, and either the makespan costs or promises and saw time do.</summary>
    public static bool CanProve(AxisShop shop) =>
        shop.IsExact && shop.Jobs <= MostJobs && (shop.MakespanRate == 0 || (shop.Weight.All(IsZero) && shop.WorkCost.All(IsZero) && shop.SetUpRate.All(IsZero)));

    /// <summary>
    /// Sequences by saw that cost less than a value, in millionths (where the makespan costs: finish before it), the least there is;
    /// none where nothing does. Null where it was too much.
    /// </summary>
    public static int[][]? Below(AxisShop shop, long limit, CancellationToken cancellation)
    {
        var programs = new SubsetProgram[shop.Saws];
        var least = new long[shop.Saws + 1][];
        var chosen = new int[shop.Saws][];
        least[0] = new long[1 << shop.Jobs];
        Array.Fill(least[0], long.MaxValue);
        least[0][0] = 0;
        for (var saw = 0; saw < shop.Saws; saw++)
        {
            if (SubsetProgram.Of(shop, saw, limit, cancellation) is not { } program)
                return null;
            programs[saw] = program;
            (least[saw + 1], chosen[saw]) = Add(least[saw], program.Best, shop.MakespanRate > 0);
        }
        var rest = (1 << shop.Jobs) - 1;
        if (least[shop.Saws][rest] >= limit)
            return [];
        var sequences = new int[shop.Saws][];
        for (var saw = shop.Saws - 1; saw >= 0; saw--)
        {
            sequences[saw] = programs[saw].Sequence(chosen[saw][rest]);
            rest &= ~chosen[saw][rest];
        }
        return sequences;
    }

    private static (long[] Least, int[] Chosen) Add(long[] others, long[] own, bool isMakespan)
    {
        var (least, chosen) = (new long[own.Length], new int[own.Length]);
        for (var set = 0; set < own.Length; set++)
        {
            (least[set], chosen[set]) = (others[set], 0);
            for (var part = set; part > 0; part = (part - 1) & set)
            {
                var (one, other) = (own[part], others[set & ~part]);
                if (one == long.MaxValue || other == long.MaxValue)
                    continue;
                var value = isMakespan ? Math.Max(one, other) : one + other;
                if (value < least[set])
                    (least[set], chosen[set]) = (value, part);
            }
        }
        return (least, chosen);
    }

    private static bool IsZero(long[] row) => Array.TrueForAll(row, value => value == 0);
}
