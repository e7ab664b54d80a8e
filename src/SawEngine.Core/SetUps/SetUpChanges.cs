namespace SawEngine.Core.SetUps;

/// <summary>Times of changes by pair, where it matters what was cut before: jaws and guides for sections, chips that must not mix for grade groups, swivels for angles.</summary>
public sealed class SetUpChanges
{
    private readonly Dictionary<(string From, string To), long> seconds;
    private readonly Dictionary<string, long> fromUnknown;

    /// <summary>The pairs; of a pair that is given twice the first counts.</summary>
    public SetUpChanges(IReadOnlyList<SetUpChange> pairs)
    {
        Pairs = pairs;
        seconds = [];
        fromUnknown = new(StringComparer.Ordinal);
        foreach (var pair in pairs)
        {
            if (pair.From is { } from)
                seconds.TryAdd((from, pair.To), pair.Seconds);
            else
                fromUnknown.TryAdd(pair.To, pair.Seconds);
        }
    }

    /// <summary>The pairs as given.</summary>
    public IReadOnlyList<SetUpChange> Pairs { get; }

    /// <summary>Seconds of a change, or those that are usual where the pair is not given.</summary>
    public long Seconds(string? from, string to, long usual) =>
        from is null ? fromUnknown.GetValueOrDefault(to, usual) : seconds.GetValueOrDefault((from, to), usual);
}
