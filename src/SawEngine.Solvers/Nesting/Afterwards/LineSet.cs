using System.Numerics;

namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>A set of line numbers 0 … n-1 as bits.</summary>
internal sealed class LineSet : IEquatable<LineSet>
{
    private readonly ulong[] _words;

    public LineSet(int lines) => _words = new ulong[(lines + 63) / 64];

    private LineSet(ulong[] words) => _words = words;

    public int Count
    {
        get
        {
            var count = 0;
            foreach (var word in _words)
                count += BitOperations.PopCount(word);
            return count;
        }
    }

    public bool Contains(int line) => (_words[line >> 6] >> (line & 63) & 1) != 0;

    public void Add(int line) => _words[line >> 6] |= 1UL << (line & 63);

    public void Remove(int line) => _words[line >> 6] &= ~(1UL << (line & 63));

    public void Add(LineSet other)
    {
        for (var word = 0; word < _words.Length; word++)
            _words[word] |= other._words[word];
    }

    public LineSet Copy() => new((ulong[])_words.Clone());

    /// <summary>How many lines of this set are not in another.</summary>
    public int CountBeyond(LineSet other)
    {
        var count = 0;
        for (var word = 0; word < _words.Length; word++)
            count += BitOperations.PopCount(_words[word] & ~other._words[word]);
        return count;
    }

    /// <summary>How many lines of this set are neither in one set nor in another.</summary>
    public int CountBeyond(LineSet one, LineSet another)
    {
        var count = 0;
        for (var word = 0; word < _words.Length; word++)
            count += BitOperations.PopCount(_words[word] & ~one._words[word] & ~another._words[word]);
        return count;
    }

    public int CountShared(LineSet other)
    {
        var count = 0;
        for (var word = 0; word < _words.Length; word++)
            count += BitOperations.PopCount(_words[word] & other._words[word]);
        return count;
    }

    /// <summary>The lines in ascending order.</summary>
    public IEnumerable<int> Lines()
    {
        for (var word = 0; word < _words.Length; word++)
        {
            for (var bits = _words[word]; bits != 0; bits &= bits - 1)
                yield return (word << 6) + BitOperations.TrailingZeroCount(bits);
        }
    }

    public bool Equals(LineSet? other) => other is not null && _words.AsSpan().SequenceEqual(other._words);

    public override bool Equals(object? obj) => Equals(obj as LineSet);

    public override int GetHashCode()
    {
        var hash = 17UL;
        foreach (var word in _words)
            hash = unchecked((hash ^ word) * 0x9E3779B97F4A7C15UL) ^ hash >> 29;
        return unchecked((int)(hash ^ hash >> 32));
    }
}
