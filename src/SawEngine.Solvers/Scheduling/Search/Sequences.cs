namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>The sequences of all saws, their cost, and ways back to earlier ones.</summary>
internal sealed class Sequences
{
    private const int WeightOfLateFinish = 32;

    private readonly AxisShop shop;
    private readonly WorkMeter meter;
    private long version;

    public Sequences(AxisShop shop, WorkMeter meter)
    {
        this.shop = shop;
        this.meter = meter;
        IsOneWithSetUps = shop.Saws == 1 && shop.HasSetUps;
        Saws = [.. Enumerable.Range(0, shop.Saws).Select(saw => new SawSequence(new(shop, saw)))];
    }

    public SawSequence[] Saws { get; }

    /// <summary>Whether there is one saw, and set-ups take time: then descents from shaken sequences end lower than annealing does in the same work.</summary>
    public bool IsOneWithSetUps { get; }

    public int Jobs => shop.Jobs;

    public AxisShop Shop => shop;

    public long NextVersion() => ++version;

    /// <summary>Cost in the units of the search.</summary>
    public long Cost()
    {
        var (sum, last) = (0L, 0L);
        foreach (var saw in Saws)
        {
            sum += saw.Cost;
            last = Math.Max(last, saw.Count == 0 ? 0 : saw.LastFinish);
        }
        return sum + (shop.MakespanRate * last);
    }

    /// <summary>What the search lessens: cost, where the makespan costs with a penalty in its place.</summary>
    public long Total()
    {
        var sum = 0L;
        foreach (var saw in Saws)
            sum += saw.Total;
        return sum;
    }

    public long Makespan()
    {
        var last = 0L;
        foreach (var saw in Saws)
            last = Math.Max(last, saw.Count == 0 ? 0 : saw.LastFinish);
        return last;
    }

    /// <summary>Sets the target of the makespan a second before a finish; where the makespan costs nothing, the least there is, so that of equal costs the earlier is preferred.</summary>
    public void Aim(long finish)
    {
        var rate = Math.Max(1, shop.MakespanRate);
        var penalty = new FinishPenalty(finish - 1, rate * WeightOfLateFinish, rate);
        foreach (var saw in Saws)
            saw.Use(penalty);
    }

    public void Change(SawSequence saw, int keep, ReadOnlySpan<Piece> pieces, int tail)
    {
        saw.Apply(keep, pieces, tail, NextVersion());
        saw.Commit();
    }

    public void Change(SawSequence saw, int keep, ReadOnlySpan<Piece> pieces, int tail, SawSequence other, int otherKeep, ReadOnlySpan<Piece> otherPieces, int otherTail)
    {
        saw.Apply(keep, pieces, tail, NextVersion());
        other.Apply(otherKeep, otherPieces, otherTail, NextVersion());
        saw.Commit();
        other.Commit();
    }

    /// <summary>Whether to go on; passes the work done on to the meter.</summary>
    public bool GoesOn()
    {
        foreach (var saw in Saws)
        {
            meter.Count(saw.Work);
            saw.Work = 0;
        }
        return !meter.Stopped;
    }
}
