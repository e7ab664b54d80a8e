using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Proof;

/// <summary>
/// All layouts that lose no more than an allowance against the duals of a bound. A nest costs the bound and what its layouts lose, and more where bars that gain are not
/// used; so no nest that costs at most the bound and the allowance holds any other layout (Baldacci, Christofides and Mingozzi 2008). They are counted out type by type,
/// where a table says that the rest of the bar can still give enough.
/// </summary>
internal sealed class LayoutPool
{
    private const int Cells = 8_192;
    private const int MostLayouts = 20_000;
    private const int StepsPerLayout = 20;
    private const int CellsPerStep = 16;

    private readonly SearchPart _part;
    private readonly SafeDuals _duals;
    private readonly StepBudget _budget;
    private readonly PricingGrid _grid;
    private readonly long[][] _tables;
    private readonly int[] _counts;
    private readonly HashSet<Column> _known = [];

    private LayoutPool(SearchPart part, SafeDuals duals, StepBudget budget)
    {
        (_part, _duals, _budget) = (part, duals, budget);
        _grid = PricingGrid.ForBounds(part, Cells);
        _tables = [.. Enumerable.Repeat(Array.Empty<long>(), part.Demand.Count + 1)];
        _counts = new int[part.Demand.Count];
    }

    public List<Column> Columns { get; } = [];

    /// <summary>Whether there are too many.</summary>
    public bool IsCut => Columns.Count > MostLayouts || _budget.Exhausted;

    /// <summary>Whether every layout that the bound allows can be cut, and costs what the bound thinks: only then no nest holds any other.</summary>
    public bool IsExact { get; private set; } = true;

    public static LayoutPool Of(SearchPart part, SafeDuals duals, long allowance, StepBudget budget)
    {
        var pool = new LayoutPool(part, duals, budget);
        var kinds = Enumerable.Range(0, part.Bars.Count).Where(bars => part.Bars[bars].Available > 0 && pool._grid.Cells[bars] >= 0)
            .SelectMany(bars => part.SetsOf[bars].Select(one => (Bars: bars, one.Set, one.Transfer)));
        // Bars without a credit share the tables of the longest of them.
        foreach (var alike in kinds.GroupBy(kind => (kind.Set, Credited: part.Bars[kind.Bars].IsCredited ? kind.Bars : -1)).TakeWhile(_ => !pool.IsCut))
        {
            pool.FillTables(alike.MaxBy(kind => pool._grid.Cells[kind.Bars]).Bars, part.Together[alike.Key.Set]);
            foreach (var (bars, set, transfer) in alike)
                pool.AddLayouts(bars, part.Together[set], transfer, allowance);
        }
        return pool;
    }

    private void AddLayouts(int bars, bool[] set, long transfer, long allowance)
    {
        var needed = _part.Bars[bars].CostMicros + transfer + _duals.Gains[bars] - allowance;
        if (!IsCut && _tables[0][_grid.Cells[bars]] >= needed)
            CountOut(bars, set, transfer, 0, _grid.Cells[bars], needed);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void CountOut(int bars, bool[] set, long transfer, int type, int cells, long needed)
    {
        if (type == _counts.Length)
        {
            Add(bars, set, transfer);
            return;
        }
        var (size, value) = (_grid.Sizes[type], _duals.Values[type]);
        for (var count = MostOf(set, type, cells); count >= 0 && !IsCut; count--)
        {
            if (_tables[type + 1][cells - count * size] < needed - count * value)
                continue;
            _counts[type] = count;
            CountOut(bars, set, transfer, type + 1, cells - count * size, needed - count * value);
        }
        _counts[type] = 0;
    }

    private void Add(int bars, bool[] set, long transfer)
    {
        var use = SearchPart.TotalOf(_part.LeastSizes, _counts);
        if (use > _part.Bars[bars].LeastRoom || (_part.Bars[bars].IsFixed && HasRoomForMore(bars, set)))
            return;
        var column = _part.ColumnOf(bars, _counts);
        if (column is null || column.CostMicros > _part.Bars[bars].CostMicros + transfer - _part.Bars[bars].MostCredit(use))
            IsExact &= _counts.AsSpan().IndexOfAnyExcept(0) < 0;
        if (column is not null && _known.Add(column))
            Columns.Add(column);
        _budget.Spend(StepsPerLayout);
    }

    /// <summary>Where bars cost the same whatever is cut from them, a layout with room for another piece is of no use.</summary>
    private bool HasRoomForMore(int bars, bool[] set)
    {
        var room = _part.Bars[bars].SafeRoom - SearchPart.TotalOf(_part.SafeSizes, _counts);
        for (var type = 0; type < _counts.Length; type++)
        {
            if (set[type] && _counts[type] < _part.Demand[type] && _part.SafeSizes[type] <= room)
                return true;
        }
        return false;
    }

    private int MostOf(bool[] set, int type, int cells)
    {
        if (!set[type])
            return 0;
        return _grid.Sizes[type] == 0 ? _part.Demand[type] : Math.Min(_part.Demand[type], cells / _grid.Sizes[type]);
    }

    /// <summary>From the last type to the first: the most that the types from one on and what is left of the bar can be worth in some cells.</summary>
    private void FillTables(int bars, bool[] set)
    {
        var cells = _grid.Cells[bars];
        if (_tables[0].Length <= cells)
        {
            for (var i = 0; i < _tables.Length; i++)
                _tables[i] = new long[cells + 1];
        }
        FillCredits(_part.Bars[bars], _tables[^1].AsSpan(0, cells + 1));
        for (var type = _counts.Length - 1; type >= 0 && !IsCut; type--)
        {
            var table = _tables[type].AsSpan(0, cells + 1);
            _tables[type + 1].AsSpan(0, cells + 1).CopyTo(table);
            foreach (var taken in BinarySplit.Of(MostOf(set, type, cells)))
                AddItem(table, taken * _grid.Sizes[type], taken * _duals.Values[type]);
        }
    }

    /// <summary>What is left is less than one cell longer than its cells.</summary>
    private void FillCredits(AlikeBars bars, Span<long> credits)
    {
        for (var left = 0; left < credits.Length; left++)
            credits[left] = bars.IsCredited ? bars.MostCredit(Math.Max(0, bars.LeastRoom - (left + 1L) * _grid.Unit)) : 0;
    }

    /// <summary>From the last cell down, so that an item is taken once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddItem(Span<long> table, int size, long value)
    {
        var end = table.Length;
        var gives = Vector256.Create(value);
        for (; end >= size + Vector256<long>.Count; end -= Vector256<long>.Count)
        {
            var at = end - Vector256<long>.Count;
            var with = Vector256.Create<long>(table[(at - size)..]) + gives;
            Vector256.Max(with, Vector256.Create<long>(table[at..])).CopyTo(table[at..]);
        }
        for (var cell = end - 1; cell >= size; cell--)
            table[cell] = Math.Max(table[cell], table[cell - size] + value);
        _budget.Spend(table.Length / CellsPerStep + 1);
    }
}
