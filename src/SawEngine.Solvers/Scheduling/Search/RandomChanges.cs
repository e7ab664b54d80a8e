namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Draws a change of the sequences and makes it unless it is dearer than allowed.</summary>
internal sealed class RandomChanges(Sequences sequences, SplitMix random)
{
    private const int LongestBlock = 13;
    private const int ShortDistance = 6;
    private const int WorkOfDrawing = 3;

    private readonly SawSequence[] saws = sequences.Saws;

    /// <summary>Answers whether a change was made.</summary>
    public bool Try(long allowance)
    {
        var (saw, place) = Draw();
        saw.Work += WorkOfDrawing;
        var other = saws.Length == 1 ? saw : saws[random.Below(saws.Length)];
        if (other == saw)
            return random.OneIn(4) ? Exchange(saw, place, allowance) : Shift(saw, place, allowance);
        return random.Below(8) switch
        {
            0 => Tails(saw, place, other, allowance),
            < 4 => ExchangeWith(saw, place, other, allowance),
            _ => Move(saw, place, other, allowance),
        };
    }

    private (SawSequence Saw, int Place) Draw()
    {
        if (saws.Length == 1)
            return (saws[0], random.Between(1, saws[0].Count));
        var nth = random.Below(sequences.Jobs);
        foreach (var saw in saws)
        {
            if (nth < saw.Count)
                return (saw, nth + 1);
            nth -= saw.Count;
        }
        throw new InvalidOperationException("A job is on no saw.");
    }

    private int Length(int most) => most <= 1 || random.OneIn(2) ? 1 : random.Between(1, Math.Min(most, LongestBlock));

    private int Distance(int most) => most <= 1 ? most : random.OneIn(2) ? random.Between(1, Math.Min(most, ShortDistance)) : random.Between(1, most);

    private bool Shift(SawSequence saw, int place, long allowance)
    {
        var length = Length(saw.Count - place + 1);
        var after = place + length;
        if (random.OneIn(2))
        {
            var passed = Distance(saw.Count - after + 1);
            return passed > 0 && Take(
                saw, place - 1, [new(saw, after, after + passed - 1), new(saw, place, after - 1)], after + passed, allowance);
        }
        var back = Distance(place - 1);
        return back > 0 && Take(saw, place - back - 1, [new(saw, place, after - 1), new(saw, place - back, place - 1)], after, allowance);
    }

    private bool Exchange(SawSequence saw, int place, long allowance)
    {
        var length = ShortLength();
        var otherLength = ShortLength();
        var room = saw.Count - place - length - otherLength + 1;
        if (room < 1)
            return false;
        var second = place + length + Distance(room);
        return Take(
            saw,
            place - 1,
            [new(saw, second, second + otherLength - 1), new(saw, place + length, second - 1), new(saw, place, place + length - 1)],
            second + otherLength,
            allowance);
    }

    private int ShortLength() => random.OneIn(3) ? random.Between(2, 3) : 1;

    private bool Take(SawSequence saw, int keep, ReadOnlySpan<Piece> pieces, int tail, long allowance)
    {
        if (saw.Try(keep, pieces, tail, saw.Total + allowance + 1) == SawSequence.TooDear)
            return false;
        sequences.Change(saw, keep, pieces, tail);
        return true;
    }

    private bool Move(SawSequence from, int first, SawSequence to, long allowance)
    {
        var last = Math.Min(from.Count, first + ShortLength() - 1);
        var at = PlaceIn(to, from.FinishAt(first - 1));
        var limit = from.Total + to.Total + allowance + 1;
        var with = to.Try(at - 1, [new(from, first, last)], at, limit);
        if (with == SawSequence.TooDear || from.Try(first - 1, [], last + 1, limit - with) == SawSequence.TooDear)
            return false;
        sequences.Change(to, at - 1, [new(from, first, last)], at);
        sequences.Change(from, first - 1, [], last + 1);
        return true;
    }

    private bool ExchangeWith(SawSequence saw, int first, SawSequence other, long allowance)
    {
        if (other.Count == 0)
            return false;
        var last = Math.Min(saw.Count, first + ShortLength() - 1);
        var otherFirst = Math.Min(PlaceIn(other, saw.FinishAt(first - 1)), other.Count);
        return Take(saw, first, last, other, otherFirst, Math.Min(other.Count, otherFirst + ShortLength() - 1), allowance);
    }

    private bool Tails(SawSequence saw, int first, SawSequence other, long allowance)
    {
        var otherFirst = PlaceIn(other, saw.FinishAt(first - 1));
        return otherFirst <= other.Count && Take(saw, first, saw.Count, other, otherFirst, other.Count, allowance);
    }

    private bool Take(SawSequence saw, int first, int last, SawSequence other, int otherFirst, int otherLast, long allowance)
    {
        var limit = saw.Total + other.Total + allowance + 1;
        var sum = saw.Try(first - 1, [new(other, otherFirst, otherLast)], last + 1, limit);
        if (sum == SawSequence.TooDear || other.Try(otherFirst - 1, [new(saw, first, last)], otherLast + 1, limit - sum) == SawSequence.TooDear)
            return false;
        sequences.Change(saw, first - 1, [new(other, otherFirst, otherLast)], last + 1, other, otherFirst - 1, [new(saw, first, last)], otherLast + 1);
        return true;
    }

    /// <summary>Any place, or one at about a time.</summary>
    private int PlaceIn(SawSequence saw, long time)
    {
        if (random.OneIn(2))
            return random.Between(1, saw.Count + 1);
        var (low, high) = (0, saw.Count);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = saw.FinishAt(middle) <= time ? (middle, high) : (low, middle - 1);
        }
        return Math.Clamp(low + random.Between(0, 2), 1, saw.Count + 1);
    }
}
