namespace SawEngine.Core.Costs;

/// <summary>Shares that add up to their total exactly: the method of largest remainders (Hamilton), ties to the first.</summary>
public static class LargestRemainder
{
    /// <summary>
    /// Splits a whole total in proportion to weights. Every share is the exact one rounded down or up; the shares add up to the total.
    /// Weights are not negative; where all are zero the total is split in equal parts.
    /// </summary>
    public static long[] Split(long total, IReadOnlyList<decimal> weights)
    {
        if (weights.Count == 0)
            return total == 0 ? [] : throw new ArgumentException("A total needs a weight.", nameof(weights));
        var sum = weights.Sum();
        var exact = sum == 0m
            ? weights.Select(_ => total / (decimal)weights.Count)
            : weights.Select(weight => total * weight / sum);
        return Round(total, exact.ToArray());
    }

    /// <summary>Rounds amounts to multiples of a step (one hundredth for cents), so that they add up to the rounded sum, which is rounded half to even.</summary>
    public static decimal[] Round(IReadOnlyList<decimal> amounts, decimal step)
    {
        var inSteps = amounts.Select(amount => amount / step).ToArray();
        var total = (long)Math.Round(inSteps.Sum(), 0, MidpointRounding.ToEven);
        return Round(total, inSteps).Select(count => count * step).ToArray();
    }

    private static long[] Round(long total, decimal[] exact)
    {
        var shares = exact.Select(value => (long)decimal.Floor(value)).ToArray();
        var missing = total - shares.Sum();
        var order = Enumerable.Range(0, exact.Length).OrderByDescending(i => exact[i] - shares[i]).ThenBy(i => i).ToArray();
        for (var i = 0; missing > 0; i = (i + 1) % order.Length, missing--)
            shares[order[i]]++;
        for (var i = order.Length - 1; missing < 0; i = i == 0 ? order.Length - 1 : i - 1, missing++)
            shares[order[i]]--;
        return shares;
    }
}
