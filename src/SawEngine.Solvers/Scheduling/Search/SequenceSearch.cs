namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// Descent, then annealing (Kirkpatrick, Gelatt and Vecchi 1983), a short run before a long one, then descents from shaken sequences (iterated local search).
/// All in whole numbers and measured in work, so that the same sequences come out everywhere.
/// </summary>
internal sealed class SequenceSearch
{
    private const int Seed = 1;
    private const int ShortShare = 5; // percent of the work
    private const int LongShare = 15;
    private const int Levels = 200;
    private const int Samples = 1000;
    private const int MovesBetweenLooks = 256;
    private const int StepsOfRound = 100;
    private const int Dearer = 40; // thousandths of the cost, at first
    private const int PatientRounds = 12;
    private const int FarShakes = 30;

    private readonly Sequences sequences;
    private readonly WorkMeter meter;
    private readonly long bound;
    private readonly Neighborhoods neighborhoods;
    private readonly SplitMix random = new(Seed);
    private readonly RandomChanges changes;
    private readonly Temperature temperature = new();
    private readonly SequencesCopy best;

    private SequenceSearch(Sequences sequences, WorkMeter meter, long bound)
    {
        (this.sequences, this.meter, this.bound) = (sequences, meter, bound);
        sequences.Aim(sequences.Makespan());
        neighborhoods = new(sequences);
        neighborhoods.Descend();
        sequences.Aim(sequences.Makespan());
        changes = new(sequences, random);
        best = new(sequences);
    }

    private bool IsDone => best.Cost <= bound || !sequences.GoesOn();

    /// <summary>The best sequences found within the work, starting from those given; the end comes early at a cost that nothing undercuts.</summary>
    public static SequencesCopy Run(Sequences sequences, WorkMeter meter, long bound)
    {
        var search = new SequenceSearch(sequences, meter, bound);
        if (sequences.Jobs > 1 && !search.IsDone)
        {
            if (!sequences.IsOneWithSetUps)
                search.Anneal();
            search.ShakeAndDescend();
        }
        return search.best;
    }

    private void Anneal()
    {
        var hottest = Hottest();
        var percent = (meter.Limit - meter.Spent) / 100;
        foreach (var share in (int[])[ShortShare, LongShare])
        {
            if (IsDone)
                return;
            Anneal(hottest, percent * share);
            neighborhoods.Unsettle();
            neighborhoods.Descend();
            Keep();
            best.PutBack();
        }
    }

    /// <summary>Rounds that go back to the best of their run, less and less far from it; a run that finds nothing better any more is left for another, far away.</summary>
    private void ShakeAndDescend()
    {
        var shaking = new Shaking(sequences, random);
        var home = new SequencesCopy(sequences);
        for (var stale = 0; !IsDone; stale++)
        {
            if (stale == PatientRounds)
            {
                stale = 0;
                for (var i = 0; i < FarShakes; i++)
                    shaking.Shake();
                Descend();
                home.Take();
            }
            if (Improve(home, shaking))
                stale = -1;
            home.PutBack();
        }
    }

    private bool Improve(SequencesCopy home, Shaking shaking)
    {
        var (current, isBetter) = (new SequencesCopy(sequences), false);
        for (var step = StepsOfRound; step > 0 && !IsDone; step--)
        {
            shaking.Shake();
            Descend();
            if (sequences.Total() < home.Total)
            {
                home.Take();
                isBetter = true;
            }
            if (sequences.Total() <= home.Total + (home.Total / 1000 * Dearer * step / StepsOfRound))
                current.Take();
            else
                current.PutBack();
        }
        return isBetter;
    }

    private void Descend()
    {
        neighborhoods.Descend();
        Keep();
    }

    private void Anneal(long hottest, long work)
    {
        var start = meter.Spent;
        temperature.Level = hottest;
        for (var level = 0; level < Levels; level++)
        {
            while (meter.Spent - start < work * (level + 1) / Levels)
            {
                for (var move = 0; move < MovesBetweenLooks; move++)
                    if (changes.Try(temperature.Allowance(random)))
                        Keep();
                if (IsDone)
                    return;
            }
            temperature.Level -= temperature.Level * 34 / 1000;
        }
    }

    private void Keep()
    {
        var cost = sequences.Cost();
        if (cost >= best.Cost)
            return;
        if (sequences.Shop.MakespanRate > 0)
        {
            sequences.Aim(sequences.Makespan());
            neighborhoods.Unsettle();
        }
        best.Take();
    }

    /// <summary>A temperature at which one in seven of the changes that make it worse has a fair chance.</summary>
    private long Hottest()
    {
        var worse = new List<long>(Samples);
        for (var sample = 0; sample < Samples; sample++)
        {
            var before = sequences.Total();
            if (!changes.Try(long.MaxValue / 4))
                continue;
            if (sequences.Total() > before)
                worse.Add(sequences.Total() - before);
            Keep();
            best.PutBack();
        }
        worse.Sort();
        return worse.Count == 0 ? 0 : worse[worse.Count / 7];
    }
}
