using Google.OrTools.LinearSolver;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Master;

/// <summary>The linear program that chooses among layouts: every piece at least as often as wanted, no more bars than there are, at least cost.</summary>
internal sealed class MasterProgram : IDisposable
{
    /// <summary>A piece that is left out costs this many times the dearest bar, so that there is always a solution.</summary>
    private const double MissingPerBar = 3;

    private readonly SearchMeter _meter;
    private readonly Solver _solver;
    private readonly MPSolverParameters _parameters = new();
    private readonly Constraint?[] _pieceRows;
    private readonly Constraint?[] _barRows;
    private readonly List<Variable> _variables = [];
    private readonly List<bool> _isAllowed = [];
    private readonly HashSet<Column> _known = [];
    private readonly double _costUnit;
    private int _rows;

    /// <summary>Rows are made for what is wanted and for bars that can run out.</summary>
    public MasterProgram(SearchPart part, ReadOnlySpan<int> wanted, ReadOnlySpan<long> available, SearchMeter meter)
    {
        _meter = meter;
        _solver = Solver.CreateSolver("CLP");
        _solver.SetNumThreads(1);
        _parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, (int)MPSolverParameters.IncrementalityValues.INCREMENTALITY_ON);
        _parameters.SetIntegerParam(MPSolverParameters.IntegerParam.PRESOLVE, (int)MPSolverParameters.PresolveValues.PRESOLVE_OFF);
        _parameters.SetIntegerParam(MPSolverParameters.IntegerParam.LP_ALGORITHM, (int)MPSolverParameters.LpAlgorithmValues.PRIMAL);
        _solver.Objective().SetMinimization();
        _costUnit = Math.Max(1, part.Bars.Max(bars => (double)Math.Abs(bars.CostMicros)));
        _pieceRows = new Constraint?[wanted.Length];
        for (var type = 0; type < wanted.Length; type++)
            _pieceRows[type] = wanted[type] == 0 ? null : PieceRow(wanted[type]);
        _barRows = new Constraint?[available.Length];
        for (var bars = 0; bars < available.Length; bars++)
            _barRows[bars] = part.Bars[bars].IsLimited && available[bars] > 0 ? Row(double.NegativeInfinity, available[bars]) : null;
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
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(variable, column.CostMicros / _costUnit);
        foreach (var (type, count) in column.Runs)
            _pieceRows[type]!.SetCoefficient(variable, count);
        _barRows[column.Bars]?.SetCoefficient(variable, 1);
        _variables.Add(variable);
        _isAllowed.Add(true);
        Columns.Add(column);
        return true;
    }

    /// <summary>Asks for some of the pieces and bars; only layouts that give no more than is wanted are allowed.</summary>
    public void Ask(ReadOnlySpan<int> wanted, ReadOnlySpan<long> available)
    {
        for (var type = 0; type < _pieceRows.Length; type++)
            _pieceRows[type]?.SetBounds(wanted[type], double.PositiveInfinity);
        for (var bars = 0; bars < _barRows.Length; bars++)
            _barRows[bars]?.SetBounds(double.NegativeInfinity, available[bars]);
        for (var i = 0; i < _variables.Count; i++)
        {
            var isAllowed = Columns[i].IsProper(wanted) && available[Columns[i].Bars] > 0;
            if (isAllowed == _isAllowed[i])
                continue;
            _isAllowed[i] = isAllowed;
            _variables[i].SetUb(isAllowed ? double.PositiveInfinity : 0);
        }
    }

    /// <summary>False where no solution was found.</summary>
    public bool Solve()
    {
        if (_solver.Solve(_parameters) != Solver.ResultStatus.OPTIMAL)
            return false;
        for (var type = 0; type < _pieceRows.Length; type++)
            Duals[type] = Math.Max(0, (_pieceRows[type]?.DualValue() ?? 0) * _costUnit);
        for (var bars = 0; bars < _barRows.Length; bars++)
            BarDuals[bars] = Math.Min(0, (_barRows[bars]?.DualValue() ?? 0) * _costUnit);
        Value = _solver.Objective().Value() * _costUnit;
        _meter.CountPivots(_solver.Iterations(), _rows);
        return true;
    }

    /// <summary>How often a column is used in the last solution.</summary>
    public double ValueOf(int column) => _variables[column].SolutionValue();

    public void Dispose()
    {
        _parameters.Dispose();
        _solver.Dispose();
    }

    private Constraint PieceRow(int wanted)
    {
        var row = Row(wanted, double.PositiveInfinity);
        var missing = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(missing, MissingPerBar);
        row.SetCoefficient(missing, 1);
        return row;
    }

    private Constraint Row(double least, double most)
    {
        _rows++;
        return _solver.MakeConstraint(least, most);
    }
}
