namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>SplitMix64 (Steele, Lea and Flood 2014): the same numbers everywhere, a nanosecond each.</summary>
internal sealed class SearchRandom(ulong seed)
{
    private ulong state = seed;

    /// <summary>A whole number from 0 up to below a limit.</summary>
    public int Below(int limit) => (int)Math.BigMul(Next(), (ulong)limit, out _);

    /// <summary>A whole number, both ends included.</summary>
    public int Between(int least, int most) => least + Below(most - least + 1);

    public bool OneIn(int count) => Below(count) == 0;

    private ulong Next()
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
