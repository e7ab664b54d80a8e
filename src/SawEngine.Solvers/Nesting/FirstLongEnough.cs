using System.Numerics;

namespace SawEngine.Solvers.Nesting;

/// <summary>Lengths in a row, of which the first that is long enough is found in a few steps: a tree of the longest of each half.</summary>
internal sealed class FirstLongEnough
{
    private readonly long[] _longest;
    private readonly int _leaves;

    public FirstLongEnough(IReadOnlyList<long> lengths)
    {
        _leaves = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(1, lengths.Count));
        _longest = new long[2 * _leaves];
        _longest.AsSpan().Fill(long.MinValue);
        for (var i = 0; i < lengths.Count; i++)
            _longest[_leaves + i] = lengths[i];
        for (var node = _leaves - 1; node > 0; node--)
            _longest[node] = Math.Max(_longest[2 * node], _longest[2 * node + 1]);
    }

    /// <summary>The first place from one on with at least a length; null where there is none.</summary>
    public int? First(long atLeast, int from)
    {
        if (from >= _leaves)
            return null;
        var node = _leaves + from;
        while (_longest[node] < atLeast)
        {
            while (node % 2 == 1)
                node /= 2;
            if (node++ == 0)
                return null;
        }
        while (node < _leaves)
            node = _longest[2 * node] >= atLeast ? 2 * node : 2 * node + 1;
        return node - _leaves;
    }

    /// <summary>Changes a length; a place without one is never found.</summary>
    public void Set(int place, long? length)
    {
        var node = _leaves + place;
        _longest[node] = length ?? long.MinValue;
        for (node /= 2; node > 0; node /= 2)
            _longest[node] = Math.Max(_longest[2 * node], _longest[2 * node + 1]);
    }
}
