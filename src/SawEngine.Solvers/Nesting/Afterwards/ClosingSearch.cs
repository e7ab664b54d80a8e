namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>
/// Is there an order in which the lines of a component close with never more than some number open? Depth-first over which line closes next; how many are open
/// depends on the set of closed lines only, so sets from which no order goes on are remembered (Chu and Stuckey 2009).
/// </summary>
internal sealed class ClosingSearch
{
    private readonly LineGraph _graph;
    private readonly int[] _lines;
    private readonly int _most;
    private readonly StepBudget _budget;
    private readonly HashSet<LineSet> _failed = [];
    private readonly List<int> _order = [];

    private ClosingSearch(LineGraph graph, int[] lines, int most, StepBudget budget) => (_graph, _lines, _most, _budget) = (graph, lines, most, budget);

    /// <summary>The closing order found; null with <paramref name="refuted"/> where there is none, null without where the budget ended first.</summary>
    public static List<int>? Find(LineGraph graph, int[] lines, int most, StepBudget budget, out bool refuted)
    {
        var search = new ClosingSearch(graph, lines, most, budget);
        var found = search.Run();
        refuted = !found && !budget.Exhausted;
        return found ? search._order : null;
    }

    private bool Run()
    {
        var path = new Stack<Node>();
        var node = Reach(new LineSet(_graph.Lines), new LineSet(_graph.Lines));
        while (!_budget.Exhausted)
        {
            if (_order.Count == _lines.Length)
                return true;
            if (node is not null && node.Next < node.Choices.Count)
            {
                path.Push(node);
                var closed = node.Closed.Copy();
                var opened = node.Opened.Copy();
                Close(node.Choices[node.Next++].Line, closed, opened);
                node = Reach(closed, opened);
                continue;
            }
            if (node is not null)
                _failed.Add(node.Closed);
            if (!path.TryPop(out node))
                return false;
            _order.RemoveRange(node.Depth, _order.Count - node.Depth);
        }
        return false;
    }

    private void Close(int line, LineSet closed, LineSet opened)
    {
        closed.Add(line);
        opened.Add(_graph.Together(line));
        _order.Add(line);
    }

    /// <summary>Closes what is to be closed without choice and lists the choices then left; null where nothing leads on from the set reached.</summary>
    private Node? Reach(LineSet closed, LineSet opened)
    {
        while (true)
        {
            if (_failed.Contains(closed))
                return null;
            var choices = Choices(closed, opened);
            if (Sure(choices, opened, opened.Count - closed.Count) is not { } sure)
                return new Node(closed, opened, [.. choices.Where(choice => Fits(choice, opened.Count - closed.Count))], _order.Count);
            Close(sure, closed, opened);
            if (!_budget.Spend(1))
                return null;
        }
    }

    private bool Fits(Choice choice, int open) => open + choice.Opens <= _most;

    /// <summary>
    /// The lines worth closing next, those that open fewest others first. A line is left out where another opens only lines that it opens too:
    /// that other may as well close before it. Lines that open the same are counted with the first of them.
    /// </summary>
    private List<Choice> Choices(LineSet closed, LineSet opened)
    {
        var all = new List<Choice>();
        foreach (var line in _lines)
        {
            if (!closed.Contains(line))
                all.Add(new Choice(line, _graph.Together(line).CountBeyond(opened), 1));
        }
        var steps = _lines.Length;
        var kept = new List<Choice>();
        foreach (var choice in all.OrderBy(choice => choice.Opens))
        {
            var within = kept.FindIndex(other => other.Opens == 0 || _graph.Together(other.Line).CountBeyond(opened, _graph.Together(choice.Line)) == 0);
            steps += within < 0 ? kept.Count : within + 1;
            if (within < 0)
                kept.Add(choice);
            else if (kept[within].Opens == choice.Opens)
                kept[within] = kept[within] with { Alike = kept[within].Alike + 1 };
        }
        _budget.Spend(steps);
        return kept;
    }

    /// <summary>
    /// A line that can be closed now in every case: with its like, or with its like and one further group, it closes at least as many lines as it opens.
    /// The number of open lines is submodular in the closed set, so closing them first never leaves more open later.
    /// </summary>
    private int? Sure(List<Choice> choices, LineSet opened, int open)
    {
        foreach (var choice in choices)
        {
            if (choice.Opens <= choice.Alike && Fits(choice, open))
                return choice.Line;
        }
        foreach (var choice in choices)
        {
            var more = choice.Opens - choice.Alike;
            if (!Fits(choice, open))
                break;
            foreach (var other in choices)
            {
                if (other.Line == choice.Line || more > other.Alike)
                    continue;
                _budget.Spend(1);
                var opens = _graph.Together(other.Line).CountBeyond(opened, _graph.Together(choice.Line));
                if (more + opens <= other.Alike && open + more + opens <= _most)
                    return choice.Line;
            }
        }
        return null;
    }

    private readonly record struct Choice(int Line, int Opens, int Alike);

    private sealed class Node(LineSet closed, LineSet opened, List<Choice> choices, int depth)
    {
        public LineSet Closed => closed;
        public LineSet Opened => opened;
        public List<Choice> Choices => choices;
        public int Depth => depth;
        public int Next { get; set; }
    }
}
