using System.Text;

namespace SawEngine.Benchmarks.Quality;

/// <summary>SplitMix64 (Steele, Lea and Flood 2014): the same numbers on every machine and under every runtime.</summary>
internal sealed class SplitMix(ulong state)
{
    private ulong _state = state;

    /// <summary>The stream of one instance of a set.</summary>
    public static SplitMix Of(string set, int seed)
    {
        unchecked
        {
            // FNV-1a, so that sets of one seed have nothing in common.
            var hash = 14695981039346656037UL;
            foreach (var part in Encoding.UTF8.GetBytes(set))
                hash = (hash ^ part) * 1099511628211UL;
            return new(hash + (ulong)seed);
        }
    }

    /// <summary>A whole number, uniform on both ends included.</summary>
    public int Between(int least, int most) => least + (int)Math.BigMul(Next(), (ulong)(most - least + 1), out _);

    /// <summary>One of the values.</summary>
    public T Of<T>(params IReadOnlyList<T> values) => values[Between(0, values.Count - 1)];

    /// <summary>Whether an event of a probability in percent happens.</summary>
    public bool Percent(int percent) => Between(1, 100) <= percent;

    /// <summary>A number uniform on [0, 1).</summary>
    public double Unit() => (Next() >> 11) / (double)(1UL << 53);

    private ulong Next()
    {
        unchecked
        {
            var z = _state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
