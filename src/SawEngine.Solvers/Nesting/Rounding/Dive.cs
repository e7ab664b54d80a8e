using SawEngine.Solvers.Nesting.Master;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Rounding;

/// <summary>Fixes the layouts of a linear program bit by bit, whole numbers first and then the largest fractions, and prices what is left again.</summary>
internal sealed class Dive
{
    private const double Noise = 1e-6;

    /// <summary>Of so many bars that are left, one is fixed at a time.</summary>
    private const int BarsPerFix = 8;

    /// <summary>How much a shuffled dive may prefer another fraction.</summary>
    private const double Shuffle = 0.5;

    private readonly SearchPart _part;
    private readonly Pricer _pricer;
    private readonly SearchMeter _meter;
    private readonly int _roundsPerStep;
    private readonly SplitMix? _random;
    private readonly int[] _wanted;
    private readonly long[] _available;
    private readonly List<Column> _chosen = [];
    private MasterProgram _master;
    private long _askedFor;

    private Dive(SearchPart part, MasterProgram master, Pricer pricer, int[] wanted, long[] available, int roundsPerStep, SearchMeter meter, SplitMix? random)
    {
        (_part, _master, _pricer, _roundsPerStep, _meter, _random) = (part, master, pricer, roundsPerStep, meter, random);
        (_wanted, _available) = ([.. wanted], [.. available]);
        _askedFor = Left;
    }

    private long Left => _wanted.Sum(wanted => (long)wanted);

    /// <summary>
    /// A layout for each bar, from a program that was solved, and the number of pieces that are left: for which there is no room, or where stopped.
    /// With random numbers the dive goes another way: one bar at a time, and not always the largest fraction.
    /// </summary>
    public static (List<Column> Chosen, long Left) Run(SearchPart part, MasterProgram master, Pricer pricer, int[] wanted, long[] available, int roundsPerStep, SearchMeter meter, SplitMix? random = null)
    {
        var dive = new Dive(part, master, pricer, wanted, available, roundsPerStep, meter, random);
        dive.Run();
        return (dive._chosen, dive.Left);
    }

    private void Run()
    {
        while (FixFloors() || FixLargest())
        {
            if (Left == 0)
                return;
            Narrow();
            if (!ColumnGeneration.Run(_part, _master, _pricer, _wanted, _available, _roundsPerStep, _meter))
                return;
        }
    }

    private bool FixFloors()
    {
        var any = false;
        for (var i = 0; i < _master.Columns.Count; i++)
        {
            var whole = (int)Math.Floor(_master.ValueOf(i) + Noise);
            any |= whole > 0 && Fix(_master.Columns[i], whole);
        }
        return any;
    }

    private bool FixLargest()
    {
        var fractions = Enumerable.Range(0, _master.Columns.Count)
            .Select(i => (Column: _master.Columns[i], Value: _master.ValueOf(i)))
            .Where(one => one.Value > Noise)
            .OrderByDescending(one => Math.Round(one.Value, 6) * (1 + Shuffle * (_random?.NextDouble() ?? 0)))
            .ToList();
        var most = _random is null ? Math.Max(1, (int)(fractions.Sum(one => one.Value) / BarsPerFix)) : 1;
        var done = 0;
        foreach (var (column, value) in fractions)
        {
            if (done == most || (done > 0 && value < 0.5))
                break;
            done += Fix(column, 1) ? 1 : 0;
        }
        return done > 0;
    }

    private bool Fix(Column column, int times)
    {
        times = (int)Math.Min(times, _available[column.Bars]);
        foreach (var (type, count) in column.Runs)
            times = Math.Min(times, _wanted[type] / count);
        if (times <= 0)
            return false;
        foreach (var (type, count) in column.Runs)
            _wanted[type] -= count * times;
        _available[column.Bars] -= times;
        _chosen.AddRange(Enumerable.Repeat(column, times));
        return true;
    }

    /// <summary>Asks for what is left; for half the pieces the program is made anew from the layouts that still serve.</summary>
    private void Narrow()
    {
        if (Left > _askedFor / 2)
        {
            _master.Ask(_wanted, _available);
            return;
        }
        var narrowed = new MasterProgram(_part, _wanted, _available, _meter);
        foreach (var column in _master.Columns)
        {
            if (column.IsProper(_wanted) && _available[column.Bars] > 0)
                narrowed.Add(column);
        }
        _master = narrowed;
        _askedFor = Left;
    }
}
