namespace SawEngine.Core;

/// <summary>Names nearest to one that was not found.</summary>
public static class NearestNames
{
    /// <summary>The names nearest to one by edit distance, at most <paramref name="count"/>; equally near ones in ordinal order.</summary>
    public static IReadOnlyList<string> Of(string name, IEnumerable<string> names, int count) =>
        [.. names.OrderBy(candidate => EditDistance(name, candidate)).ThenBy(candidate => candidate, StringComparer.Ordinal).Take(count)];

    /// <summary>Fewest insertions, deletions and replacements of a character that turn one text into the other (Levenshtein).</summary>
    public static int EditDistance(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }
        return row[b.Length];
    }
}
