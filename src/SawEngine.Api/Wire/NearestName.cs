namespace SawEngine.Api.Wire;

/// <summary>Finds what a misspelt name was meant to be.</summary>
public static class NearestName
{
    /// <summary>The known name with the fewest edits, if few enough to be a slip; the first of equals.</summary>
    public static string? Of(string name, IEnumerable<string> known)
    {
        if (name.Length > Limits.TextLength)
            return null;
        string? nearest = null;
        var fewest = Math.Max(2, name.Length / 3) + 1;
        foreach (var candidate in known)
        {
            var edits = Edits(name.ToUpperInvariant(), candidate.ToUpperInvariant());
            if (edits < fewest)
                (nearest, fewest) = (candidate, edits);
        }
        return nearest;
    }

    /// <summary>A question to add to a message; empty where nothing is near.</summary>
    public static string Question(string name, IEnumerable<string> known) => Of(name, known) is { } nearest ? $" Did you mean `{nearest}`?" : "";

    private static int Edits(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
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
        return row[^1];
    }
}
