using SawEngine.Solvers.Nesting.Proof;

namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>Finds layouts of least reduced cost for given duals of the pieces.</summary>
internal sealed class Pricer
{
    /// <summary>Cells of the longest bar where layouts need not be the very best.</summary>
    private const int CoarseCells = 16_384;

    /// <summary>Cells of the longest bar below which layouts are not worth their time.</summary>
    private const int LeastCells = 2_048;

    private const double LargestValue = 1.9e9;

    private readonly SearchPart _part;
    /// <summary>So many wedges are given away at most to find a layout that fits.</summary>
    private const int MostWedges = 4;

    private readonly int _wedge;
    private readonly FillTables _layouts;
    private readonly FillTables? _bounds;
    private readonly BestFill[] _best;
    private readonly int[] _values;
    private readonly int[] _wanted;
    private readonly long[] _available;
    private double _scale = 1;
    private bool _isPriced;

    /// <summary>Where bounds have tables of their own, those of layouts are filled only once they are needed.</summary>
    private bool _hasLayouts;

    private readonly SearchMeter _meter;

    private Pricer(SearchPart part, PricingGrid layouts, PricingGrid? bounds, SearchMeter meter)
    {
        (_part, _meter) = (part, meter);
        _layouts = new(part, layouts);
        _bounds = bounds is null ? null : bounds.IsAs(layouts) ? _layouts : new(part, bounds);
        _wedge = (int)Math.Max(1, part.SafeSizes.Zip(part.LeastSizes, (safe, least) => safe - least).DefaultIfEmpty().Max() / 2 / (bounds ?? layouts).Unit);
        _best = new BestFill[part.Bars.Count];
        _values = new int[part.Demand.Count];
        (_wanted, _available) = (new int[part.Demand.Count], new long[part.Bars.Count]);
    }

    /// <summary>Whether layouts and bounds are on the grid of the sizes themselves.</summary>
    public bool IsExact => ReferenceEquals(_bounds, _layouts);

    /// <summary>Prices with bounds, on the grid of the sizes themselves or, where that has more cells, on a rounded one.</summary>
    public static Pricer Fine(SearchPart part, int mostCells, SearchMeter meter)
    {
        mostCells = Math.Min(mostCells, FillTables.MostCells(part));
        return new(part, PricingGrid.ForLayouts(part, mostCells), PricingGrid.ForBounds(part, mostCells), meter);
    }

    /// <summary>Prices quickly, on rounded grids; without bounds where the place of a piece on a bar does not matter.</summary>
    public static Pricer Coarse(SearchPart part, SearchMeter meter)
    {
        var cells = Math.Min(CoarseCells, FillTables.MostCells(part));
        return new(part, PricingGrid.ForLayouts(part, cells), part.LeastSizes.SequenceEqual(part.SafeSizes) ? null : PricingGrid.ForBounds(part, cells), meter);
    }

    /// <summary>Whether the tables of a part would be too many or too large for cells small enough to be of use.</summary>
    public static bool IsTooLarge(SearchPart part) => FillTables.MostCells(part) < LeastCells;

    /// <summary>Prices all bars that are there, for no more pieces than are wanted; none where canceled.</summary>
    public void Price(ReadOnlySpan<double> duals, ReadOnlySpan<int> wanted, ReadOnlySpan<long> available)
    {
        _scale = ScaleOf(duals, wanted);
        for (var type = 0; type < _values.Length; type++)
            _values[type] = wanted[type] == 0 ? 0 : (int)(Math.Max(0, duals[type]) * _scale);
        var best = _bounds ?? _layouts;
        _isPriced = best.Fill(_values, wanted, available, _meter);
        _hasLayouts = ReferenceEquals(best, _layouts);
        wanted.CopyTo(_wanted);
        available.CopyTo(_available);
        for (var bars = 0; bars < _best.Length; bars++)
            _best[bars] = _isPriced && available[bars] > 0 ? best.BestOf(bars, _scale, 1) : BestFill.None;
    }

    /// <summary>What the best fill of some bars is worth beyond their cost, in the unit of the duals.</summary>
    public double Gain(int bars) => _best[bars].Set < 0 ? double.NegativeInfinity : _best[bars].Value / _scale - _part.Bars[bars].CostMicros;

    /// <summary>The layout behind the best fill of some bars; where that does not fit, one that surely does.</summary>
    public Column? ColumnOf(int bars)
    {
        if (_bounds is null || IsExact)
            return _layouts.ColumnOf(bars, _best[bars]);
        // Of what the bound thinks best, a little less may fit where not all faces are parallel.
        for (var (wedges, cells) = (0, _best[bars].Cells); wedges <= MostWedges && cells >= 0; wedges++, cells -= _wedge)
        {
            if (_bounds.ColumnOf(bars, _best[bars] with { Cells = cells }) is { } column)
                return column;
        }
        _hasLayouts = _hasLayouts || _layouts.Fill(_values, _wanted, _available, _meter);
        return _hasLayouts ? _layouts.ColumnOf(bars, _layouts.BestOf(bars, _scale, 1)) : null;
    }

    /// <summary>
    /// No nest of the wanted pieces from the bars that were priced costs less, in millionths: the Lagrangian bound (Lasdon 1970) in whole numbers. What pieces are
    /// worth is rounded down, what a bar gives for them and its remainder up, and duals are first scaled down until no bars that never run out gain by them.
    /// </summary>
    public double SafeBound(ReadOnlySpan<int> wanted, ReadOnlySpan<long> available)
    {
        var tables = _bounds ?? throw new InvalidOperationException("This pricer has no bounds.");
        if (!_isPriced)
            return double.NegativeInfinity;
        var factor = Factor(tables, available);
        var bound = 0d;
        for (var type = 0; type < _values.Length; type++)
            bound += Math.Floor(_values[type] * factor) * wanted[type];
        for (var bars = 0; bars < _best.Length; bars++)
        {
            if (available[bars] <= 0)
                continue;
            bound -= available[bars] * ScaledGain(tables, bars, factor);
        }
        return bound / _scale;
    }

    /// <summary>The same bound in whole millionths with the duals that it stands on; null where nothing was priced.</summary>
    public SafeDuals? SafeDualsOf(ReadOnlySpan<int> wanted, ReadOnlySpan<long> available)
    {
        var tables = _bounds ?? throw new InvalidOperationException("This pricer has no bounds.");
        if (!_isPriced)
            return null;
        var factor = Factor(tables, available);
        var (values, gains, bound) = (new long[_values.Length], new long[_best.Length], 0L);
        for (var type = 0; type < values.Length; type++)
        {
            values[type] = (long)Math.Floor(Math.Floor(_values[type] * factor) / _scale);
            bound += values[type] * wanted[type];
        }
        for (var bars = 0; bars < gains.Length; bars++)
        {
            if (available[bars] <= 0 || !_part.Bars[bars].IsLimited)
                continue;
            // What doubles lose is far below one millionth.
            gains[bars] = ScaledGain(tables, bars, factor) is > 0 and var gain ? (long)Math.Ceiling(gain / _scale) + 1 : 0;
            bound -= available[bars] * gains[bars];
        }
        return new(values, gains, bound);
    }

    private double Factor(FillTables tables, ReadOnlySpan<long> available)
    {
        var factor = 1d;
        for (var bars = 0; bars < _best.Length; bars++)
        {
            if (_part.Bars[bars].IsLimited || available[bars] <= 0)
                continue;
            // Ratios fall step by step to the least one (Dinkelbach 1967).
            for (var step = 0; step < 20; step++)
            {
                var best = tables.BestOf(bars, _scale, factor);
                if (best.Set < 0 || best.Value <= ScaledCost(bars) || best.Pieces <= 0)
                    break;
                factor = Math.Max(0, Math.Min(factor, (ScaledCost(bars) - best.Credit) / best.Pieces) * (1 - 1e-12));
            }
        }
        return factor;
    }

    /// <summary>What the best fill of some bars gives beyond their cost, where pieces count by a factor.</summary>
    private double ScaledGain(FillTables tables, int bars, double factor)
    {
        var best = factor == 1 ? _best[bars] : tables.BestOf(bars, _scale, factor);
        return best.Set < 0 ? 0 : Math.Max(0, best.Value - ScaledCost(bars));
    }

    private double ScaledCost(int bars) => Math.Floor(_part.Bars[bars].CostMicros * _scale) - 1;

    /// <summary>So that no table can overflow, and the greatest value is as large as may be.</summary>
    private double ScaleOf(ReadOnlySpan<double> duals, ReadOnlySpan<int> wanted)
    {
        var greatest = _part.Bars.Max(bars => (double)Math.Abs(bars.CostMicros));
        foreach (var grid in new[] { _layouts.Grid, (_bounds ?? _layouts).Grid })
        {
            var longest = Math.Max(1, grid.Cells.Max());
            var (density, without) = (0d, 0d);
            for (var type = 0; type < duals.Length; type++)
            {
                density = Math.Max(density, duals[type] / Math.Max(1, grid.Sizes[type]));
                without += grid.Sizes[type] == 0 ? Math.Max(0, duals[type]) * wanted[type] : 0;
            }
            greatest = Math.Max(greatest, density * longest + without);
        }
        return LargestValue / Math.Max(greatest, 1);
    }
}
