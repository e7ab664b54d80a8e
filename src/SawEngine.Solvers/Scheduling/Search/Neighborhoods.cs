namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Descends through exchanges of blocks of jobs, neighbors or not, on one saw and between two, taking each change that helps as it is found.</summary>
internal sealed class Neighborhoods
{
    private const int ShortBlock = 10;
    private const int LongBlock = 13; // with any other beside it
    private const int LongestMoved = 3;

    private readonly Sequences sequences;
    private readonly SawSequence[] saws;
    private readonly long[] settled;
    private readonly (long First, long Second)[] settledPairs;

    public Neighborhoods(Sequences sequences)
    {
        this.sequences = sequences;
        saws = sequences.Saws;
        settled = new long[saws.Length];
        settledPairs = new (long, long)[saws.Length * saws.Length];
        Array.Fill(settled, -1);
        Array.Fill(settledPairs, (-1, -1));
    }

    /// <summary>Forgets what needs no second look: the target has changed.</summary>
    public void Unsettle()
    {
        Array.Fill(settled, -1);
        Array.Fill(settledPairs, (-1, -1));
    }

    /// <summary>Until no change helps any more, or the work is spent.</summary>
    public void Descend()
    {
        var improved = true;
        while (improved)
        {
            improved = false;
            foreach (var saw in saws)
                Settle(saw, Array.IndexOf(saws, saw));
            for (var first = 0; first < saws.Length; first++)
                for (var second = 0; second < saws.Length; second++)
                    if (first != second && sequences.GoesOn())
                        improved |= SettlePair(first, second);
        }
    }

    private void Settle(SawSequence saw, int index)
    {
        while (settled[index] != saw.Version && sequences.GoesOn())
        {
            if (NeighborExchanges(saw) || LongNeighborExchange(saw) || Exchanges(saw))
                continue;
            settled[index] = saw.Version;
        }
    }

    private bool SettlePair(int first, int second)
    {
        var (from, to) = (saws[first], saws[second]);
        ref var seen = ref settledPairs[(first * saws.Length) + second];
        if (seen == (from.Version, to.Version))
            return false;
        var improved = Moves(from, to);
        if (first < second)
            improved |= PairExchanges(from, to) | Tails(from, to);
        if (!improved)
            seen = (from.Version, to.Version);
        return improved;
    }

    /// <summary>Two short neighboring blocks change places: one pass over the saw.</summary>
    private bool NeighborExchanges(SawSequence saw)
    {
        var improved = false;
        for (var first = 1; first < saw.Count && sequences.GoesOn(); first++)
            for (var second = first + 1; second <= Math.Min(saw.Count, first + ShortBlock); second++)
                while (ExchangeNeighbors(saw, first, second, Math.Min(saw.Count, second + ShortBlock - 1)))
                    improved = true;
        return improved;
    }

    /// <summary>A block changes places with a neighbor of any length: the first that helps.</summary>
    private bool LongNeighborExchange(SawSequence saw)
    {
        for (var first = 1; first < saw.Count && sequences.GoesOn(); first++)
            for (var second = first + 1; second <= saw.Count; second++)
                if (ExchangeNeighbors(saw, first, second, second - first <= LongBlock ? saw.Count : Math.Min(saw.Count, second + LongBlock - 1)))
                    return true;
        return false;
    }

    private bool ExchangeNeighbors(SawSequence saw, int first, int second, int farthest)
    {
        var last = NeighborExchange.Find(saw, first, second, farthest);
        if (last == 0)
            return false;
        sequences.Change(saw, first - 1, [new(saw, second, last), new(saw, first, second - 1)], last + 1);
        return true;
    }

    /// <summary>Two jobs that are not neighbors change places.</summary>
    private bool Exchanges(SawSequence saw)
    {
        var improved = false;
        for (var first = 1; first + 2 <= saw.Count && sequences.GoesOn(); first++)
            for (var second = first + 2; second <= saw.Count; second++)
                improved |= Take(saw, first - 1, [new(saw, second, second), new(saw, first + 1, second - 1), new(saw, first, first)], second + 1);
        return improved;
    }

    private bool Take(SawSequence saw, int keep, ReadOnlySpan<Piece> pieces, int tail)
    {
        if (saw.Try(keep, pieces, tail, saw.Total) == SawSequence.TooDear)
            return false;
        sequences.Change(saw, keep, pieces, tail);
        return true;
    }

    /// <summary>A block goes to another saw.</summary>
    private bool Moves(SawSequence from, SawSequence to)
    {
        var improved = false;
        for (var length = 1; length <= LongestMoved && sequences.GoesOn(); length++)
            for (var first = 1; first + length - 1 <= from.Count; first++)
                improved |= Move(from, first, first + length - 1, to);
        return improved;
    }

    private bool Move(SawSequence from, int first, int last, SawSequence to)
    {
        for (var place = first; place <= last; place++)
            if (!to.CanRun(from.Jobs[place]))
                return false;
        var without = from.Try(first - 1, [], last + 1, from.Total);
        if (without == SawSequence.TooDear)
            return false;
        var (limit, best) = (from.Total + to.Total - without, -1);
        for (var at = 1; at <= to.Count + 1; at++)
        {
            var sum = to.Try(at - 1, [new(from, first, last)], at, limit);
            if (sum != SawSequence.TooDear)
                (limit, best) = (sum, at);
        }
        if (best < 0)
            return false;
        sequences.Change(to, best - 1, [new(from, first, last)], best);
        sequences.Change(from, first - 1, [], last + 1);
        return true;
    }

    /// <summary>Two blocks on two saws change places.</summary>
    private bool PairExchanges(SawSequence saw, SawSequence other)
    {
        var improved = false;
        for (var length = 1; length <= 2; length++)
            for (var otherLength = 1; otherLength <= 2; otherLength++)
                for (var first = 1; first + length - 1 <= saw.Count && sequences.GoesOn(); first++)
                    for (var second = 1; second + otherLength - 1 <= other.Count && first + length - 1 <= saw.Count; second++)
                        improved |= Take(saw, first, first + length - 1, other, second, second + otherLength - 1);
        return improved;
    }

    /// <summary>All that follows a place of one saw and all that follows a place of another change saws.</summary>
    private bool Tails(SawSequence saw, SawSequence other)
    {
        var improved = false;
        for (var first = 1; first <= saw.Count && sequences.GoesOn(); first++)
            for (var second = 1; second <= other.Count && first <= saw.Count; second++)
                improved |= Take(saw, first, saw.Count, other, second, other.Count);
        return improved;
    }

    private bool Take(SawSequence saw, int first, int last, SawSequence other, int otherFirst, int otherLast)
    {
        var limit = saw.Total + other.Total;
        var sum = saw.Try(first - 1, [new(other, otherFirst, otherLast)], last + 1, limit);
        if (sum == SawSequence.TooDear || other.Try(otherFirst - 1, [new(saw, first, last)], otherLast + 1, limit - sum) == SawSequence.TooDear)
            return false;
        sequences.Change(saw, first - 1, [new(other, otherFirst, otherLast)], last + 1, other, otherFirst - 1, [new(saw, first, last)], otherLast + 1);
        return true;
    }
}
