using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SawEngine.Solvers.Nesting.Master;

/// <summary>
/// A small linear program that grows by columns: at least cost, some rows at least their right side, others at most. The revised simplex method with an explicit
/// inverse (Dantzig and Orchard-Hays 1954), primal after columns came, dual (Lemke 1954) after right sides changed; both begin where the last solution ended.
/// <para>
/// Nothing that leaves the engine rests on its digits: layouts are whole numbers and bounds are made safe from any duals.
/// </para>
/// </summary>
internal sealed class RevisedSimplex
{
    private const double Tolerance = 1e-9;
    private const double LeastPivot = 1e-7;
    private const int PivotsPerInverse = 100;
    private const int Lanes = 4;
    private const int MostPivots = 1_000;
    private const int MostPivotsPerRow = 50;
    private const int MostRepairsPerRow = 5;
    private const int MostStillPerRow = 2;

    private readonly SearchMeter _meter;
    private readonly int _rows;
    private readonly int _stride;
    private readonly bool[] _isCover;
    private readonly double[] _right;
    private readonly double[] _unitCosts;

    // Variables: one unit of each row (a shortfall of a cover, the slack of a limit), one surplus of each row, then the columns.
    private readonly List<int> _starts = [0];
    private readonly List<int> _columnRows = [];
    private readonly List<double> _coefficients = [];
    private readonly List<double> _costs = [];
    private readonly List<bool> _isAllowed = [];
    private readonly List<bool> _isBasic = [];

    private readonly int[] _basis;
    private readonly double[] _inverse;
    private readonly double[] _levels;
    private readonly double[] _direction;
    private readonly double[] _duals;
    private int _pivotsOfInverse;
    private int _pivotsLeft;

    /// <summary>Rows with their right sides: a cover is met at least, at a price for each that is missing; a limit is never passed.</summary>
    public RevisedSimplex(IReadOnlyList<(bool IsCover, double Right)> rows, double priceOfMissing, SearchMeter meter)
    {
        (_meter, _rows) = (meter, rows.Count);
        _stride = (_rows + Lanes - 1) / Lanes * Lanes;
        _isCover = [.. rows.Select(row => row.IsCover)];
        _right = [.. rows.Select(row => row.Right)];
        _unitCosts = [.. rows.Select(row => row.IsCover ? priceOfMissing : 0)];
        _basis = new int[_rows];
        _inverse = new double[_rows * _stride];
        (_levels, _direction, _duals) = (new double[_rows], new double[_rows], new double[_stride]);
        CollectionsMarshal.SetCount(_isBasic, 2 * _rows);
        Restart();
    }

    /// <summary>Price of each row.</summary>
    public ReadOnlySpan<double> Duals => _duals.AsSpan(0, _rows);

    /// <summary>Cost of the last solution.</summary>
    public double Value
    {
        get
        {
            var value = 0d;
            for (var row = 0; row < _rows; row++)
                value += CostOf(_basis[row]) * _levels[row];
            return value;
        }
    }

    /// <summary>Adds a column of coefficients.</summary>
    public void Add(double cost, ReadOnlySpan<(int Row, double Coefficient)> coefficients)
    {
        foreach (var (row, coefficient) in coefficients)
        {
            _columnRows.Add(row);
            _coefficients.Add(coefficient);
        }
        _starts.Add(_columnRows.Count);
        _costs.Add(cost);
        _isAllowed.Add(true);
        _isBasic.Add(false);
    }

    /// <summary>Changes a right side; <see cref="Solve"/> takes it up.</summary>
    public void SetRight(int row, double right) => _right[row] = right;

    /// <summary>Allows a column or keeps it at nil.</summary>
    public void Allow(int column, bool isAllowed) => _isAllowed[column] = isAllowed;

    /// <summary>How often each column is used in the last solution.</summary>
    public double[] Levels()
    {
        var levels = new double[_costs.Count];
        for (var row = 0; row < _rows; row++)
        {
            if (_basis[row] >= 2 * _rows)
                levels[_basis[row] - 2 * _rows] = _levels[row];
        }
        return levels;
    }

    /// <summary>False where no solution was found in a great number of pivots, or the caller has no more time.</summary>
    public bool Solve()
    {
        _pivotsLeft = MostPivots + MostPivotsPerRow * _rows;
        SetLevels();
        if (!Repair())
            Restart();
        _meter.CountPivot(_rows);
        return Improve();
    }

    /// <summary>The basis of no columns at all.</summary>
    private void Restart()
    {
        Array.Clear(_inverse);
        CollectionsMarshal.AsSpan(_isBasic).Clear();
        for (var row = 0; row < _rows; row++)
        {
            _basis[row] = row;
            _isBasic[row] = true;
            _inverse[row * _stride + row] = 1;
        }
        _pivotsOfInverse = 0;
        _unitCosts.CopyTo(_duals, 0);
        _right.CopyTo(_levels, 0);
    }

    /// <summary>Primal: columns of negative reduced cost come in until there is none.</summary>
    private bool Improve()
    {
        var still = 0;
        while (_pivotsLeft > 0 && !_meter.IsCanceled)
        {
            var entering = still <= MostStillPerRow * _rows + 20 ? MostNegative() : FirstNegative();
            if (entering < 0)
                return true;
            var reducedCost = ReducedCost(entering);
            SetDirection(entering);
            var leaving = Leaving();
            if (leaving < 0)
                return false;
            still = _levels[leaving] > Tolerance ? 0 : still + 1;
            Pivot(leaving, entering, reducedCost);
        }
        return false;
    }

    /// <summary>Dual: what fell below nil, and columns that are not allowed, go out.</summary>
    private bool Repair()
    {
        for (var left = MostRepairsPerRow * _rows; ; left--)
        {
            var leaving = MostWrong();
            if (leaving < 0)
                return true;
            if (left == 0 || _pivotsLeft == 0 || _meter.IsCanceled || Entering(leaving, _levels[leaving] < 0) is not { } entering)
                return false;
            SetDirection(entering);
            if (Math.Abs(_direction[leaving]) < LeastPivot)
                return false;
            Pivot(leaving, entering, ReducedCost(entering));
        }
    }

    private int MostWrong()
    {
        var (worst, most) = (-1, 1e-7);
        for (var row = 0; row < _rows; row++)
        {
            var wrong = _levels[row] < 0 ? -_levels[row] : IsAllowed(_basis[row]) ? 0 : _levels[row];
            if (wrong > most)
                (worst, most) = (row, wrong);
        }
        return worst;
    }

    private int MostNegative()
    {
        var (best, least) = (-1, -Tolerance);
        for (var variable = 0; variable < _isBasic.Count; variable++)
        {
            if (_isBasic[variable] || !IsAllowed(variable))
                continue;
            var reducedCost = ReducedCost(variable);
            if (reducedCost < least)
                (best, least) = (variable, reducedCost);
        }
        return best;
    }

    /// <summary>Bland's rule (1977), which cannot go in circles.</summary>
    private int FirstNegative()
    {
        for (var variable = 0; variable < _isBasic.Count; variable++)
        {
            if (!_isBasic[variable] && IsAllowed(variable) && ReducedCost(variable) < -Tolerance)
                return variable;
        }
        return -1;
    }

    private int Leaving()
    {
        var (best, least, pivot) = (-1, double.PositiveInfinity, 0d);
        for (var row = 0; row < _rows; row++)
        {
            var step = _direction[row];
            var isFixed = !IsAllowed(_basis[row]);
            if (isFixed ? Math.Abs(step) < LeastPivot : step < LeastPivot)
                continue;
            var ratio = isFixed ? 0 : Math.Max(0, _levels[row]) / step;
            if (ratio < least - Tolerance || (ratio < least + Tolerance && Math.Abs(step) > pivot))
                (best, least, pivot) = (row, Math.Min(ratio, least), Math.Abs(step));
        }
        return best;
    }

    private int? Entering(int leaving, bool isBelow)
    {
        var row = _inverse.AsSpan(leaving * _stride, _stride);
        var (best, least, pivot) = (-1, double.PositiveInfinity, 0d);
        for (var variable = 0; variable < _isBasic.Count; variable++)
        {
            if (_isBasic[variable] || !IsAllowed(variable))
                continue;
            var step = Along(variable, row);
            if (isBelow)
                step = -step;
            if (step < LeastPivot)
                continue;
            var ratio = Math.Max(0, ReducedCost(variable)) / step;
            if (ratio < least - Tolerance || (ratio < least + Tolerance && step > pivot))
                (best, least, pivot) = (variable, Math.Min(ratio, least), step);
        }
        return best < 0 ? null : best;
    }

    private void Pivot(int leaving, int entering, double reducedCost)
    {
        _pivotsLeft--;
        _meter.CountPivot(_rows);
        _isBasic[_basis[leaving]] = false;
        _isBasic[entering] = true;
        _basis[leaving] = entering;
        Eliminate(leaving);
        if (++_pivotsOfInverse >= PivotsPerInverse)
        {
            Invert();
            return;
        }
        AddTo(_duals, _inverse.AsSpan(leaving * _stride, _stride), reducedCost);
    }

    /// <summary>Brings the direction to a unit in one row of the inverse and the levels.</summary>
    private void Eliminate(int leaving)
    {
        var pivot = _inverse.AsSpan(leaving * _stride, _stride);
        var factor = 1 / _direction[leaving];
        for (var i = 0; i < pivot.Length; i++)
            pivot[i] *= factor;
        _levels[leaving] *= factor;
        for (var row = 0; row < _rows; row++)
        {
            if (row == leaving || _direction[row] == 0)
                continue;
            AddTo(_inverse.AsSpan(row * _stride, _stride), pivot, -_direction[row]);
            _levels[row] -= _direction[row] * _levels[leaving];
        }
    }

    /// <summary>The inverse anew from the basis, by largest pivots.</summary>
    private void Invert()
    {
        var basis = _basis.Where(variable => variable >= _rows).ToList();
        var units = _basis.Where(variable => variable < _rows).ToHashSet();
        Restart();
        foreach (var variable in basis)
        {
            SetDirection(variable);
            var leaving = -1;
            for (var row = 0; row < _rows; row++)
            {
                if (_basis[row] == row && !units.Contains(row) && (leaving < 0 || Math.Abs(_direction[row]) > Math.Abs(_direction[leaving])))
                    leaving = row;
            }
            if (leaving < 0 || Math.Abs(_direction[leaving]) < LeastPivot)
                continue;
            (_isBasic[leaving], _isBasic[variable], _basis[leaving]) = (false, true, variable);
            Eliminate(leaving);
        }
        SetDuals();
    }

    private void SetLevels()
    {
        for (var row = 0; row < _rows; row++)
        {
            var level = 0d;
            for (var i = 0; i < _rows; i++)
                level += _inverse[row * _stride + i] * _right[i];
            _levels[row] = level;
        }
    }

    private void SetDuals()
    {
        Array.Clear(_duals);
        for (var row = 0; row < _rows; row++)
            AddTo(_duals, _inverse.AsSpan(row * _stride, _stride), CostOf(_basis[row]));
    }

    private void SetDirection(int variable)
    {
        for (var row = 0; row < _rows; row++)
            _direction[row] = Along(variable, _inverse.AsSpan(row * _stride, _stride));
    }

    private double ReducedCost(int variable) => CostOf(variable) - Along(variable, _duals);

    private double CostOf(int variable) => variable < _rows ? _unitCosts[variable] : variable < 2 * _rows ? 0 : _costs[variable - 2 * _rows];

    private bool IsAllowed(int variable) => variable < _rows || (variable < 2 * _rows ? _isCover[variable - _rows] : _isAllowed[variable - 2 * _rows]);

    /// <summary>The product of a row and a variable's coefficients.</summary>
    private double Along(int variable, ReadOnlySpan<double> row)
    {
        if (variable < _rows)
            return row[variable];
        if (variable < 2 * _rows)
            return -row[variable - _rows];
        var (product, column) = (0d, variable - 2 * _rows);
        var rows = CollectionsMarshal.AsSpan(_columnRows)[_starts[column].._starts[column + 1]];
        var coefficients = CollectionsMarshal.AsSpan(_coefficients)[_starts[column].._starts[column + 1]];
        for (var i = 0; i < rows.Length; i++)
            product += row[rows[i]] * coefficients[i];
        return product;
    }

    /// <summary>Lane by lane, so that digits are equal on every machine.</summary>
    private static void AddTo(Span<double> sum, ReadOnlySpan<double> row, double factor)
    {
        var times = Vector256.Create(factor);
        ref var to = ref MemoryMarshal.GetReference(sum);
        ref var from = ref MemoryMarshal.GetReference(row);
        for (nuint i = 0; i < (nuint)row.Length; i += Lanes)
            (Vector256.LoadUnsafe(ref to, i) + Vector256.LoadUnsafe(ref from, i) * times).StoreUnsafe(ref to, i);
    }
}
