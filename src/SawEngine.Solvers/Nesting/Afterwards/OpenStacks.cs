namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>Orders layouts so that few order lines are open at once (minimization of open stacks): few pallets stand at the saw.</summary>
public static class OpenStacks
{
    private const int MostStarts = 24;

    /// <summary>
    /// The order with the fewest open lines at its worst. Beyond the budget, or once canceled, the best order found with the bound proved so far.
    /// </summary>
    /// <param name="layouts">For each layout the numbers of the order lines it contains, 0 or more; repetition is harmless.</param>
    /// <param name="budget">Steps the search may take; a step is one look at one line.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <param name="limit">Where given, the search stops as soon as it is known whether an order with at most so many open exists.</param>
    public static LayoutOrder Order(IReadOnlyList<IReadOnlyCollection<int>> layouts, long budget, CancellationToken cancellation, int? limit = null)
    {
        var (sets, lines) = Sets(layouts);
        var graph = LineGraph.Of(sets, lines);
        var steps = new StepBudget(budget, cancellation);
        var components = graph.Components();
        var widest = sets.Select(set => set.Count).DefaultIfEmpty(0).Max();
        var bound = components.Select(component => graph.Bound(component, steps)).Append(widest).Max();
        var aim = Math.Max(bound, limit ?? 0);
        var closing = new List<int>();
        // The component that forces most open lines decides; the others need only stay within what it forces.
        foreach (var component in components)
        {
            var (order, least) = Closing(graph, component, aim, limit is not null, steps);
            closing.AddRange(order);
            bound = Math.Max(bound, least);
            aim = Math.Max(aim, least);
        }
        var sequence = Sequence(sets, closing, lines);
        return new LayoutOrder(sequence, LargestOpen(sets, sequence, lines), bound, steps.Spent);
    }

    /// <summary>The largest number of order lines open while any one layout is cut, in a given order of the layouts.</summary>
    public static int LargestOpen(IReadOnlyList<IReadOnlyCollection<int>> layouts, IReadOnlyList<int> order)
    {
        var (sets, lines) = Sets(layouts);
        return LargestOpen(sets, order, lines);
    }

    /// <summary>Line numbers made dense in ascending order.</summary>
    private static (List<LineSet> Sets, int Lines) Sets(IReadOnlyList<IReadOnlyCollection<int>> layouts)
    {
        var numbers = layouts.SelectMany(layout => layout).Distinct().Order().ToList();
        var index = numbers.Select((number, position) => (number, position)).ToDictionary(pair => pair.number, pair => pair.position);
        var sets = new List<LineSet>();
        foreach (var layout in layouts)
        {
            var set = new LineSet(numbers.Count);
            foreach (var line in layout)
                set.Add(index[line]);
            sets.Add(set);
        }
        return (sets, numbers.Count);
    }

    private static int LargestOpen(List<LineSet> layouts, IReadOnlyList<int> order, int lines)
    {
        var opens = new int[order.Count];
        var closes = new int[order.Count];
        var first = Enumerable.Repeat(-1, lines).ToArray();
        var last = new int[lines];
        for (var position = 0; position < order.Count; position++)
        {
            foreach (var line in layouts[order[position]].Lines())
            {
                if (first[line] < 0)
                    opens[first[line] = position]++;
                last[line] = position;
            }
        }
        foreach (var position in last)
            closes[position]++;
        var (open, largest) = (0, 0);
        for (var position = 0; position < order.Count; position++)
        {
            open += opens[position];
            largest = Math.Max(largest, open);
            open -= closes[position];
        }
        return largest;
    }

    /// <summary>
    /// A closing order of a component, and the least open lines proved for it where they are above an aim. First by looking one line ahead, then by exact search for ever
    /// fewer open lines with half the steps; if those end first, the others raise the bound from the aim on. With a limit one search for the aim is enough.
    /// </summary>
    private static (List<int> Order, int Least) Closing(LineGraph graph, int[] component, int aim, bool limited, StepBudget steps)
    {
        var (best, open) = LookingAhead(graph, component, aim, steps);
        var least = aim;
        if (limited)
        {
            Fewer(graph, component, Math.Min(aim + 1, open), ref best, ref least, steps);
        }
        else
        {
            var half = steps.Part(steps.Left / 2);
            open = Fewer(graph, component, open, ref best, ref least, half);
            steps.Spend(half.Spent);
            Raise(graph, component, open, ref best, ref least, steps);
        }
        return (best, least > aim ? least : 0);
    }

    /// <summary>Searches for fewer open lines than some number until none or the bound is reached; the fewest found.</summary>
    private static int Fewer(LineGraph graph, int[] component, int open, ref List<int> best, ref int least, StepBudget budget)
    {
        while (open > least)
        {
            var found = ClosingSearch.Find(graph, component, open - 1, budget, out var refuted);
            if (refuted)
                least = open;
            if (found is null)
                break;
            (best, open) = (found, open - 1);
        }
        return open;
    }

    /// <summary>Refutes one number after the other from the bound on.</summary>
    private static void Raise(LineGraph graph, int[] component, int open, ref List<int> best, ref int least, StepBudget budget)
    {
        while (least < open)
        {
            var found = ClosingSearch.Find(graph, component, least, budget, out var refuted);
            best = found ?? best;
            if (!refuted)
                break;
            least++;
        }
    }

    /// <summary>Closes next the line that opens the fewest others; from several first lines, those of least degree first.</summary>
    private static (List<int> Order, int Open) LookingAhead(LineGraph graph, int[] component, int aim, StepBudget steps)
    {
        List<int> best = [];
        var least = int.MaxValue;
        foreach (var first in component.OrderBy(line => graph.Together(line).Count).Take(MostStarts))
        {
            if (least <= aim || best.Count > 0 && steps.Exhausted)
                break;
            var (order, open) = LookingAhead(graph, component, first, least, steps);
            if (open < least)
                (best, least) = (order, open);
        }
        return (best, least);
    }

    private static (List<int> Order, int Open) LookingAhead(LineGraph graph, int[] component, int first, int below, StepBudget steps)
    {
        var opened = new LineSet(graph.Lines);
        var left = component.ToList();
        var order = new List<int>();
        var largest = 0;
        for (var line = first; ; line = left.MinBy(other => graph.Together(other).CountBeyond(opened)))
        {
            opened.Add(graph.Together(line));
            largest = Math.Max(largest, opened.Count - order.Count);
            order.Add(line);
            left.Remove(line);
            if (left.Count == 0 || largest >= below)
                return (order, largest);
            if (!steps.Spend(left.Count))
                return ([.. order, .. left], component.Length);
        }
    }

    /// <summary>
    /// The layouts in the order in which the closing lines need them, those first that open fewest others; a layout all of whose lines have been opened goes beside those cut already,
    /// so that lines close early.
    /// </summary>
    private static List<int> Sequence(List<LineSet> layouts, List<int> closing, int lines)
    {
        var layoutsOf = Enumerable.Range(0, lines).Select(_ => new List<int>()).ToArray();
        for (var layout = 0; layout < layouts.Count; layout++)
        {
            foreach (var line in layouts[layout].Lines())
                layoutsOf[line].Add(layout);
        }
        var unopened = layouts.ConvertAll(layout => layout.Count);
        var (opened, placed, order) = (new LineSet(lines), new bool[layouts.Count], new List<int>());
        foreach (var line in closing)
        {
            for (var waiting = layoutsOf[line]; waiting.Exists(layout => !placed[layout]);)
                Open(waiting.Where(layout => !placed[layout]).MinBy(layout => unopened[layout]));
        }
        order.AddRange(Enumerable.Range(0, layouts.Count).Where(layout => !placed[layout]));
        return order;

        void Open(int next)
        {
            Place(next);
            var ready = new SortedSet<int>();
            foreach (var line in layouts[next].Lines().Where(line => !opened.Contains(line)).ToList())
            {
                opened.Add(line);
                ready.UnionWith(layoutsOf[line].Where(layout => --unopened[layout] == 0 && !placed[layout]));
            }
            foreach (var layout in ready)
                Place(layout);
        }

        void Place(int layout)
        {
            placed[layout] = true;
            order.Add(layout);
        }
    }
}
