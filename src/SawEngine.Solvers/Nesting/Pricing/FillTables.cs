using System.Numerics;

namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>The knapsack tables of one grid: one for each set of pieces that can lie on a bar together.</summary>
internal sealed class FillTables(SearchPart part, PricingGrid grid)
{
    /// <summary>A bit for each cell and item: no more than 256 MB.</summary>
    private const long MostBits = int.MaxValue;

    /// <summary>Bits of the values of a cell, beside those of its items.</summary>
    private const int ValueBits = 32;

    private readonly KnapsackTable[] _tables = [.. part.Together.Select(_ => new KnapsackTable())];
    private readonly RemainderCredit?[] _credits =
        [.. part.Bars.Select((bars, i) => bars.IsCredited && grid.Cells[i] >= 0 ? new RemainderCredit(bars, grid.Unit, grid.Cells[i]) : null)];

    public PricingGrid Grid => grid;

    /// <summary>The most cells of which a part's tables do not take too much memory.</summary>
    public static int MostCells(SearchPart part)
    {
        var items = part.Demand.Select(demand => BitOperations.Log2((uint)Math.Max(1, demand)) + 1).ToArray();
        return (int)(MostBits / Math.Max(1, part.Together.Sum(set => ValueBits + items.Where((_, type) => set[type]).Sum(count => (long)count))));
    }

    /// <summary>Fills the tables for the bars that are there; false where canceled: then they must not be read.</summary>
    public bool Fill(ReadOnlySpan<int> values, ReadOnlySpan<int> wanted, ReadOnlySpan<long> available, SearchMeter meter)
    {
        var counts = new int[wanted.Length];
        for (var set = 0; set < _tables.Length; set++)
        {
            var capacity = -1;
            for (var bars = 0; bars < grid.Cells.Length; bars++)
            {
                if (available[bars] > 0 && Array.Exists(part.SetsOf[bars], one => one.Set == set))
                    capacity = Math.Max(capacity, grid.Cells[bars]);
            }
            if (capacity < 0)
                continue;
            for (var type = 0; type < counts.Length; type++)
                counts[type] = part.Together[set][type] ? wanted[type] : 0;
            if (!_tables[set].Fill(grid.Sizes, values, counts, capacity, meter))
                return false;
        }
        return true;
    }

    /// <summary>The fill of greatest value, where pieces count by a factor and remainders by a scale.</summary>
    public BestFill BestOf(int bars, double scale, double factor)
    {
        var best = BestFill.None;
        if (grid.Cells[bars] < 0)
            return best;
        foreach (var (set, transfer) in part.SetsOf[bars])
        {
            var (cells, credit) = _credits[bars]?.Best(_tables[set].Values[..(grid.Cells[bars] + 1)], scale, factor) ?? (grid.Cells[bars], 0L);
            var pieces = _tables[set].ValueOf(cells);
            // Bringing a bar to another plant takes from what it gives.
            credit -= (long)Math.Floor(transfer * scale);
            var value = (long)Math.Ceiling(pieces * factor) + credit;
            if (best.Set < 0 || value > best.Value)
                best = new(set, cells, value, pieces, credit);
        }
        return best;
    }

    /// <summary>The layout behind a fill; null where it has no pieces or does not fit.</summary>
    public Column? ColumnOf(int bars, BestFill fill)
    {
        if (fill.Set < 0)
            return null;
        var counts = new int[grid.Sizes.Length];
        _tables[fill.Set].Trace(fill.Cells, counts);
        return part.ColumnOf(bars, counts);
    }
}
