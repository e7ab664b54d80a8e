namespace SawEngine.Solvers.Nesting;

/// <summary>A small generator of random numbers that is the same everywhere (SplitMix64 of Steele, Lea and Flood 2014).</summary>
internal sealed class SplitMix(ulong seed)
{
    private ulong _state = seed;

    public double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

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
