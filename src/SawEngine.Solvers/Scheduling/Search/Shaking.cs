namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// Disturbs sequences a little, so that a descent from there ends elsewhere: some jobs are taken out and put back one by one where they
/// cost least (iterated greedy, Ruiz and Stuetzle 2007), or neighboring blocks change places.
/// </summary>
internal sealed class Shaking(Sequences sequences, SplitMix random)
{
    private const int MostTakenOut = 6;
    private const int LongestBlock = 10;
    private const int FewJobs = 4;

    private readonly SawSequence hand = new(sequences.Saws[0].Numbers);
    private readonly int[] taken = new int[MostTakenOut];

    public void Shake()
    {
        if (sequences.Jobs < FewJobs || (!sequences.IsOneWithSetUps && random.OneIn(2)))
            TakeOutAndPutBack();
        else
            ExchangeBlocks();
    }

    private void ExchangeBlocks()
    {
        var saw = sequences.Saws[random.Below(sequences.Saws.Length)];
        saw.Work++;
        if (saw.Count >= FewJobs)
        {
            var longest = Math.Min(LongestBlock, saw.Count / 2);
            var (length, other) = (random.Between(1, longest), random.Between(1, longest));
            var first = random.Between(1, saw.Count - length - other + 1);
            sequences.Change(saw, first - 1, [new(saw, first + length, first + length + other - 1), new(saw, first, first + length - 1)], first + length + other);
        }
    }

    private void TakeOutAndPutBack()
    {
        var count = Math.Min(random.Between(2, MostTakenOut), sequences.Jobs - 1);
        for (var i = 0; i < count; i++)
            taken[i] = TakeOut();
        for (var i = 0; i < count; i++)
            PutBack(taken[i]);
    }

    /// <summary>Any job; for a late one as often one of those just before it.</summary>
    private int TakeOut()
    {
        var nth = random.Below(sequences.Saws.Sum(saw => saw.Count));
        foreach (var saw in sequences.Saws)
        {
            if (nth < saw.Count)
            {
                var place = saw.IsLate(nth + 1) ? random.Between(Math.Max(1, nth - 2), nth + 1) : nth + 1;
                var job = saw.Jobs[place];
                sequences.Change(saw, place - 1, [], place + 1);
                return job;
            }
            nth -= saw.Count;
        }
        throw new InvalidOperationException("There is no job to take out.");
    }

    private void PutBack(int job)
    {
        hand.Jobs[1] = job;
        var (least, bestSaw, bestPlace) = (long.MaxValue / 2, (SawSequence?)null, 0);
        foreach (var saw in sequences.Saws.Where(saw => saw.CanRun(job)))
            for (var place = 1; place <= saw.Count + 1; place++)
            {
                var sum = saw.Try(place - 1, [new(hand, 1, 1)], place, least + saw.Total);
                if (sum != SawSequence.TooDear)
                    (least, bestSaw, bestPlace) = (sum - saw.Total, saw, place);
            }
        sequences.Change(bestSaw!, bestPlace - 1, [new(hand, 1, 1)], bestPlace);
    }
}
