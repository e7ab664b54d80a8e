using System.Runtime.CompilerServices;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// Looks for the end of the second of two neighboring blocks at which they cost less the other way around. All ends are looked at in one pass: the second
/// block is begun at once, so that what it costs there is a running sum; the first block and all that follows are shifted, and cost no less than their
/// tangents say, as tardiness is convex in a shift. With breaks that holds of later shifts alone, as time passes no slower than attended time.
/// </summary>
internal ref struct NeighborExchange
{
    private readonly SawSequence saw;
    private readonly ReadOnlySpan<Place> places;
    private readonly ReadOnlySpan<JobNumbers> jobs;
    private readonly ReadOnlySpan<int> into; // set-ups before the first block
    private readonly ReadOnlySpan<int> from; // set-ups after it
    private readonly bool hasBreaks;
    private readonly bool paysSetUps;
    private readonly int first;
    private readonly int second;
    private readonly JobNumbers delayed;
    private readonly bool waits;
    private readonly long penaltySlope;
    private readonly long ownChange;
    private long forward; // how much later the second block is
    private long at; // how much later the first block is where its cost is known
    private long cost;
    private long slope;

    private NeighborExchange(SawSequence saw, int first, int second)
    {
        (this.saw, this.first, this.second) = (saw, first, second);
        var numbers = saw.Numbers;
        places = saw.Places;
        jobs = numbers.Jobs;
        (hasBreaks, paysSetUps) = (numbers.HasBreaks, numbers.PaysSetUps);
        var (kept, moved) = (places[first - 1], places[second]);
        delayed = jobs[places[first].Job];
        into = numbers.SetUpInto.AsSpan(places[first].Job * numbers.Width, numbers.Width);
        from = numbers.SetUp.AsSpan(places[second - 1].Job * numbers.Width, numbers.Width);
        var setUp = numbers.SetUp[(kept.Job * numbers.Width) + moved.Job];
        forward = Math.Max(kept.Finish + setUp, jobs[moved.Job].Release) - moved.Start;
        waits = places[second - 1].Waits != places[first].Waits;
        penaltySlope = saw.Penalty.SlopeAt(saw.LastFinish);
        ownChange = (jobs[moved.Job].SetUpRate * (setUp - moved.SetUp)) - (delayed.SetUpRate * places[first].SetUp);
        (at, cost, slope) = (0, places[second - 1].LateCost - kept.LateCost, places[second - 1].LateWeight - kept.LateWeight);
    }

    /// <summary>The first such end from the second block's beginning to a farthest place; 0 where there is none.</summary>
    public static int Find(SawSequence saw, int first, int second, int farthest) => new NeighborExchange(saw, first, second).Find(farthest);

    private int Find(int farthest)
    {
        unchecked
        {
            ref readonly var end = ref places[saw.Count];
            var limit = end.LateCost - places[first - 1].LateCost;
            var most = limit + MostSaved();
            var passed = 0L;
            for (var last = second; last <= farthest; last++)
            {
                ref readonly var place = ref places[last];
                passed += LateCostForward(place);
                if (passed >= most)
                {
                    saw.Work += last - second;
                    return 0;
                }
                var back = Back(place);
                var sum = passed + RestAtLeast(back, place, places[last + 1], end);
                if (paysSetUps)
                    sum += OwnChange(place, places[last + 1]);
                if ((back >= at || !hasBreaks) && sum + cost + ((back - at) * slope) >= limit)
                    continue;
                Shift(back);
                if (sum + cost < limit && saw.IsBetterExchanged(first, second, last))
                    return last;
            }
            saw.Work += farthest - second + 1;
            return 0;
        }
    }

    /// <summary>More than this is not saved by less set-up and an earlier end.</summary>
    private readonly long MostSaved()
    {
        ref readonly var end = ref places[saw.Count];
        ref readonly var kept = ref places[first - 1];
        return (penaltySlope * (end.Finish - kept.Finish)) + (paysSetUps ? end.OwnCost - kept.OwnCost : 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private long LateCostForward(in Place place)
    {
        unchecked
        {
            if (forward > 0 && place.Waits != places[second].Waits)
                forward = 0;
            var late = hasBreaks && forward < 0 ? saw.Numbers.TimeOf(place.Finish + forward) - jobs[place.Job].Due : place.Late + forward;
            return place.Weight * (late & ~(late >> 63));
        }
    }

    /// <summary>How much later the first block is after a second block with this end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly long Back(in Place place)
    {
        unchecked
        {
            var back = Math.Max(place.Finish + forward + into[place.Job], delayed.Release) - places[first].Start;
            return waits && back > 0 ? 0 : back;
        }
    }

    /// <summary>What follows both blocks pays at least for being late, and more than now for the last finish.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly long RestAtLeast(long back, in Place place, in Place next, in Place end)
    {
        unchecked
        {
            var shift = places[second - 1].Finish + back + from[next.Job] - next.Start;
            if (shift > 0 && end.Waits != place.Waits)
                shift = 0;
            var late = hasBreaks && shift < 0 ? 0 : end.LateCost - place.LateCost + (shift * (end.LateWeight - place.LateWeight));
            return (late & ~(late >> 63)) + (shift * penaltySlope);
        }
    }

    private readonly long OwnChange(in Place place, in Place next) =>
        unchecked(ownChange + (delayed.SetUpRate * into[place.Job]) + (jobs[next.Job].SetUpRate * (from[next.Job] - next.SetUp)));

    /// <summary>What the first block pays for being late at a shift, and for each second more.</summary>
    private void Shift(long shift)
    {
        unchecked
        {
            saw.Work += second - first;
            (at, cost, slope) = (shift, 0, 0);
            if (hasBreaks && shift < 0)
                return;
            for (var one = first; one < second; one++)
            {
                ref readonly var place = ref places[one];
                var late = place.Late + shift;
                var weight = place.Weight & ~(late >> 63);
                cost += weight * late;
                slope += weight;
            }
        }
    }
}
