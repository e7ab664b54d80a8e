namespace SawEngine.Solvers;

/// <summary>A small generator of random numbers that is the same everywhere (SplitMix64 of Steele, Lea and Flood 2014).</summary>
internal sealed class SplitMix(ulong seed)
{
    private ulong _state = seed;

    public double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 up to below a limit.</summary>
    public int Below(int limit) => (int)Math.BigMul(Next(), (ulong)limit, out _);

    /// <summary>A whole number, both ends included.</summary>
    public int Between(int least, int most) => least + Below(most - least + 1);

    public bool OneIn(int count) => Below(count) == 0;

    public ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var mixed = _state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return mixed ^ (mixed >> 31);
        }
    }
}
