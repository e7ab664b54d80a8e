namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// Fewer different layouts: two become one, three two, four three, with the same pieces from the same bars at no higher cost. Each step is an exact search of bounded length.
/// </summary>
public sealed class LayoutMerging
{
    private const int LargestGroup = 4;
    private const long StepsPerGroup = 500;

    private readonly Func<int, IReadOnlyList<int>, bool> _fits;
    private readonly Func<int, IReadOnlyList<int>, decimal> _cost;
    private readonly StepBudget _budget;
    private readonly List<CountedLayout?> _layouts;

    private LayoutMerging(
        IReadOnlyList<CountedLayout> layouts,
        Func<int, IReadOnlyList<int>, bool> fits,
        Func<int, IReadOnlyList<int>, decimal> cost,
        long budget,
        CancellationToken cancellation)
    {
        (_fits, _cost, _budget) = (fits, cost, new StepBudget(budget, cancellation));
        _layouts = [.. layouts.OrderBy(layout => layout.Repeat)];
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
        merging.Run();
        var left = merging._layouts.OfType<CountedLayout>().ToHashSet(ReferenceEqualityComparer.Instance);
        return [.. layouts.Where(left.Contains), .. merging._layouts.OfType<CountedLayout>().Except(layouts, ReferenceEqualityComparer.Instance).Cast<CountedLayout>()];
    }

    /// <summary>Small groups of seldom repeated layouts first. Each layout meets those before it in groups of each size; new ones come last, so that each group is tried once.</summary>
    private void Run()
    {
        var next = new int[LargestGroup + 1];
        for (var size = 2; size <= LargestGroup && !_budget.Exhausted;)
        {
            if (next[size] == _layouts.Count)
                size++;
            else if (MergeWithEarlier(next[size]++, size))
                size = 2;
        }
    }

    private bool MergeWithEarlier(int newest, int size)
    {
        foreach (var group in Groups(newest, size))
        {
            if (!_budget.Spend(1))
                return false;
            var layouts = group.ConvertAll(index => _layouts[index]!);
            if (layouts.DistinctBy(layout => layout.Stock).Count() == size || Merged(layouts) is not { } merged)
                continue;
            foreach (var index in group)
                _layouts[index] = null;
            _layouts.AddRange(merged);
            return true;
        }
        return false;
    }

    /// <summary>Groups of layouts of which one is the newest.</summary>
    private IEnumerable<List<int>> Groups(int newest, int size)
    {
        if (_layouts[newest] is null)
            yield break;
        if (size == 1)
        {
            yield return [newest];
            yield break;
        }
        for (var before = 0; before < newest; before++)
        {
            foreach (var group in Groups(before, size - 1))
                yield return [.. group, newest];
        }
    }

    private List<CountedLayout>? Merged(List<CountedLayout> layouts)
    {
        var own = _budget.Part(StepsPerGroup);
        var merged = MergeSearch.Find(layouts, _fits, _cost, own);
        _budget.Spend(own.Spent);
        return merged;
    }
}
