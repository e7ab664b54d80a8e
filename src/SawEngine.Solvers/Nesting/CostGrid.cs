namespace SawEngine.Solvers.Nesting;

/// <summary>The sums that costs of bars can make: a bound may be rounded up to the next of them, where bars cost the same whatever is cut from them.</summary>
internal sealed class CostGrid
{
    private const int LargestTable = 1_000_000;

    private readonly List<long> _costs;
    private readonly bool _isFine;
    private (long Bound, long Sum) _last = (long.MinValue, long.MinValue);

    public CostGrid(IEnumerable<(long CostMicros, bool IsFixed)> bars)
    {
        var all = bars.ToList();
        _costs = [.. all.Select(bar => bar.CostMicros).Where(cost => cost > 0).Distinct().Order()];
        _isFine = _costs.Count == 0 || all.Exists(bar => !bar.IsFixed || bar.CostMicros < 0);
        Unit = _isFine ? 1 : _costs.Aggregate(GreatestCommonDivisor);
    }

    /// <summary>All sums are multiples of this.</summary>
    public long Unit { get; }

    /// <summary>The least sum of costs that is not below a bound; where the table would be large, the next multiple of their greatest common divisor.</summary>
    public long RoundUp(double bound)
    {
        // A double of this size is good to 16 digits; a part in a million millions is far beyond what a sum of products loses.
        var micros = (long)Math.Ceiling(bound - Math.Abs(bound) * 1e-12 - 1e-3);
        if (_isFine || micros <= 0)
            return micros;
        if (micros != _last.Bound)
            _last = (micros, SmallestSumFrom(micros));
        return _last.Sum;
    }

    private long SmallestSumFrom(long bound)
    {
        var units = (bound + Unit - 1) / Unit;
        var last = units + _costs[0] / Unit;
        if (last > LargestTable / _costs.Count)
            return units * Unit;
        var isSum = new bool[last + 1];
        isSum[0] = true;
        foreach (var cost in _costs)
        {
            for (var sum = cost / Unit; sum <= last; sum++)
                isSum[sum] |= isSum[sum - cost / Unit];
        }
        return Array.IndexOf(isSum, true, (int)units) * Unit;
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
