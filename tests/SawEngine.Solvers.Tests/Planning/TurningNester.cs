using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>Nests greedily, then turns the pieces of each bar by a pattern that is repeated along it.</summary>
internal sealed class TurningNester(params PieceTurn[] pattern) : INester
{
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var nest = new GreedyNester().Solve(problem, effort, cancellation);
        var lines = problem.Lines.ToDictionary(line => line.Ref);
        var layouts = nest.Layouts.Select(layout => Turned(layout, lines, problem)).ToList();
        var value = layouts.Sum(LayoutCost.Of(problem).Micros);
        return nest with { Layouts = layouts, ValueMicros = value, BoundMicros = Math.Min(nest.BoundMicros, value) };
    }

    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) => new GreedyNester().Bound(problem, effort, cancellation);

    private BarLayout Turned(BarLayout layout, Dictionary<PieceRef, OrderLine> lines, NestProblem problem)
    {
        var pieces = layout.Cuts.Select((cut, i) => new PlacedPiece(lines[cut.Piece], pattern[i % pattern.Length])).ToList();
        return LayoutPositions.Lay(layout.Stock, pieces, problem.Rules, LayoutCost.Of(problem))! with { Repeat = layout.Repeat };
    }
}
