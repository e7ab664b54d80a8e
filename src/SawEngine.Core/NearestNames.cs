namespace SawEngine.Core;

/// <summary>Known names that are most like a wanted one, by edit distance.</summary>
public static class NearestNames
{
    /// <summary>
    /// At most <paramref name="count"/> known names, the most alike first: fewest insertions, deletions and substitutions
    /// of upper-cased letters (Levenshtein), then in ordinal order.
    /// </summary>
    public static IReadOnlyList<string> Find(string wanted, IEnumerable<string> known, int count)
    {
        var upper = wanted.ToUpperInvariant();
        return [.. known
            .Distinct(StringComparer.Ordinal)
            .OrderBy(name => Distance(upper, name.ToUpperInvariant()))
            .ThenBy(name => name, StringComparer.Ordinal)
            .Take(count)];
    }

    private static int Distance(string a, string b)
    {
        var above = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            above[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substituted = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(substituted, 1 + Math.Min(above[j], row[j - 1]));
            }

            (above, row) = (row, above);
        }

        return above[b.Length];
    }
}
