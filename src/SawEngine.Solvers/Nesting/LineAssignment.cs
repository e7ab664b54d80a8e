using System.Globalization;
using System.Text;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Gives the slots of filled bars to order lines: urgent pieces gather on the first bars, and of lines that are equally urgent those are taken that leave most bars alike.
/// Equal layouts on one stock item become one with a repeat.
/// </summary>
internal sealed class LineAssignment
{
    private readonly NestProblem _problem;
    private readonly NestModel _model;
    private readonly List<List<WaitingLine>> _waiting;
    private readonly Dictionary<string, int> _layoutIndex = new(StringComparer.Ordinal);
    private readonly List<BarLayout> _layouts = [];

    private LineAssignment(NestProblem problem, NestModel model)
    {
        _problem = problem;
        _model = model;
        _waiting = [.. model.Types.Select(type => type.Lines.ConvertAll(one => new WaitingLine(one.Line, NestModel.DueOf(problem, one.Line), one.Quantity)))];
    }

    /// <summary>The layouts by stock id, then in the order in which they were found. The bars hold all pieces of the model.</summary>
    public static IReadOnlyList<BarLayout> Of(NestProblem problem, NestModel model, IEnumerable<OpenBar> bars)
    {
        var assignment = new LineAssignment(problem, model);
        foreach (var bar in bars)
            assignment.Assign(bar);
        return [.. assignment._layouts.OrderBy(layout => layout.Stock.StockId, StringComparer.Ordinal)];
    }

    /// <summary>The pieces of each line that bars hold: those of the most urgent lines, where they do not hold all.</summary>
    public static Dictionary<PieceRef, int> Placed(NestModel model, IEnumerable<OpenBar> bars)
    {
        var held = new long[model.Types.Length];
        foreach (var bar in bars)
        {
            for (var run = bar.Last; run is not null; run = run.Before)
                held[run.Type] += (long)run.Count * bar.Bars;
        }
        var placed = new Dictionary<PieceRef, int>();
        for (var type = 0; type < held.Length; type++)
        {
            foreach (var (line, quantity) in model.Types[type].Lines)
            {
                var taken = (int)Math.Min(held[type], quantity);
                held[type] -= taken;
                if (taken > 0)
                    placed[line.Ref] = taken;
            }
        }
        return placed;
    }

    private void Assign(OpenBar bar)
    {
        var runs = PieceRun.InOrder(bar.Last);
        var types = runs.GroupBy(run => run.Type).Select(type => (Type: type.Key, Count: type.Sum(run => run.Count))).ToList();
        for (var left = bar.Bars; left > 0;)
        {
            var shares = types.ConvertAll(type => ShareOf(_waiting[type.Type], type.Count, left));
            var alike = shares.Min(share => share.Bars);
            var pieces = new Dictionary<int, Queue<OrderLine>>();
            foreach (var (share, (type, _)) in shares.Zip(types))
            {
                pieces[type] = new(share.Lines.SelectMany(part => Enumerable.Repeat(part.Line.Line, part.Each)));
                foreach (var (line, each) in share.Lines)
                    line.Left -= each * alike;
                _waiting[type].RemoveAll(line => line.Left == 0);
            }
            Emit(bar, alike, [.. runs.SelectMany(run => Enumerable.Range(0, run.Count).Select(piece => new PlacedPiece(pieces[run.Type].Dequeue(), _model.Types[run.Type].Ways[run.WayOf(piece)].Turn)))]);
            left -= alike;
        }
    }

    /// <summary>Which lines give the pieces of a type, and to how many bars alike.</summary>
    private static Share ShareOf(List<WaitingLine> waiting, int count, int bars)
    {
        var head = waiting[0];
        var all = (long)count * bars;
        var urgent = waiting.TakeWhile(head.IsAsUrgentAs).ToList();
        if ((urgent.Find(line => line.Left == all) ?? (head.Left > all ? head : urgent.Where(line => line.Left > all).MinBy(line => line.Left))) is { } single)
            return new([(single, count)], bars);
        if (bars > 1 && Divided(urgent, count, bars) is { } divided)
            return divided;
        return head.Left >= count ? new([(head, count)], head.Left / count) : new(FromTheFirstOn(waiting, count), 1);
    }

    /// <summary>Lines that end together on these bars, the same pieces of each on every bar.</summary>
    private static Share? Divided(List<WaitingLine> urgent, int count, int bars)
    {
        var parts = new List<(WaitingLine, int)>();
        foreach (var line in urgent.Where(line => line.Left % bars == 0 && line.Left / bars <= count).OrderByDescending(line => line.Left))
        {
            var each = line.Left / bars;
            if (each > count)
                continue;
            parts.Add((line, each));
            count -= each;
        }
        return count == 0 ? new(parts, bars) : null;
    }

    private static List<(WaitingLine, int)> FromTheFirstOn(List<WaitingLine> waiting, int count)
    {
        var parts = new List<(WaitingLine, int)>();
        for (var i = 0; count > 0; i++)
        {
            parts.Add((waiting[i], Math.Min(count, waiting[i].Left)));
            count -= parts[^1].Item2;
        }
        return parts;
    }

    private void Emit(OpenBar bar, int bars, List<PlacedPiece> pieces)
    {
        var stock = _model.Stock[bar.Stock].Item;
        var key = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{bar.Stock}");
        foreach (var (line, turn) in pieces)
            key.Append(CultureInfo.InvariantCulture, $"|{line.Ref.OrderId.Length}:{line.Ref.OrderId}:{(int)turn}:{line.Ref.LineId}");
        if (_layoutIndex.TryGetValue(key.ToString(), out var known))
        {
            _layouts[known] = _layouts[known] with { Repeat = _layouts[known].Repeat + bars };
            return;
        }
        var layout = LayoutPositions.Lay(stock, pieces, _problem.Rules, LayoutCost.Of(_problem))
            ?? throw new InvalidOperationException("A layout that was found does not fit its bar.");
        _layoutIndex.Add(key.ToString(), _layouts.Count);
        _layouts.Add(layout with { Repeat = bars });
    }

    /// <summary>A line with the pieces that it still wants.</summary>
    private sealed class WaitingLine(OrderLine line, DateTimeOffset due, int quantity)
    {
        public OrderLine Line => line;

        public int Left { get; set; } = quantity;

        private int Priority => line.Priority;

        private DateTimeOffset Due => due;

        public bool IsAsUrgentAs(WaitingLine other) => Priority == other.Priority && Due == other.Due;
    }

    /// <summary>The pieces of a type on each of some bars that are alike.</summary>
    private sealed record Share(IReadOnlyList<(WaitingLine Line, int Each)> Lines, int Bars);
}
