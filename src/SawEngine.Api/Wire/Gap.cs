namespace SawEngine.Api.Wire;

/// <summary>Share of an objective's value that is not proved.</summary>
internal static class Gap
{
    private const decimal Millionths = 1_000_000m;

    /// <summary>(value - bound) / value, rounded up to six decimals, at most 1; 0 where the value is.</summary>
    public static decimal Of(long value, long bound) =>
        value > 0 && bound < value ? Math.Min(1m, decimal.Ceiling((value - bound) * Millionths / value) / Millionths) : 0m;
}
