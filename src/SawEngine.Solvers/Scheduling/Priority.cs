using System.Numerics;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// How urgent a job is on a saw that is free, by one rule; the largest goes first.
/// The apparent tardiness cost <c>w/p * exp(-slack/(k1 p')) * exp(-setup/(k2 s'))</c> is ranked by its logarithm, in integers, with the
/// piecewise-linear logarithm of Mitchell (1962, at most 0.0861 off in base 2), so that no rounding of a library decides.
/// </summary>
internal sealed class Priority
{
    private const int Fraction = 20;
    private const long LogOfETenfold = 15_127_755; // 10 * log2(e) * 2^20
    private const long Farthest = 100_000_000_000; // s; keeps the products within 64 bits

    private readonly Shop shop;
    private readonly DispatchRule rule;
    private readonly long[] logWeight;
    private readonly long slackUnit;
    private readonly long setUpUnit;

    /// <param name="shop">The shop.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="averages">Average work and set-up seconds of the shop.</param>
    /// <param name="k1">Look-ahead for slack, in tenths; apparent tardiness cost only.</param>
    /// <param name="k2">Look-ahead for set-ups, in tenths; apparent tardiness cost only.</param>
    public Priority(Shop shop, DispatchRule rule, ShopAverages averages, int k1 = 10, int k2 = 10)
    {
        this.shop = shop;
        this.rule = rule;
        logWeight = Array.ConvertAll(shop.Weight, weight => Log2((long)Int128.Min(weight, long.MaxValue - 1) + 1));
        slackUnit = Math.Max(averages.WorkSeconds * k1, 1);
        setUpUnit = Math.Max(averages.SetUpSeconds * k2, 1);
    }

    public Int128 Of(int job, SawWork work, long now, long setUpSeconds) => rule switch
    {
        DispatchRule.EarliestDueDate => -shop.Due[job],
        DispatchRule.WeightedShortestProcessingTime => (shop.Weight[job] << Fraction) / Math.Max(1, work.Milliseconds),
        DispatchRule.LongestProcessingTime => work.Milliseconds,
        DispatchRule.ShortestSetUp => -setUpSeconds,
        DispatchRule.ApparentTardinessCost => ApparentTardinessCost(job, work, now, setUpSeconds),
        _ => throw new InvalidOperationException($"{rule} is not a rule."),
    };

    private long ApparentTardinessCost(int job, SawWork work, long now, long setUpSeconds)
    {
        var slack = Math.Clamp(shop.Due[job] - work.Seconds - now, 0, Farthest);
        return logWeight[job] - Log2(Math.Max(1, work.Milliseconds))
            - (LogOfETenfold * slack / slackUnit)
            - (LogOfETenfold * Math.Min(setUpSeconds, Farthest) / setUpUnit);
    }

    private static long Log2(long value)
    {
        var exponent = BitOperations.Log2((ulong)value);
        var mantissa = exponent > Fraction ? value >> (exponent - Fraction) : value << (Fraction - exponent);
        return ((long)exponent << Fraction) + mantissa - (1L << Fraction);
    }
}
