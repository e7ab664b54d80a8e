namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// Iterated descent: shake the sequences a little, descend, and go on from there unless that is much worse than the best
/// (iterated greedy, Ruiz and Stuetzle 2007; thresholds in place of probabilities, Dueck and Scheuer 1990).
/// </summary>
internal sealed class SequenceSearch
{
    private const int Seed = 1;
    private const int MostTakenOut = 6;
    private const int LongestShaken = 20;

    private readonly Sequences sequences;
    private readonly Neighborhoods neighborhoods;
    private readonly Random random = new(Seed);
    private readonly SequencesCopy best;
    private readonly SequencesCopy current;
    private readonly int[] taken = new int[MostTakenOut];
    private readonly SawSequence hand;

    private SequenceSearch(Sequences sequences)
    {
        this.sequences = sequences;
        hand = new(sequences.Shop, 0);
        sequences.Aim(sequences.Makespan());
        neighborhoods = new(sequences);
        neighborhoods.Descend();
        Retarget();
        best = new(sequences);
        current = new(sequences);
    }

    /// <summary>The best sequences found within the work, starting from those given; the end comes early at a cost that nothing undercuts.</summary>
    public static SequencesCopy Run(Sequences sequences, long bound)
    {
        var search = new SequenceSearch(sequences);
        for (var round = 0; search.best.Cost > bound && sequences.GoesOn(); round++)
            search.Round(round);
        return search.best;
    }

    private void Round(int round)
    {
        Shake();
        neighborhoods.Descend();
        var (cost, total) = (sequences.Cost(), sequences.Total());
        if (cost < best.Cost || (cost == best.Cost && total < best.Total))
        {
            if (cost < best.Cost)
                Retarget();
            best.Take();
            current.Take();
        }
        else if (total <= current.Total + Threshold(round))
        {
            current.Take();
        }
        else
        {
            current.PutBack();
        }
        if (round % 100 == 99)
            BackToBest();
    }

    private void BackToBest()
    {
        best.PutBack();
        current.Take();
    }

    // Permille of the total that a step may lose, falling within each hundred rounds.
    private long Threshold(int round) => current.Total / 1000 * (100 - (round % 100)) / 25;

    /// <summary>Aims at less than the makespan found.</summary>
    private void Retarget()
    {
        if (sequences.Shop.MakespanRate == 0)
            return;
        sequences.Aim(sequences.Makespan());
        neighborhoods.Unsettle();
    }

    private void Shake()
    {
        if (random.Next(2) == 0)
            TakeOutAndPutBack();
        else
            ExchangeBlocks();
    }

    /// <summary>Two neighboring blocks of one saw change places.</summary>
    private void ExchangeBlocks()
    {
        var saw = sequences.Saws[random.Next(sequences.Saws.Length)];
        for (var times = random.Next(1, 3); times > 0 && saw.Count >= 4; times--)
        {
            var longest = Math.Min(LongestShaken, saw.Count / 2);
            var (length, other) = (random.Next(1, longest + 1), random.Next(1, longest + 1));
            var first = random.Next(1, saw.Count - length - other + 2);
            sequences.Change(saw, first - 1, [new(saw, first + length, first + length + other - 1), new(saw, first, first + length - 1)], first + length + other);
        }
    }

    /// <summary>Late jobs and what precedes them, or any, leave their places and are put back one by one where they cost least.</summary>
    private void TakeOutAndPutBack()
    {
        var count = TakeOut();
        for (var i = 0; i < count; i++)
            PutBack(taken[i]);
    }

    private int TakeOut()
    {
        var wanted = Math.Min(random.Next(2, MostTakenOut + 1), sequences.Jobs - 1);
        for (var count = 0; count < wanted; count++)
        {
            var (saw, place) = Draw();
            taken[count] = saw.Jobs[place];
            sequences.Change(saw, place - 1, [], place + 1);
        }
        return Math.Max(wanted, 0);
    }

    // A late job is moved forward by what stands before it: half of the draws step back from a late place.
    private (SawSequence Saw, int Place) Draw()
    {
        var nth = random.Next(sequences.Saws.Sum(saw => saw.Count));
        foreach (var saw in sequences.Saws)
        {
            if (nth < saw.Count)
                return (saw, saw.IsLate(nth + 1) ? random.Next(Math.Max(1, nth - 3), nth + 2) : nth + 1);
            nth -= saw.Count;
        }
        throw new InvalidOperationException("There is no job to draw.");
    }

    private void PutBack(int job)
    {
        hand.Jobs[1] = job;
        var (limit, bestSaw, bestPlace) = (SawSequence.TooDear, (SawSequence?)null, 0);
        foreach (var saw in sequences.Saws)
        {
            if (!saw.CanRun(job))
                continue;
            for (var place = 1; place <= saw.Count + 1; place++)
            {
                var sum = saw.Try(place - 1, [new(hand, 1, 1)], place, limit == SawSequence.TooDear ? limit : limit + saw.Total);
                if (sum != SawSequence.TooDear)
                    (limit, bestSaw, bestPlace) = (sum - saw.Total, saw, place);
            }
        }
        sequences.Change(bestSaw!, bestPlace - 1, [new(hand, 1, 1)], bestPlace);
    }
}
