using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>Set-up seconds of one saw by number, since a search asks for them all the time. 0 stands for what is unknown, or of no matter.</summary>
internal sealed class SetUpTable
{
    private readonly Dictionary<string, int>[] numbers;
    private readonly long[][][] seconds; // by kind, from and to

    public SetUpTable(ScheduleSaw saw, IEnumerable<SetUpState> states)
    {
        Kinds = [.. SetUpRules.Order];
        Beside = [.. Kinds.Select(saw.SetUpTimes.Beside.Contains)];
        numbers = [.. Kinds.Select(_ => new Dictionary<string, int>(StringComparer.Ordinal))];
        foreach (var state in states.Prepend(saw.InitialState))
            for (var kind = 0; kind < Kinds.Length; kind++)
                if (Value(state, kind) is { } value)
                    numbers[kind].TryAdd(value, numbers[kind].Count + 1);
        seconds = [.. Enumerable.Range(0, Kinds.Length).Select(kind => Rows(kind, saw.SetUpTimes))];
    }

    /// <summary>The kinds, in the order in which they are done.</summary>
    public string[] Kinds { get; }

    /// <summary>Whether a kind is done beside the others.</summary>
    public bool[] Beside { get; }

    public SetUpNumbers Of(SetUpState state) => new(Number(state, 0), Number(state, 1), Number(state, 2), Number(state, 3));

    public long Seconds(int kind, SetUpNumbers from, SetUpNumbers to)
    {
        var (before, after) = (from[kind], to[kind]);
        return after == 0 || after == before ? 0 : seconds[kind][before][after];
    }

    /// <summary>From the first part to the last: those that follow one another, or the longest beside them.</summary>
    public long Seconds(SetUpNumbers from, SetUpNumbers to)
    {
        var (following, longestBeside) = (0L, 0L);
        for (var kind = 0; kind < Kinds.Length; kind++)
        {
            var part = Seconds(kind, from, to);
            (following, longestBeside) = Beside[kind] ? (following, Math.Max(longestBeside, part)) : (following + part, longestBeside);
        }
        return Math.Max(following, longestBeside);
    }

    private int Number(SetUpState state, int kind) => Value(state, kind) is { } value ? numbers[kind][value] : 0;

    private string? Value(SetUpState state, int kind) => Kinds[kind] switch
    {
        SetUpRules.Section => state.Section,
        SetUpRules.GradeGroup => state.GradeGroup,
        SetUpRules.Blade => state.BladeId,
        _ => state.Angle,
    };

    private long[][] Rows(int kind, SetUpTimes times)
    {
        string?[] values = [null, .. numbers[kind].OrderBy(pair => pair.Value).Select(pair => pair.Key)];
        return Array.ConvertAll(values, from => Array.ConvertAll(values, to => SetUpRules.Seconds(Kinds[kind], State(kind, from), State(kind, to), times)));
    }

    private SetUpState State(int kind, string? value) => Kinds[kind] switch
    {
        SetUpRules.Section => new(value, null, null),
        SetUpRules.GradeGroup => new(null, value, null),
        SetUpRules.Blade => new(null, null, value),
        _ => new(null, null, null, value),
    };
}
