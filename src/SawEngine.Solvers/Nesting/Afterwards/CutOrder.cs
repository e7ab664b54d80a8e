namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>The order of the cuts within a bar of square-cut pieces.</summary>
public static class CutOrder
{
    /// <summary>
    /// Equal lengths follow each other, so that the stop is set once for each, the longest first; of equal length, pieces of the same key follow each other, keys in ordinal order;
    /// of equal key, in the order given.
    /// </summary>
    public static IReadOnlyList<T> LongestFirst<T>(IEnumerable<T> pieces, Func<T, long> length, Func<T, string> key) =>
        [.. pieces.OrderByDescending(length).ThenBy(key, StringComparer.Ordinal)];
}
