using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <content>Set-ups and blade changes.</content>
internal ref partial struct Placing
{
    // Those that follow one another, and those beside them from the moment the saw is free.
    private bool Parts()
    {
        var (free, window) = (state.At, state.Window);
        var table = clock.SetUps;
        var count = 0;
        Span<TimeWindow> parts = stackalloc TimeWindow[MostParts];
        for (var kind = 0; kind < table.Kinds.Length; kind++)
        {
            var seconds = table.Seconds(kind, state.SetUp, work.SetUpNumbers);
            var mounted = (long?)null;
            if (table.Kinds[kind] == SetUpRules.Blade && work.Blade >= 0 && work.Blade != state.Blade)
                mounted = Mount(work.Blade, seconds);
            if (seconds == 0)
                continue;
            var beside = table.Beside[kind];
            var (partWindow, at) = beside ? (window, free) : (state.Window, state.At);
            if (!Part(table.Kinds[kind], seconds, mounted, ref partWindow, ref at))
                return false;
            parts[count++] = new(at - seconds, at);
            if (!beside)
                (state.Window, state.At) = (partWindow, at);
        }
        Settle(parts[..count]);
        return true;
    }

    // A change that takes no time is not told, so the blade can only be the one that was there before.
    private readonly long Mount(int blade, long seconds)
    {
        if (seconds > 0)
            state.Mount(blade, work.BladeShare);
        else
            state.MountLast(blade);
        return state.Life;
    }

    /// <summary>Counts the time of parts, those at the same time once, and goes on after the last.</summary>
    private void Settle(scoped Span<TimeWindow> parts)
    {
        if (parts.Length > 1)
            parts.Sort(static (one, other) => one.Start.CompareTo(other.Start));
        var until = long.MinValue;
        foreach (var part in parts)
        {
            var start = Math.Max(part.Start, until);
            if (part.End <= start)
                continue;
            setUpSeconds += part.End - start;
            CountAttended(start, part.End);
            until = part.End;
        }
        if (until > state.At)
            state.At = until;
    }

    private bool ChangeWornBlade()
    {
        state.Mount(-1, RestShare());
        var (window, at) = (state.Window, state.At);
        if (!Part(SetUpRules.BladeWorn, times.Blade, state.Life, ref window, ref at))
            return false;
        (state.Window, state.At) = (window, at);
        setUpSeconds += times.Blade;
        CountAttended(at - times.Blade, at);
        return true;
    }

    private readonly Int128 RestShare()
    {
        var (rest, skip) = ((Int128)0, done);
        foreach (var run in work.Runs)
        {
            var left = Math.Max(0, run.Count - skip);
            skip = Math.Max(0, skip - run.Count);
            rest += (Int128)run.BladeShare * left;
        }
        return rest;
    }

    /// <summary>A part of a set-up from a moment on; the moment is then its end.</summary>
    private readonly bool Part(string kind, long seconds, long? mountedLife, ref int window, ref long at)
    {
        if (!FindHands(seconds, ref window, ref at, out var hands))
            return false;
        if (hands is not null)
            resources!.Book(hands.Busy, clock.Index, at, seconds);
        record?.SetUps.Add(new(kind, at, at + seconds, hands?.OperatorId, mountedLife));
        at += seconds;
        return true;
    }

    private readonly bool FindHands(long seconds, ref int window, ref long at, out OperatorHands? hands)
    {
        hands = null;
        while (Find(seconds * 1000, ref window, ref at))
        {
            if (resources is null)
                return true;
            (hands, var start) = resources.FirstHands(clock.Index, at, seconds);
            if (start == at)
                return true;
            at = start;
        }
        return false;
    }
}
