namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// Which order lines share a layout. The fewest open lines over all orders of the layouts is the pathwidth of this graph plus one, so only the graph matters.
/// </summary>
internal sealed class LineGraph
{
    private readonly LineSet[] _together;

    private LineGraph(LineSet[] together) => _together = together;

    public int Lines => _together.Length;

    /// <summary>The lines that share a layout with a line, itself among them.</summary>
    public LineSet Together(int line) => _together[line];

    public static LineGraph Of(IReadOnlyList<LineSet> layouts, int lines)
    {
        var together = Enumerable.Range(0, lines).Select(_ => new LineSet(lines)).ToArray();
        foreach (var layout in layouts)
        {
            foreach (var line in layout.Lines())
                together[line].Add(layout);
        }
        return new LineGraph(together);
    }

    /// <summary>The connected components, each as the ascending list of its lines; by first line.</summary>
    public List<int[]> Components()
    {
        var seen = new LineSet(Lines);
        var components = new List<int[]>();
        for (var first = 0; first < Lines; first++)
        {
            if (seen.Contains(first))
                continue;
            var component = _together[first].Copy();
            var waiting = new Stack<int>(component.Lines());
            while (waiting.TryPop(out var line))
            {
                foreach (var other in _together[line].Lines().Where(other => !component.Contains(other)))
                    waiting.Push(other);
                component.Add(_together[line]);
            }
            seen.Add(component);
            components.Add([.. component.Lines()]);
        }
        return components;
    }

    /// <summary>
    /// A lower bound on the open lines of a component: one more than the largest least degree met while the line of least degree is contracted into the neighbor
    /// with which it shares the fewest neighbors (contraction degeneracy, a bound on treewidth and so on pathwidth; Bodlaender, Koster, Wolle 2004).
    /// Weaker, yet valid, where the steps end first.
    /// </summary>
    public int Bound(int[] component, StepBudget steps)
    {
        var left = component.ToList();
        var near = left.ToDictionary(line => line, line => _together[line].Copy());
        var bound = 1;
        while (left.Count > 1 && steps.Spend(left.Count))
        {
            var line = left.MinBy(one => near[one].Count);
            bound = Math.Max(bound, near[line].Count);
            left.Remove(line);
            var into = near[line].Lines().Where(other => other != line).MinBy(other => near[other].CountShared(near[line]));
            foreach (var other in near[line].Lines().Where(other => other != line))
            {
                near[other].Remove(line);
                near[other].Add(into);
                near[into].Add(other);
            }
        }
        return bound;
    }
}
