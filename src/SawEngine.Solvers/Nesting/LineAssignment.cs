using System.Globalization;
using System.Text;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>Gives the slots of filled bars to order lines: urgent pieces gather on the first bars. Equal layouts on one stock item become one with a repeat.</summary>
internal sealed class LineAssignment
{
    private readonly NestProblem _problem;
    private readonly NestModel _model;
    private readonly List<Queue<(OrderLine Line, int Quantity)>> _waiting;
    private readonly Dictionary<PieceRef, int> _placed = [];
    private readonly Dictionary<string, int> _layoutIndex = new(StringComparer.Ordinal);
    private readonly List<BarLayout> _layouts = [];
    private readonly (OrderLine Line, int Quantity)[] _heads;

    private LineAssignment(NestProblem problem, NestModel model)
    {
        _problem = problem;
        _model = model;
        _waiting = [.. model.Types.Select(type => new Queue<(OrderLine, int)>(type.Lines))];
        _heads = [.. _waiting.Select(queue => queue.TryDequeue(out var head) ? head : default)];
    }

    /// <summary>The layouts by stock id, then in the order in which they were found, and the number of pieces placed of each line.</summary>
    public static (IReadOnlyList<BarLayout> Layouts, Dictionary<PieceRef, int> Placed) Of(NestProblem problem, NestModel model, IEnumerable<OpenBar> bars)
    {
        var assignment = new LineAssignment(problem, model);
        foreach (var bar in bars)
            assignment.Assign(bar);
        return ([.. assignment._layouts.OrderBy(layout => layout.Stock.StockId, StringComparer.Ordinal)], assignment._placed);
    }

    private void Assign(OpenBar bar)
    {
        var runs = PieceRun.InOrder(bar.Last);
        for (var left = bar.Bars; left > 0;)
        {
            // As many bars as the line at the head of each queue can serve alone, else one bar that is shared by lines.
            var alike = left;
            foreach (var run in runs)
                alike = Math.Min(alike, Math.Max(1, _heads[run.Type].Quantity / run.Count));
            var pieces = new List<(OrderLine Line, int Count)>();
            foreach (var run in runs)
                Draw(run, alike, pieces);
            Emit(bar, alike, pieces);
            left -= alike;
        }
    }

    private void Draw(PieceRun run, int bars, List<(OrderLine Line, int Count)> pieces)
    {
        for (var each = run.Count; each > 0;)
        {
            var (line, quantity) = _heads[run.Type];
            var taken = Math.Min(each, quantity / bars);
            if (taken > 0)
            {
                pieces.Add((line, taken));
                _placed[line.Ref] = _placed.GetValueOrDefault(line.Ref) + taken * bars;
            }
            quantity -= taken * bars;
            each -= taken;
            _heads[run.Type] = quantity > 0 || _waiting[run.Type].Count == 0 ? (line, quantity) : _waiting[run.Type].Dequeue();
        }
    }

    private void Emit(OpenBar bar, int bars, List<(OrderLine Line, int Count)> pieces)
    {
        var stock = _model.Stock[bar.Stock].Item;
        var key = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{bar.Stock}");
        foreach (var (line, count) in pieces)
            key.Append(CultureInfo.InvariantCulture, $"|{count}:{line.Ref.OrderId.Length}:{line.Ref.OrderId}:{line.Ref.LineId}");
        if (_layoutIndex.TryGetValue(key.ToString(), out var known))
        {
            _layouts[known] = _layouts[known] with { Repeat = _layouts[known].Repeat + bars };
            return;
        }
        var lines = pieces.SelectMany(piece => Enumerable.Repeat(piece.Line, piece.Count)).ToList();
        var layout = LayoutPositions.Lay(stock, lines, _problem.Rules, LayoutCost.Of(_problem))
            ?? throw new InvalidOperationException("A layout that was found does not fit its bar.");
        _layoutIndex.Add(key.ToString(), _layouts.Count);
        _layouts.Add(layout with { Repeat = bars });
    }
}
