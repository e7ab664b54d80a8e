namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// Do the pieces of a few layouts fit into one layout less on the same bars? For each way to divide the bars of each stock type among the new layouts, the numbers of each piece type
/// must satisfy repeat₁·count₁ + repeat₂·count₂ + … = total; their solutions are combined depth-first, types with the fewest solutions first.
/// </summary>
internal sealed class MergeSearch
{
    private readonly Func<int, IReadOnlyList<int>, bool> _fits;
    private readonly Func<int, IReadOnlyList<int>, decimal> _cost;
    private readonly StepBudget _budget;
    private readonly long[] _totals;
    private readonly int[] _fewestFirst;
    private readonly decimal _costLimit;
    private List<Bars> _bars = [];

    private MergeSearch(List<CountedLayout> group, Func<int, IReadOnlyList<int>, bool> fits, Func<int, IReadOnlyList<int>, decimal> cost, StepBudget budget)
    {
        (_fits, _cost, _budget) = (fits, cost, budget);
        _totals = new long[group[0].Counts.Count];
        foreach (var layout in group)
        {
            for (var type = 0; type < _totals.Length; type++)
                _totals[type] += (long)layout.Repeat * layout.Counts[type];
            _costLimit += layout.Repeat * cost(layout.Stock, layout.Counts);
        }
        _fewestFirst = [.. Enumerable.Range(0, _totals.Length).Where(type => _totals[type] > 0).OrderBy(type => _totals[type])];
    }

    /// <summary>One layout less than given; null where there is none or the budget ends first.</summary>
    public static List<CountedLayout>? Find(List<CountedLayout> group, Func<int, IReadOnlyList<int>, bool> fits, Func<int, IReadOnlyList<int>, decimal> cost, StepBudget budget)
    {
        var bars = group.GroupBy(layout => layout.Stock).OrderBy(stock => stock.Key).Select(stock => (Stock: stock.Key, Bars: stock.Sum(layout => layout.Repeat))).ToList();
        if (bars.Count == group.Count)
            return null;
        var search = new MergeSearch(group, fits, cost, budget);
        foreach (var division in Divisions(bars, 0, group.Count - 1))
        {
            if (!budget.Spend(1))
                return null;
            if (search.Fill(division))
                return search._bars.ConvertAll(bar => new CountedLayout(bar.Stock, bar.Counts, bar.Repeat));
        }
        return null;
    }

    /// <summary>The ways to divide the bars of the stock types from one on among a number of layouts, repeats of a stock type ascending.</summary>
    private static IEnumerable<List<(int Stock, int Repeat)>> Divisions(List<(int Stock, int Bars)> bars, int from, int layouts)
    {
        if (from == bars.Count)
        {
            if (layouts == 0)
                yield return [];
            yield break;
        }
        for (var here = 1; here <= layouts - (bars.Count - from - 1); here++)
        {
            foreach (var parts in Parts(bars[from].Bars, here, 1))
            {
                foreach (var rest in Divisions(bars, from + 1, layouts - here))
                    yield return [.. parts.Select(part => (bars[from].Stock, part)), .. rest];
            }
        }
    }

    private static IEnumerable<List<int>> Parts(int total, int parts, int least)
    {
        if (parts == 1)
        {
            yield return [total];
            yield break;
        }
        for (var first = least; first <= total / parts; first++)
        {
            foreach (var rest in Parts(total - first, parts - 1, first))
                yield return [first, .. rest];
        }
    }

    private bool Fill(List<(int Stock, int Repeat)> division)
    {
        var types = new List<(int Type, List<int[]> Shares)>();
        foreach (var type in _fewestFirst)
        {
            var shares = new List<int[]>();
            Share(_totals[type], division, new int[division.Count], 0, shares);
            if (shares.Count == 0 || _budget.Exhausted)
                return false;
            types.Add((type, shares));
        }
        _bars = division.ConvertAll(part => new Bars(part.Stock, part.Repeat, new int[_totals.Length]));
        return Fill([.. types.OrderBy(type => type.Shares.Count)], 0);
    }

    /// <summary>All ways in which the layouts from one on can make up a total of pieces of one type.</summary>
    private void Share(long left, List<(int Stock, int Repeat)> division, int[] share, int from, List<int[]> found)
    {
        if (!_budget.Spend(1))
            return;
        if (from == division.Count - 1)
        {
            if (left % division[from].Repeat == 0)
                found.Add([.. share[..from], (int)(left / division[from].Repeat)]);
            return;
        }
        for (share[from] = 0; left >= 0 && !_budget.Exhausted; share[from]++, left -= division[from].Repeat)
            Share(left, division, share, from + 1, found);
    }

    private bool Fill(List<(int Type, List<int[]> Shares)> types, int from)
    {
        if (from == types.Count)
            return _bars.Sum(bar => bar.Repeat * _cost(bar.Stock, bar.Counts)) <= _costLimit;
        var (type, shares) = types[from];
        foreach (var share in shares)
        {
            for (var bar = 0; bar < share.Length; bar++)
                _bars[bar].Counts[type] = share[bar];
            if (_bars.All(bar => bar.Counts[type] == 0 || _budget.Spend(1) && _fits(bar.Stock, bar.Counts)) && Fill(types, from + 1))
                return true;
            if (_budget.Exhausted)
                return false;
        }
        foreach (var bar in _bars)
            bar.Counts[type] = 0;
        return false;
    }

    private sealed record Bars(int Stock, int Repeat, int[] Counts);
}
