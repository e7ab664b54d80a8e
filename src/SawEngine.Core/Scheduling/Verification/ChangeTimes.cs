using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling.Verification;

/// <summary>How long changes of one kind take: as usual, or as listed by pair.</summary>
internal sealed class ChangeTimes
{
    private readonly Dictionary<(string? From, string To), long> pairs = [];
    private readonly long usual;

    public ChangeTimes(long usual, SetUpChanges? changes = null)
    {
        this.usual = usual;
        foreach (var pair in changes?.Pairs ?? [])
            pairs.TryAdd((pair.From, pair.To), pair.Seconds);
    }

    /// <summary>Null where nothing is changed.</summary>
    public long? Seconds(string? from, string? to) =>
        to is null || string.Equals(from, to, StringComparison.Ordinal) ? null : pairs.GetValueOrDefault((from, to), usual);
}
