namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>One long remnant rather than several short: pairs of bars exchange up to two pieces each, so that what is left over gathers on one of them.</summary>
public sealed class RemnantGathering
{
    private const int MostPieces = 2;

    private readonly Func<int, IReadOnlyList<int>, BarEnd?> _end;
    private readonly StepBudget _budget;
    private readonly List<Bar> _bars = [];
    private readonly HashSet<(int, int)> _tried = [];
    private int _nextId;

    private RemnantGathering(Func<int, IReadOnlyList<int>, BarEnd?> end, StepBudget budget) => (_end, _budget) = (end, budget);

    /// <summary>
    /// The bars with their leftover gathered. An exchange is made where the two bars together cost less, or the same with fewer remnants, or the same with as many remnants and
    /// the longer of their remnants longer. The pieces of each type stay the same in total; a bar left without pieces is dropped. Order of the bars as given.
    /// </summary>
    /// <param name="bars">Bars that hold their pieces, each bar by itself.</param>
    /// <param name="end">What a bar of this stock type with these pieces, at least one, costs and leaves; null where they do not fit.</param>
    /// <param name="budget">Steps; a step is one question to <paramref name="end"/>.</param>
    /// <param name="cancellation">Ends the search early with what has been gathered so far.</param>
    /// <exception cref="ArgumentException">The pieces of a given bar do not fit.</exception>
    public static IReadOnlyList<FilledBar> Gather(IReadOnlyList<FilledBar> bars, Func<int, IReadOnlyList<int>, BarEnd?> end, long budget, CancellationToken cancellation)
    {
        var gathering = new RemnantGathering(end, new StepBudget(budget, cancellation));
        for (var place = 0; place < bars.Count; place++)
        {
            var given = end(bars[place].Stock, bars[place].Counts) ?? throw new ArgumentException("A given bar does not hold its pieces.", nameof(bars));
            gathering.Add(place, bars[place], given);
        }
        while (gathering.ExchangeOnce())
            continue;
        return [.. gathering._bars.OrderBy(bar => bar.Place).Select(bar => bar.Filled)];
    }

    private void Add(int place, FilledBar filled, BarEnd end) => _bars.Add(new Bar(_nextId++, place, filled, end));

    /// <summary>The best exchange of the first pair that has one; bars with the longest remainders first. Where nothing is left over, nothing can be taken in.</summary>
    private bool ExchangeOnce()
    {
        var open = _bars.Where(bar => bar.End.Remainder > 0).OrderByDescending(bar => bar.End.Remainder).ThenBy(bar => bar.Place).ToList();
        for (var one = 0; one < open.Count; one++)
        {
            for (var other = one + 1; other < open.Count; other++)
            {
                if (_budget.Exhausted)
                    return false;
                if (_tried.Add((open[one].Id, open[other].Id)) && Exchange(open[one], open[other]))
                    return true;
            }
        }
        return false;
    }

    private bool Exchange(Bar one, Bar other)
    {
        var best = Value.Of(one.End, other.End);
        (FilledBar Filled, BarEnd End)[]? exchanged = null;
        foreach (var given in Handfuls(one.Filled.Counts, 0, MostPieces))
        {
            foreach (var taken in Handfuls(other.Filled.Counts, 0, MostPieces))
            {
                if (!_budget.Spend(1))
                    break;
                if (With(one.Filled, taken, given) is { } first && With(other.Filled, given, taken) is { } second && Value.Of(first.End, second.End) is var value && value.IsBetterThan(best))
                    (best, exchanged) = (value, [first, second]);
            }
        }
        if (exchanged is null)
            return false;
        _bars.RemoveAll(bar => bar == one || bar == other);
        foreach (var ((filled, end), place) in exchanged.Zip([one.Place, other.Place]))
        {
            if (filled.Counts.Any(count => count > 0))
                Add(place, filled, end);
        }
        return true;
    }

    /// <summary>A bar with some pieces more and some less; null where they do not fit.</summary>
    private (FilledBar Filled, BarEnd End)? With(FilledBar bar, int[] more, int[] less)
    {
        var counts = bar.Counts.ToArray();
        foreach (var type in more)
            counts[type]++;
        foreach (var type in less)
            counts[type]--;
        if (counts.All(count => count == 0))
            return (bar with { Counts = counts }, default);
        _budget.Spend(1);
        return _end(bar.Stock, counts) is { } end ? (bar with { Counts = counts }, end) : null;
    }

    /// <summary>All choices of up to so many pieces, as ascending piece types; none first.</summary>
    private static IEnumerable<int[]> Handfuls(IReadOnlyList<int> counts, int from, int most)
    {
        yield return [];
        if (most == 0)
            yield break;
        for (var type = from; type < counts.Count; type++)
        {
            if (counts[type] == 0)
                continue;
            var left = counts.ToArray();
            left[type]--;
            foreach (var rest in Handfuls(left, type, most - 1))
                yield return [type, .. rest];
        }
    }

    private sealed record Bar(int Id, int Place, FilledBar Filled, BarEnd End);

    private readonly record struct Value(decimal Cost, int Remnants, long Longest)
    {
        public static Value Of(BarEnd one, BarEnd other) =>
            new(one.Cost + other.Cost, (one.IsRemnant ? 1 : 0) + (other.IsRemnant ? 1 : 0), Math.Max(Kept(one), Kept(other)));

        private static long Kept(BarEnd end) => end.IsRemnant ? end.Remainder : 0;

        public bool IsBetterThan(Value other) => (Cost, Remnants, -Longest).CompareTo((other.Cost, other.Remnants, -other.Longest)) < 0;
    }
}
