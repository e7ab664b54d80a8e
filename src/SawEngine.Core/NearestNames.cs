namespace SawEngine.Core;

/// <summary>Names nearest to one that was not found.</summary>
public static class NearestNames
{
    /// <summary>The names nearest to one by edit distance, at most <paramref name="count"/>; equally near ones in ordinal order.</summary>
    public static IReadOnlyList<string> Of(string name, IEnumerable<string> names, int count) =>
        [.. names.OrderBy(candidate => EditDistance(name, candidate)).ThenBy(candidate => candidate, StringComparer.Ordinal).Take(count)];

    /// <summary>
    /// The designations nearest to one, at most <paramref name="count"/>: those with the same letters and number in front first, then by edit distance, then by how much
    /// of the beginning is the same, then in ordinal order. All of it in the form in which they are compared.
    /// </summary>
    public static IReadOnlyList<string> OfDesignations(string name, IEnumerable<string> names, Func<string, string> formOf, int count)
    {
        var form = formOf(name);
        var head = Head(form);
        return
        [
            .. names.Select(candidate => (Name: candidate, Form: formOf(candidate)))
                .OrderBy(candidate => string.Equals(Head(candidate.Form), head, StringComparison.Ordinal) ? 0 : 1)
                .ThenBy(candidate => EditDistance(form, candidate.Form))
                .ThenByDescending(candidate => form.AsSpan().CommonPrefixLength(candidate.Form))
                .ThenBy(candidate => candidate.Name, StringComparer.Ordinal)
                .Select(candidate => candidate.Name).Take(count),
        ];
    }

    /// <summary>Letters and the number behind them: A500, 304, 1.4301, HSS4.</summary>
    private static string Head(string form)
    {
        var letters = form.TakeWhile(character => !char.IsAsciiDigit(character)).Count();
        return form[..(letters + form.Skip(letters).TakeWhile(character => char.IsAsciiDigit(character) || character == '.').Count())];
    }

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
