using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Master;

/// <summary>The linear program that chooses among layouts: every piece at least as often as wanted, no more bars than there are, at least cost.</summary>
internal sealed class MasterProgram
{
    /// <summary>A piece that is left out costs this many times the dearest bar, so that there is always a solution.</summary>
    private const double MissingPerBar = 3;

    private readonly RevisedSimplex _simplex;
    private readonly int[] _pieceRows;
    private readonly int[] _barRows;
    private readonly HashSet<Column> _known = [];
    private readonly double _costUnit;
    private double[] _levels = [];

    /// <summary>Rows are made for what is wanted and for bars that can run out.</summary>
    public MasterProgram(SearchPart part, ReadOnlySpan<int> wanted, ReadOnlySpan<long> available, SearchMeter meter)
    {
        _costUnit = Math.Max(1, part.Bars.Max(bars => (double)Math.Abs(bars.CostMicros)));
        var rows = new List<(bool, double)>();
        _pieceRows = new int[wanted.Length];
        for (var type = 0; type < wanted.Length; type++)
            _pieceRows[type] = wanted[type] == 0 ? -1 : Row(rows, true, wanted[type]);
        _barRows = new int[available.Length];
        for (var bars = 0; bars < available.Length; bars++)
            _barRows[bars] = part.Bars[bars].IsLimited && available[bars] > 0 ? Row(rows, false, available[bars]) : -1;
        _simplex = new(rows, MissingPerBar, meter);
        Duals = new double[wanted.Length];
        BarDuals = new double[available.Length];
    }

    /// <summary>All columns, in the order in which they were added.</summary>
    public List<Column> Columns { get; } = [];

    /// <summary>What one more piece would cost, in millionths.</summary>
    public double[] Duals { get; }

    /// <summary>What one more bar would cost: not above zero.</summary>
    public double[] BarDuals { get; }

    /// <summary>Cost of the last solution, in millionths.</summary>
    public double Value { get; private set; }

    /// <summary>Adds a layout; false where it is there already.</summary>
    public bool Add(Column column)
    {
        if (!_known.Add(column))
            return false;
        Span<(int, double)> coefficients = stackalloc (int, double)[column.Runs.Length + 1];
        for (var i = 0; i < column.Runs.Length; i++)
            coefficients[i] = (_pieceRows[column.Runs[i].Type], column.Runs[i].Count);
        coefficients[^1] = (_barRows[column.Bars], 1);
        _simplex.Add(column.CostMicros / _costUnit, _barRows[column.Bars] < 0 ? coefficients[..^1] : coefficients);
        Columns.Add(column);
        return true;
    }

    /// <summary>Asks for some of the pieces and bars; only layouts that give no more than is wanted are allowed.</summary>
    public void Ask(ReadOnlySpan<int> wanted, ReadOnlySpan<long> available)
    {
        for (var type = 0; type < _pieceRows.Length; type++)
        {
            if (_pieceRows[type] >= 0)
                _simplex.SetRight(_pieceRows[type], wanted[type]);
        }
        for (var bars = 0; bars < _barRows.Length; bars++)
        {
            if (_barRows[bars] >= 0)
                _simplex.SetRight(_barRows[bars], available[bars]);
        }
        for (var i = 0; i < Columns.Count; i++)
            _simplex.Allow(i, Columns[i].IsProper(wanted) && available[Columns[i].Bars] > 0);
    }

    /// <summary>False where no solution was found.</summary>
    public bool Solve()
    {
        if (!_simplex.Solve())
            return false;
        var duals = _simplex.Duals;
        for (var type = 0; type < _pieceRows.Length; type++)
            Duals[type] = _pieceRows[type] < 0 ? 0 : Math.Max(0, duals[_pieceRows[type]] * _costUnit);
        for (var bars = 0; bars < _barRows.Length; bars++)
            BarDuals[bars] = _barRows[bars] < 0 ? 0 : Math.Min(0, duals[_barRows[bars]] * _costUnit);
        Value = _simplex.Value * _costUnit;
        _levels = _simplex.Levels();
        return true;
    }

    /// <summary>How often a column is used in the last solution.</summary>
    public double ValueOf(int column) => column < _levels.Length ? _levels[column] : 0;

    private static int Row(List<(bool, double)> rows, bool isCover, double right)
    {
        rows.Add((isCover, right));
        return rows.Count - 1;
    }
}
