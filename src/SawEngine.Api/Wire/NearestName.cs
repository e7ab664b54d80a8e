using SawEngine.Core;

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
            var edits = NearestNames.EditDistance(name.ToUpperInvariant(), candidate.ToUpperInvariant());
            if (edits < fewest)
                (nearest, fewest) = (candidate, edits);
        }
        return nearest;
    }

    /// <summary>A question to add to a message; empty where nothing is near.</summary>
    public static string Question(string name, IEnumerable<string> known) => Of(name, known) is { } nearest ? $" Did you mean `{nearest}`?" : "";
}
