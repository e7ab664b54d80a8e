namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// How much dearer a change may be and still be taken: a temperature times -ln of a uniform number, which is the rule of Metropolis et
/// al. (1953). Logarithms are those of a table made in whole numbers, so that no rounding of a library decides.
/// </summary>
internal sealed class Temperature
{
    private const int Bits = 10;
    private const int Fraction = 16;
    private const long LnOf2 = 45_426; // * 2^16
    private static readonly long[] NegativeLogs = [.. Enumerable.Range(0, 1 << Bits).Select(i => NegativeLog((2 * i) + 1))];

    /// <summary>In the units of the search, not negative.</summary>
    public long Level { get; set; }

    public long Allowance(SplitMix random)
    {
        var log = NegativeLogs[random.Below(1 << Bits)];
        return unchecked(((Level >> Fraction) * log) + (((Level & ((1L << Fraction) - 1)) * log) >> Fraction));
    }

    /// <summary>-ln(odd / 2^(Bits + 1)) * 2^16, bit by bit from the binary logarithm.</summary>
    private static long NegativeLog(int odd)
    {
        var exponent = 31 - System.Numerics.BitOperations.LeadingZeroCount((uint)odd);
        var (mantissa, log) = ((long)odd << (30 - exponent), (long)exponent << Fraction);
        for (var bit = Fraction - 1; bit >= 0; bit--)
        {
            mantissa = (mantissa * mantissa) >> 30;
            if (mantissa < 1L << 31)
                continue;
            mantissa >>= 1;
            log += 1L << bit;
        }
        return ((((long)(Bits + 1) << Fraction) - log) * LnOf2) >> Fraction;
    }
}
