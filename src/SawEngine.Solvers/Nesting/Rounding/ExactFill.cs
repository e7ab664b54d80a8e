using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Rounding;

/// <summary>
/// Fills a known number of equal bars where next to nothing may be wasted: bar by bar, the piece that can be completed in the fewest ways goes first,
/// with all its completions tried in turn (depth first, fail first).
/// </summary>
internal sealed class ExactFill
{
    private const int MostCompletions = 40;
    /// <summary>After so many bars the ways of all types are counted again.</summary>
    private const int BarsPerCount = 16;

    /// <summary>Cells of a bar: a number is kept for each.</summary>
    private const int LargestCapacity = 1 << 24;

    private const int StepsPerLook = 4096;
    private const double Noise = 0.2;
    private const int FirstDeadEnds = 20;
    private const int BarsEmptied = 25;

    /// <summary>No more types than these are all counted each time; else those that seem scarcest.</summary>
    private const int Few = 120;
    private const int Counted = 24;

    private readonly int[] _sizes;
    private readonly int[] _left;
    private readonly int _capacity;
    private readonly long _mostSteps;
    private readonly SearchMeter _meter;
    private readonly List<(int[] Counts, int Waste)> _filled = [];
    private List<(int[] Counts, int Waste)> _deepest = [];
    private List<(int[] Counts, int Waste)> _kept = [];
    private readonly int[] _wanted;
    private readonly int[] _current;
    private readonly int[] _ways;

    /// <summary>For each room the first type that is not longer.</summary>
    private readonly int[] _firstNotLonger;
    private readonly SplitMix _random = new(1);
    private int _deadEnds;
    private int _mostDeadEnds = FirstDeadEnds;
    private bool _isCut;
    private int _count;
    private long _steps;
    private long _nextLook;
    private bool _isStopped;

    private ExactFill(int[] sizes, int[] wanted, int capacity, long mostSteps, SearchMeter meter)
    {
        (_sizes, _capacity, _mostSteps, _meter) = (sizes, capacity, mostSteps, meter);
        _wanted = wanted;
        _left = [.. wanted];
        _current = new int[sizes.Length];
        _ways = new int[sizes.Length];
        _firstNotLonger = new int[capacity + 1];
        var type = 0;
        for (var room = capacity; room >= 0; room--)
        {
            while (type < sizes.Length && sizes[type] > room)
                type++;
            _firstNotLonger[room] = type;
        }
    }

    /// <summary>
    /// The bars, where all pieces go into a number of bars of one kind and less than a bar is wasted in all; null where none were found, or the part is not of that kind.
    /// </summary>
    public static List<Column>? Run(SearchPart part, long bars, long mostSteps, SearchMeter meter)
    {
        var grid = PricingGrid.ForLayouts(part, LargestCapacity);
        if (part.Bars.Count != 1 || part.Together.Count != 1 || !part.Bars[0].IsFixed || bars > part.Bars[0].Available
            || !grid.IsAs(PricingGrid.ForBounds(part, LargestCapacity)))
            return null;
        // Sizes come longest first only where no face takes more than another.
        var order = Enumerable.Range(0, grid.Sizes.Length).OrderByDescending(type => grid.Sizes[type]).ToArray();
        var sizes = order.Select(type => grid.Sizes[type]).ToArray();
        var wanted = order.Select(type => part.Demand[type]).ToArray();
        var slack = bars * grid.Cells[0] - sizes.Zip(wanted, (size, count) => (long)size * count).Sum();
        if (slack < 0 || slack >= grid.Cells[0])
            return null;
        var fill = new ExactFill(sizes, wanted, grid.Cells[0], mostSteps, meter);
        return fill.SearchWithRestarts((int)slack) ? [.. fill._filled.Select(full => ColumnOf(part, order, full.Counts))] : null;
    }

    /// <summary>Looks at the meter now and then; once stopped, it stays so.</summary>
    private bool IsStopped()
    {
        if (_steps >= _nextLook)
        {
            _nextLook = _steps + StepsPerLook;
            _isStopped |= _steps > _mostSteps || _meter.IsStopped;
        }
        return _isStopped;
    }

    private static Column ColumnOf(SearchPart part, int[] order, int[] counts)
    {
        var byType = new int[counts.Length];
        for (var i = 0; i < counts.Length; i++)
            byType[order[i]] = counts[i];
        return part.ColumnOf(0, byType) ?? throw new InvalidOperationException("A layout that was found does not fit its bar.");
    }

    /// <summary>
    /// Where the search runs into many dead ends, some of the bars that it filled are emptied again, and it goes on from there with the pieces that were left.
    /// </summary>
    private bool SearchWithRestarts(int slack)
    {
        if (Search(slack))
            return true;
        var allTried = !_isCut && _deadEnds <= _mostDeadEnds;
        while (!allTried && !IsStopped())
        {
            // A little worse is well: the search must not stick to one set of bars.
            if (_deepest.Count >= _kept.Count - 1)
                _kept = _deepest;
            Restore(slack, out var left);
            (_deadEnds, _deepest) = (0, []);
            _mostDeadEnds++;
            if (Search(left))
                return true;
        }
        return false;
    }

    /// <summary>The longest list of filled bars, without some of them.</summary>
    private void Restore(int slack, out int slackLeft)
    {
        _filled.Clear();
        _wanted.CopyTo(_left, 0);
        slackLeft = slack;
        var emptied = new HashSet<int>();
        while (emptied.Count < Math.Min(BarsEmptied, _kept.Count))
            emptied.Add((int)(_random.NextDouble() * _kept.Count));
        for (var bar = 0; bar < _kept.Count; bar++)
        {
            if (emptied.Contains(bar))
                continue;
            _filled.Add(_kept[bar]);
            Subtract(_kept[bar].Counts, 1);
            slackLeft -= _kept[bar].Waste;
        }
    }

    private void Subtract(int[] counts, int sign)
    {
        for (var type = 0; type < counts.Length; type++)
            _left[type] -= sign * counts[type];
    }

    private bool Search(int slack)
    {
        if (Fewest(slack) is not { } completions)
            return true;
        foreach (var full in completions)
        {
            if (_deadEnds > _mostDeadEnds || IsStopped())
                return false;
            Subtract(full.Counts, 1);
            _filled.Add(full);
            if (Search(slack - full.Waste))
                return true;
            if (_filled.Count > _deepest.Count)
                _deepest = [.. _filled];
            _filled.RemoveAt(_filled.Count - 1);
            Subtract(full.Counts, -1);
        }
        _deadEnds++;
        return false;
    }

    /// <summary>The full bars of the piece that has the fewest, those of scarce pieces first; null where no piece is left.</summary>
    private List<(int[] Counts, int Waste)>? Fewest(int slack)
    {
        var fewest = -1;
        foreach (var type in Scarcest())
        {
            _ways[type] = Ways(type, slack, null);
            _isCut |= _ways[type] == MostCompletions;
            if (_ways[type] == 0)
                return [];
            if (fewest < 0 || _ways[type] < _ways[fewest])
                fewest = type;
        }
        if (fewest < 0)
            return null;
        var found = new List<(int[] Counts, int Waste)>();
        Ways(fewest, slack, found);
        return [.. found.OrderBy(full => full.Waste).ThenBy(full => Ease(full.Counts) * (1 + Noise * _random.NextDouble()))];
    }

    /// <summary>Types that had few ways when they were last counted; all of them now and then.</summary>
    private List<int> Scarcest()
    {
        var left = Enumerable.Range(0, _sizes.Length).Where(type => _left[type] > 0).ToList();
        return left.Count <= Few || _filled.Count % BarsPerCount == 0 ? left : [.. left.OrderBy(type => _ways[type]).Take(Counted)];
    }

    /// <summary>In how many ways a bar can be filled up that holds a piece; the ways themselves are added where asked for.</summary>
    private int Ways(int type, int slack, List<(int[] Counts, int Waste)>? found)
    {
        _count = 0;
        Take(type, 1);
        Complete(0, _capacity - _sizes[type], slack, found);
        Take(type, -1);
        return _count;
    }

    /// <summary>How easily the pieces would find another place.</summary>
    private double Ease(int[] counts)
    {
        var ease = 0d;
        for (var type = 0; type < counts.Length; type++)
            ease += counts[type] * (double)_ways[type];
        return ease;
    }

    private void Take(int type, int count)
    {
        _left[type] -= count;
        _current[type] += count;
    }

    /// <summary>Counts the ways to fill up some room with pieces from a type on, up to a limit.</summary>
    private void Complete(int from, int room, int slack, List<(int[] Counts, int Waste)>? found)
    {
        if (room <= slack)
        {
            _count++;
            found?.Add(([.. _current], room));
        }
        // Where two of the smallest do not fit, one piece must do: it is looked up.
        var start = Math.Max(from, _firstNotLonger[room]);
        var shortest = room < 2 * _sizes[^1] ? room - slack : 0;
        for (var type = start; type < _sizes.Length && _sizes[type] >= shortest && _count < MostCompletions && !IsStopped(); type++)
        {
            _steps++;
            if (_left[type] == 0)
                continue;
            Take(type, 1);
            Complete(type, room - _sizes[type], slack, found);
            Take(type, -1);
        }
    }
}
