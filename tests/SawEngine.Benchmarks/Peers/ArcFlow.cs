using Google.OrTools.ModelBuilder;
using SawEngine.Benchmarks.Quality;

namespace SawEngine.Benchmarks.Peers;

/// <summary>Arc-flow: the least cost of bars through whose positions the pieces flow, by a general solver of integer programs.</summary>
internal sealed class ArcFlow
{
    private const int MostArcs = 3_000_000;

    private readonly BarProblem _problem;
    private readonly ArcFlowGraph _graph;
    private readonly Model _model = new();
    private readonly List<(int From, int To, int Piece, Variable Flow)> _flows = [];
    private readonly List<Variable> _bars;

    private ArcFlow(BarProblem problem, ArcFlowGraph graph)
    {
        _problem = problem;
        _graph = graph;
        _bars = [.. graph.Ends.Select(end => _model.NewIntVar(0, problem.Bars[end.Bar].Available ?? double.PositiveInfinity, ""))];
        AddFlows();
        AddBalances();
        _model.Minimize(LinearExpr.WeightedSum(_bars, graph.Ends.Select(end => (double)problem.Bars[end.Bar].CostMicros)));
    }

    /// <summary>Solves by the named solver of <c>Google.OrTools.ModelBuilder</c>.</summary>
    public static PeerNest? Solve(BarProblem problem, string solverName, double seconds)
    {
        var graph = ArcFlowGraph.Of(problem, MostArcs) ?? throw new NotSupportedException($"more than {MostArcs} arcs");
        return new ArcFlow(problem, graph).Solve(solverName, seconds);
    }

    private PeerNest? Solve(string solverName, double seconds)
    {
        var solver = new Solver(solverName);
        if (!solver.SolverIsSupported())
            throw new NotSupportedException($"{solverName} is not there");
        solver.EnableOutput(false);
        solver.SetTimeLimitInSeconds(seconds);
        solver.Solve(_model);
        return solver.HasSolution() ? new(Patterns(solver), null) : null;
    }

    private void AddFlows()
    {
        foreach (var arc in _graph.Arcs)
            _flows.Add((arc.From, arc.To, arc.Piece, _model.NewIntVar(0, _problem.Pieces[arc.Piece].Demand, "")));
        for (var i = 2; i < _graph.Nodes.Count; i++)
            _flows.Add((_graph.Nodes[i - 1], _graph.Nodes[i], -1, _model.NewIntVar(0, double.PositiveInfinity, "")));
    }

    private void AddBalances()
    {
        var balances = _graph.Nodes.ToDictionary(node => node, _ => _model.AddLinearConstraint(LinearExpr.Constant(0), 0, 0));
        var demands = _problem.Pieces.Select(piece => _model.AddLinearConstraint(LinearExpr.Constant(0), piece.Demand, double.PositiveInfinity)).ToList();
        foreach (var (from, to, piece, flow) in _flows)
        {
            balances[from].AddTerm(flow, -1);
            balances[to].AddTerm(flow, 1);
            if (piece >= 0)
                demands[piece].AddTerm(flow, 1);
        }
        for (var i = 0; i < _bars.Count; i++)
        {
            balances[0].AddTerm(_bars[i], 1);
            balances[_graph.Ends[i].End].AddTerm(_bars[i], -1);
        }
    }

    /// <summary>Takes the flow apart into bars; pieces beyond the demand are left out.</summary>
    private List<CutPattern> Patterns(Solver solver)
    {
        var left = _problem.Pieces.Select(piece => piece.Demand).ToArray();
        var onward = _flows.Select(flow => new Run(flow.To, flow.Piece, Whole(solver, flow.Flow)) { From = flow.From })
            .Where(run => run.Left > 0)
            .GroupBy(run => run.From)
            .ToDictionary(group => group.Key, group => group.ToList());
        var ending = _graph.Ends.Select((end, i) => new Run(end.End, end.Bar, Whole(solver, _bars[i]))).ToList();
        var patterns = new List<CutPattern>();
        while (ending.Exists(run => run.Left > 0))
        {
            var pieces = new List<int>();
            var position = 0;
            Run? bar;
            while ((bar = ending.Find(run => run.Left > 0 && run.To == position)) is null)
            {
                var run = onward[position].Find(run => run.Left > 0)!;
                run.Left--;
                position = run.To;
                if (run.What >= 0 && left[run.What]-- > 0)
                    pieces.Add(run.What);
            }
            bar.Left--;
            if (pieces.Count > 0)
                patterns.Add(new(bar.What, 1, pieces));
        }
        return patterns;
    }

    private static long Whole(Solver solver, Variable variable) => (long)Math.Round(solver.Value(variable), MidpointRounding.AwayFromZero);

    /// <summary>Flow that is not yet taken, of a piece (-1 for waste) or of a bar's end.</summary>
    private sealed class Run(int to, int what, long left)
    {
        public int From { get; init; }

        public int To => to;

        public int What => what;

        public long Left { get; set; } = left;
    }
}
