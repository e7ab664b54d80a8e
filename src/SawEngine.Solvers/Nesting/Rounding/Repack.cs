using SawEngine.Solvers.Nesting.Master;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Rounding;

/// <summary>Takes some bars apart and nests their pieces again, together with the stock that is left: large neighborhood search (Shaw 1998).</summary>
internal sealed class Repack
{
    private const int Rounds = 12;
    private const int RoundsPerStep = 2;
    private const int LargestPool = 2_000;

    private readonly SearchPart _part;
    private readonly Pricer _pricer;
    private readonly double[] _duals;
    private readonly List<Column> _pool = [];
    private readonly HashSet<Column> _pooled = [];
    private readonly SearchMeter _meter;
    private readonly SplitMix _random = new(1);

    /// <summary>The pool gives layouts to begin with; duals say what pieces are worth.</summary>
    public Repack(SearchPart part, Pricer pricer, double[] duals, IEnumerable<Column> pool, SearchMeter meter)
    {
        (_part, _pricer, _duals, _meter) = (part, pricer, duals, meter);
        Keep(pool.OrderBy(column => column.Loss(duals)));
    }

    /// <summary>The bars after one try: cheaper, or others that cost the same, or those given.</summary>
    public List<Column> Try(List<Column> bars, int size)
    {
        var taken = Pick(bars, Math.Min(bars.Count, size));
        var wanted = new int[_part.Demand.Count];
        var available = _part.Bars.Select(kind => kind.Available).ToArray();
        foreach (var bar in bars)
            available[bar.Bars]--;
        foreach (var bar in taken.Select(index => bars[index]))
        {
            available[bar.Bars]++;
            foreach (var (type, count) in bar.Runs)
                wanted[type] += count;
        }
        var before = taken.Sum(index => bars[index].CostMicros);
        return Again(wanted, available, before, taken.Select(index => bars[index])) is { } again
            ? [.. bars.Where((_, index) => !taken.Contains(index)), .. again]
            : bars;
    }

    private List<Column>? Again(int[] wanted, long[] available, long before, IEnumerable<Column> taken)
    {
        var master = new MasterProgram(_part, wanted, available, _meter);
        foreach (var column in taken)
            master.Add(column);
        foreach (var column in _pool)
        {
            if (column.IsProper(wanted) && available[column.Bars] > 0)
                master.Add(column);
        }
        var known = master.Columns.Count;
        var isSolved = ColumnGeneration.Run(_part, master, _pricer, wanted, available, Rounds, _meter);
        Keep(master.Columns.Skip(known));
        if (!isSolved || master.Value > before - 0.5)
            return null;
        var (again, left) = Dive.Run(_part, master, _pricer, wanted, available, RoundsPerStep, _meter);
        if (left > 0)
            return null;
        // Of equal cost, the one whose losses gather on few bars is nearer to saving one.
        var cost = again.Sum(column => column.CostMicros);
        return cost < before || (cost == before && Gathered(again) >= Gathered(taken)) ? again : null;
    }

    /// <summary>Keeps new layouts for later tries while there is room.</summary>
    private void Keep(IEnumerable<Column> columns)
    {
        foreach (var column in columns)
        {
            if (_pool.Count < LargestPool && _pooled.Add(column))
                _pool.Add(column);
        }
    }

    private double Gathered(IEnumerable<Column> bars) => bars.Sum(bar => bar.Loss(_duals) * bar.Loss(_duals));

    /// <summary>Indexes of some bars, in order; those that cost more than their pieces are worth are taken more often.</summary>
    private SortedSet<int> Pick(List<Column> bars, int size)
    {
        var losses = bars.Select(bar => Math.Max(0, bar.Loss(_duals))).ToArray();
        var total = losses.Sum();
        var taken = new SortedSet<int>();
        while (taken.Count < size)
        {
            var (at, chosen) = (_random.NextDouble() * total, (int)(_random.NextDouble() * bars.Count));
            if (_random.NextDouble() < 0.5)
            {
                for (chosen = 0; chosen < bars.Count - 1 && (at -= losses[chosen]) > 0;)
                    chosen++;
            }
            taken.Add(chosen);
        }
        return taken;
    }
}
