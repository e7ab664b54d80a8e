namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// Fewer different layouts: two become one, three two, four three, with the same pieces from the same bars at no higher cost. Each step is an exact search of bounded length.
/// </summary>
public sealed class LayoutMerging
{
    private const int LargestGroup = 4;
    private const long StepsPerGroup = 4_000;

    private readonly Func<int, IReadOnlyList<int>, bool> _fits;
    private readonly Func<int, IReadOnlyList<int>, decimal> _cost;
    private readonly StepBudget _budget;
    private readonly List<(int Id, CountedLayout Layout)> _layouts;
    private readonly HashSet<(int, int, int, int)> _tried = [];
    private int _nextId;

    private LayoutMerging(
        IReadOnlyList<CountedLayout> layouts,
        Func<int, IReadOnlyList<int>, bool> fits,
        Func<int, IReadOnlyList<int>, decimal> cost,
        long budget,
        CancellationToken cancellation)
    {
        (_fits, _cost, _budget) = (fits, cost, new StepBudget(budget, cancellation));
        _layouts = [.. layouts.Select(layout => (_nextId++, layout))];
    }

    /// <summary>
    /// The layouts with as few different ones as found: pieces of each type and bars of each stock type in total as given, total cost (per bar times repeat) not higher.
    /// Layouts that are left as they were keep their order, new ones follow.
    /// </summary>
    /// <param name="layouts">Layouts that fit.</param>
    /// <param name="fits">Can these pieces be cut from one bar of this stock type? Fewer pieces are taken to fit where more do; where they do not, merges are missed, no wrong ones made.</param>
    /// <param name="cost">Cost of one bar of this stock type cut into these pieces.</param>
    /// <param name="budget">Steps; a step is one question to <paramref name="fits"/> or one number tried.</param>
    /// <param name="cancellation">Ends the search early with the layouts merged so far.</param>
    /// <exception cref="ArgumentOutOfRangeException">A repeat is below 1.</exception>
    public static IReadOnlyList<CountedLayout> Merge(
        IReadOnlyList<CountedLayout> layouts,
        Func<int, IReadOnlyList<int>, bool> fits,
        Func<int, IReadOnlyList<int>, decimal> cost,
        long budget,
        CancellationToken cancellation)
    {
        foreach (var layout in layouts)
            ArgumentOutOfRangeException.ThrowIfLessThan(layout.Repeat, 1, nameof(layouts));
        var merging = new LayoutMerging(layouts, fits, cost, budget, cancellation);
        while (merging.MergeOne())
            continue;
        return [.. merging._layouts.Select(entry => entry.Layout)];
    }

    /// <summary>The first group, small groups of seldom repeated layouts first, that can do with one layout less.</summary>
    private bool MergeOne()
    {
        var seldomFirst = _layouts.OrderBy(entry => entry.Layout.Repeat).ToList();
        for (var size = 2; size <= LargestGroup; size++)
        {
            foreach (var group in Groups(seldomFirst, size, 0))
            {
                if (!_budget.Spend(1))
                    return false;
                if (_tried.Add(Key(group)) && Merged(group) is { } merged)
                {
                    _layouts.RemoveAll(group.Contains);
                    _layouts.AddRange(merged.Select(layout => (_nextId++, layout)));
                    return true;
                }
            }
        }
        return false;
    }

    private static IEnumerable<List<(int Id, CountedLayout Layout)>> Groups(List<(int Id, CountedLayout Layout)> layouts, int size, int from)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }
        for (var first = from; first <= layouts.Count - size; first++)
        {
            foreach (var rest in Groups(layouts, size - 1, first + 1))
                yield return [layouts[first], .. rest];
        }
    }

    private static (int, int, int, int) Key(List<(int Id, CountedLayout Layout)> group)
    {
        var ids = group.Select(entry => entry.Id).Order().Concat([-1, -1]).ToList();
        return (ids[0], ids[1], ids[2], ids[3]);
    }

    private List<CountedLayout>? Merged(List<(int Id, CountedLayout Layout)> group)
    {
        var layouts = group.ConvertAll(entry => entry.Layout);
        var own = _budget.Part(StepsPerGroup);
        var merged = MergeSearch.Find(layouts, _fits, _cost, own);
        _budget.Spend(own.Spent);
        return merged;
    }
}
