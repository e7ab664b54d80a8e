namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>Splits a count in powers of two and a rest, so that every smaller count is a sum of some of them (Martello and Toth 1990).</summary>
internal static class BinarySplit
{
    public static IEnumerable<int> Of(int count)
    {
        for (var times = 1; count > 0; times *= 2)
        {
            var taken = Math.Min(times, count);
            yield return taken;
            count -= taken;
        }
    }
}
